package org.benchmetre.farm.loans;

import static org.benchmetre.budget.Formulas.joined;
import static org.benchmetre.budget.Formulas.shown;
import static org.benchmetre.budget.Formulas.text;
import static org.benchmetre.budget.Formulas.when;

import org.benchmetre.budget.Axis;
import org.benchmetre.budget.BudgetBuilder;
import org.benchmetre.budget.Formula;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.ScheduleBuilder;
import org.benchmetre.budget.entry.Bounds;
import org.benchmetre.budget.rule.OneOfTwo;
import org.benchmetre.budget.unit.Unit;
import org.benchmetre.farm.input.Columns;
import org.benchmetre.farm.input.FarmTable;
import org.benchmetre.farm.input.Sheets;

/**
 * Flows of cash of one's own, which no other table holds: one row for each, in a month of the first two years or in a year of the plan.
 * The amount is money of that time; what goes out has a minus.
 */
public final class OwnFlows {

    /** The file. */
    public static final String FILE = FarmTable.CASH.file();
    /** Stands before the number of a month. */
    public static final String MONTH = "m";
    /** Stands before the number of a year. */
    public static final String YEAR = "y";

    /** Months that are looked at one by one, from the start. */
    public static final int MONTHS = 24;
    /** Years of the longest plan. */
    public static final int YEARS = 30;

    /** One row for each flow. */
    public final Axis axis;
    /** Keys; blank in a spare row. */
    public final Line key;
    /** Labels. */
    public final Line label;
    /** Month from the start on, mo, 1 to 24; 0 where a year is given. */
    public final Line month;
    /** Year of the plan, a, 1 to 30; 0 where a month is given. */
    public final Line year;
    /** What comes in, or goes out with a minus, money of its time. */
    public final Line amount;
    /** Where its figures come from. */
    public final Line source;

    /**
     * Declares the columns.
     *
     * @param b where the schedule is added; knows which flows there are
     */
    public OwnFlows(BudgetBuilder b) {
        ScheduleBuilder s = b.schedule(Sheets.LOANS, "Cash of one's own, by month or year");
        s.note("Each flow has its month from the start, or its year. What goes out has a minus.");
        Columns c = Columns.of(b, FarmTable.CASH, s);
        axis = c.axis();
        label = c.names("flow_label", "Flow");
        key = c.keys("flow_key", "Key");
        month = c.numbers("month", "flow_month", "Month", Unit.parse("mo"), counted(MONTHS), 0);
        year = c.numbers("year", "flow_year", "Year", Unit.parse("a"), counted(YEARS), 0);
        amount = c.numbers("amount", "flow_amount", "Amount", Unit.MONEY_NOMINAL, Bounds.ANY, Double.NaN);
        source = c.words("source", "flow_source", "Source");
        b.rule(new OneOfTwo(month, year, amount));
    }

    private static Bounds counted(int last) {
        return new Bounds(1, true, last, true);
    }

    /**
     * When each flow falls, as a word to sum by.
     *
     * @return a text along the flows: {@link #MONTH} and its month, or {@link #YEAR} and its year; empty for an empty row
     */
    public Formula tag() {
        Formula inYear = when(year.isPositive(), joined(text(YEAR), shown(year, 0)), text(""));
        return when(month.isPositive(), joined(text(MONTH), shown(month, 0)), inYear);
    }
}
