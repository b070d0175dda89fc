package org.benchmetre.farm.crop;

import static org.benchmetre.budget.Formulas.and;
import static org.benchmetre.budget.Formulas.lookup;
import static org.benchmetre.budget.Formulas.one;
import static org.benchmetre.budget.Formulas.or;
import static org.benchmetre.budget.Formulas.sum;
import static org.benchmetre.farm.input.TradeUnits.COMMON;
import static org.benchmetre.farm.input.TradeUnits.ONE;

import java.util.ArrayList;
import java.util.List;
import org.benchmetre.budget.Axis;
import org.benchmetre.budget.Bounds;
import org.benchmetre.budget.BudgetBuilder;
import org.benchmetre.budget.Given;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.Numbers;
import org.benchmetre.budget.ScheduleBuilder;
import org.benchmetre.farm.input.Months;
import org.benchmetre.farm.input.Sheets;
import org.benchmetre.scenario.Faults;
import org.benchmetre.scenario.Place;

/**
 * How a crop's fruit spreads over the months: shares that add up to one. A kind of plant stock takes its own column {@code
 * share_<stock>} of {@code months.csv}, else the common column {@code share}, else an invented spread from October to June.
 */
public final class MonthPattern {

    private static final String COMMON_COLUMN = "share";
    private static final Bounds SHARE = new Bounds(0, true, 1, false);
    private static final double NEAR = 5e-7;
    private static final double[] USUAL = {0.10, 0.14, 0.20, 0.20, 0.14, 0.06, 0, 0, 0, 0.02, 0.06, 0.08};

    /** Shares of each kind, by month. */
    public final Line byStock;
    /** Shares of the chosen kind. */
    public final Line chosen;
    /** The months. */
    public final Axis months;

    /**
     * Declares entries and lines.
     *
     * @param b where schedules are added
     * @param months months and their file
     * @param stock the kinds
     * @param choice key of the chosen kind
     * @param faults where faults are collected
     */
    public MonthPattern(BudgetBuilder b, Months months, PlantStock stock, Line choice, Faults faults) {
        this.months = months.axis;
        ScheduleBuilder blocks = b.schedule(Sheets.CROP, "Fruit by month: share of the crop, by plant stock");
        blocks.note("Each row adds up to 1. Where a kind has no column of its own all kinds share one spread, since "
                + StockGrowth.DOUBT + ".");
        List<Given> common = read(months, COMMON_COLUMN, faults);
        List<Given> all = new ArrayList<>();
        for (int row = 0; row < stock.axis.size(); row++) {
            String own = COMMON_COLUMN + "_" + stock.axis.keys().get(row);
            all.addAll(!stock.axis.isSpare(row) && months.has(own) ? read(months, own, faults) : common);
        }
        byStock = blocks.entry("fruit_share", "Share of the crop's fruit", ONE, stock.axis, months.axis)
                .within(SHARE)
                .given(all);
        ScheduleBuilder sums = b.schedule(Sheets.CROP, "Fruit by month: do the shares add up?");
        Line total = sums.line("fruit_share_sum", "Shares together", ONE, sum(byStock, months.axis));
        sums.warning(
                "fruit_share_warning",
                "Shares",
                and(stock.key.isFilled(), or(total.exceeds(one()), one().exceeds(total))),
                "The shares of the months do not add up to 1: change them until they do.");
        chosen = b.schedule(Sheets.CROP, "Fruit by month: the chosen plant stock")
                .line("month_share", "Share of the crop's fruit", ONE, lookup(byStock, stock.key, choice));
    }

    private static List<Given> read(Months months, String column, Faults faults) {
        if (!months.has(column)) {
            return months.values(column, ONE, SHARE, USUAL, COMMON + "; give your own in months.csv");
        }
        int before = faults.size();
        List<Given> values = months.values(column, ONE, SHARE, new double[] {0}, "blank in months.csv");
        double sum = values.stream().mapToDouble(Given::number).sum();
        if (faults.size() == before && !(Math.abs(sum - 1) <= NEAR)) {
            faults.add(
                    new Place(Months.FILE, 0, column),
                    "shares that add up to " + Numbers.plain(Math.rint(sum * 1e6) / 1e6),
                    "shares of the crop's fruit by month that add up to 1");
        }
        return values;
    }
}
