package org.benchmetre.farm.ownership;

import static org.benchmetre.budget.Formulas.and;
import static org.benchmetre.budget.Formulas.countPositive;
import static org.benchmetre.budget.Formulas.number;
import static org.benchmetre.farm.input.TradeUnits.ONE;

import org.benchmetre.budget.BudgetBuilder;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.ScheduleBuilder;
import org.benchmetre.farm.input.Sheets;

/**
 * Tells where one row is most of a total. Of many rows that cost something that is rare, and more often a price, a pack or a life that
 * is wrong by a factor of ten or a hundred. The share and the number of rows are choices of this project: no source.
 */
public final class MostOfTotal {

    private static final double MOST = 0.6;
    private static final double FEW_ROWS = 4;
    private static final String CHOICE = "a choice of this project, no source";

    private final ScheduleBuilder s;
    private final Line most;
    private final Line few;

    /**
     * Declares the thresholds.
     *
     * @param b where schedules are added
     */
    public MostOfTotal(BudgetBuilder b) {
        s = b.schedule(Sheets.BUDGET, "When one row is most of a total");
        most = s.line("most_of_total", "Share of a total that one row seldom reaches", ONE, number(MOST, ONE), CHOICE);
        few = s.line("few_rows", "So few rows that one may well be most of them", ONE, number(FEW_ROWS, ONE), CHOICE);
    }

    /**
     * Rows and their total.
     *
     * @param id stem of the names of lines
     * @param table where they stand
     * @param cost money of each row, not negative
     * @param total all rows together, in the same unit
     */
    public record Rows(String id, ScheduleBuilder table, Line cost, Line total) {}

    /**
     * Watches over a table.
     *
     * @param label what one row is
     * @param rows rows and their total
     * @param sentence what is wrong and what to look at
     */
    public void watch(String label, Rows rows, String sentence) {
        Line count = s.line(
                rows.id() + "_count",
                label + ": how many cost something",
                ONE,
                countPositive(rows.cost(), rows.cost().axes().get(0)));
        rows.table()
                .warning(
                        rows.id() + "_most_warning",
                        label,
                        and(count.exceeds(few), rows.cost().exceeds(rows.total().times(most))),
                        sentence);
    }
}
