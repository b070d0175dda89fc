package org.benchmetre.farm.crop;

import static org.benchmetre.budget.Formulas.and;
import static org.benchmetre.budget.Formulas.lookup;
import static org.benchmetre.budget.Formulas.none;
import static org.benchmetre.budget.Formulas.one;
import static org.benchmetre.budget.Formulas.or;
import static org.benchmetre.budget.Formulas.sum;
import static org.benchmetre.budget.Formulas.sumProduct;
import static org.benchmetre.budget.Formulas.when;
import static org.benchmetre.farm.input.TradeUnits.ONE;

import java.util.Collections;
import java.util.List;
import org.benchmetre.budget.Axis;
import org.benchmetre.budget.BudgetBuilder;
import org.benchmetre.budget.Formula;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.ScheduleBuilder;
import org.benchmetre.budget.entry.Bounds;
import org.benchmetre.budget.entry.Given;
import org.benchmetre.budget.entry.Home;
import org.benchmetre.budget.rule.AddToOne;
import org.benchmetre.farm.input.Months;
import org.benchmetre.farm.input.Sheets;
import org.benchmetre.farm.input.Tables;
import org.benchmetre.farm.profile.CropProfile;

/**
 * How a crop's fruit spreads over the months: shares that add up to one. A kind of plant stock takes its own column {@code
 * share_<stock>} of {@code months.csv}, else the common column {@code share}, else the spread that is documented.
 */
public final class MonthPattern {

    private static final String COMMON_COLUMN = "share";
    private static final Bounds SHARE = new Bounds(0, true, 1, false);
    private static final double NEAR = 5e-7;

    /** Shares of each kind, by month. */
    public final Line byStock;
    /** Shares of the chosen kind. */
    public final Line chosen;
    /** The months. */
    public final Axis months;
    /** Those shares together: one, but for rounding. */
    final Line together;

    /**
     * Declares entries and lines.
     *
     * @param b where schedules are added
     * @param profile what is documented of the crop
     * @param months months and their file
     * @param stock the kinds
     * @param choice key of the chosen kind
     */
    public MonthPattern(BudgetBuilder b, CropProfile profile, Months months, PlantStock stock, Line choice) {
        this.months = months.axis;
        ScheduleBuilder blocks = b.schedule(Sheets.CROP, "Fruit by month: share of the crop, by plant stock");
        blocks.note("Each row adds up to 1. Where a kind has no column of its own all kinds share one spread, since "
                + profile.fact("yield_by_stock").source() + ".");
        List<Given> usual = months.usual("fruit_share", ONE);
        byStock = blocks.entry("fruit_share", "Share of the crop's fruit", ONE, stock.axis, months.axis)
                .within(SHARE)
                .keptAt(Home.of(Months.FILE, Months.AXIS, COMMON_COLUMN + "_*", COMMON_COLUMN)
                        .wholeColumns())
                .given(Collections.nCopies(stock.axis.size(), usual).stream()
                        .flatMap(List::stream)
                        .toList());
        b.rule(new AddToOne(byStock, months.axis, "shares of the crop's fruit by month"));
        ScheduleBuilder sums = b.shared(Sheets.CROP, Tables.STOCK_GROWTH);
        Line total = sums.line("fruit_share_sum", "Shares together", ONE, sum(byStock, months.axis));
        sums.warning(
                "fruit_share_warning",
                "Shares",
                and(stock.key.isFilled(), or(total.exceeds(one()), one().exceeds(total))),
                "The shares of the months do not add up to 1: change them until they do.");
        chosen = b.shared(Sheets.CROP, Tables.FRUIT_BY_MONTH)
                .line("month_share", "Share of the crop's fruit", ONE, lookup(byStock, stock.key, choice));
        together = b.shared(Sheets.CROP, Tables.FRUIT_OF_A_YEAR)
                .line("month_share_sum", "Shares of the months together", ONE, sum(chosen, this.months));
    }

    /**
     * The average of a figure over the months by their share of the chosen kind's fruit.
     *
     * @param byMonth along the months, and another axis perhaps
     * @return in its unit; nothing where no month has fruit
     */
    Formula average(Line byMonth) {
        Formula weighed = sumProduct(byMonth, chosen, months);
        return when(together.isPositive(), weighed.over(together), none(byMonth.unit()));
    }
}
