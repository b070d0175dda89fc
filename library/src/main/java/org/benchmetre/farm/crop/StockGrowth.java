package org.benchmetre.farm.crop;

import static org.benchmetre.budget.Formulas.and;
import static org.benchmetre.budget.Formulas.none;
import static org.benchmetre.budget.Formulas.one;
import static org.benchmetre.budget.Formulas.when;
import static org.benchmetre.farm.input.TradeUnits.ONE;

import org.benchmetre.budget.BudgetBuilder;
import org.benchmetre.budget.Formula;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.ScheduleBuilder;
import org.benchmetre.budget.entry.Bounds;
import org.benchmetre.budget.unit.Unit;
import org.benchmetre.farm.input.Columns;
import org.benchmetre.farm.input.FarmEntries;
import org.benchmetre.farm.input.FarmTable;
import org.benchmetre.farm.input.Sheets;
import org.benchmetre.farm.input.Tables;

/**
 * How each kind of plant stock arrives and grows: lead time and delivery, weeks to first fruit, weeks the crop stands, yield against
 * the plan's. Weeks to first fruit are as entered, or a heat sum over (mean temperature - base). Few yields by stock are published,
 * so every kind yields the same and is as early as another until the scenario says otherwise.
 */
public final class StockGrowth {

    private static final Unit WEEK = Unit.parse("wk");
    private static final Unit DEGREE = Unit.parse("degC");
    private static final Bounds WEEKS = new Bounds(0, true, 520, false);

    /** Crops in a year, crop/a. */
    public final Line cropsPerYear;
    /** Yield of the second crop on the same plants against the first. */
    final Line secondCrop;
    /** Yield of the third and any later crop on the same plants against the first. */
    final Line laterCrops;
    /** Yield against yield per plant, 1 where nothing is entered. */
    public final Line yieldFactor;
    /** Weeks the crop of each kind stands on the bench, wk/crop. */
    public final Line benchWeeks;
    /** Weeks from planting to first ripe fruit, wk; 0 where unknown. */
    public final Line weeksToFruit;
    /** Heat sum from planting to first ripe fruit, as entered, K d; 0 for that of the type of plant. */
    final Line heatSum;
    /** That heat counts above, degC. */
    final Line heatBase;
    /** The same as entered; 0 where it is not. */
    final Line weeksEntered;
    /** Weeks from order to delivery, wk. */
    public final Line leadWeeks;
    /** What to think of yields by stock. */
    final String doubt;

    /**
     * Declares entries and lines.
     *
     * @param b where schedules are added
     * @param entries gives entries their values
     * @param stock the kinds
     */
    public StockGrowth(BudgetBuilder b, FarmEntries entries, PlantStock stock) {
        ScheduleBuilder season = b.schedule(Sheets.CROP, "Season");
        cropsPerYear = entries.add(season.entry(
                        "crops_per_year", "Crops in a year; times that those listed are grown", Unit.parse("crop/a"))
                .above(0, 12));
        Line cropWeeks = entries.add(
                season.entry("crop_weeks", "Weeks a crop stands, planting to clear-out", Unit.parse("wk/crop"))
                        .above(0, 520));
        Line seasonWeeks = entries.add(
                season.entry("season_weeks", "Weeks of a year that benches can be in crop", Unit.parse("wk/a"))
                        .above(0, 53));
        Line warmth =
                entries.add(season.entry("first_fruit_temperature", "Mean temperature, planting to first fruit", DEGREE)
                        .from(-10, 40));

        doubt = entries.profile().fact("yield_by_stock").source();
        String published = entries.profile().fact("heat_sum_to_fruit").source();
        ScheduleBuilder s = b.shared(Sheets.CROP, Tables.STOCK_GROWTH);
        s.note("A blank yield counts as 1: no kind is taken to yield more or earlier than another, since " + doubt
                + ". Heat sum: " + published + ".");
        Columns c = stock.columns.in(s);
        leadWeeks = c.numbers("lead_weeks", "stock_lead_weeks", "Order ahead", WEEK, WEEKS, 0);
        c.words("delivery_window", "stock_delivery_window", "Delivery");
        weeksEntered =
                c.numbers("weeks_to_fruit", "stock_weeks_to_fruit", "To first fruit, as entered", WEEK, WEEKS, 0);
        heatSum = c.numbers(
                "heat_sum",
                "stock_heat_sum",
                "Heat sum to first fruit",
                Unit.parse("K d"),
                new Bounds(0, true, 10_000, false),
                0);
        heatBase = c.numbers(
                "heat_base", "stock_heat_base", "Heat counts above", DEGREE, new Bounds(-10, true, 30, false), 0);
        Line factor = c.numbers(
                "yield_factor",
                "stock_yield_entered",
                "Yield against the plan's",
                ONE,
                new Bounds(0, true, 5, false),
                0);
        secondCrop =
                ofLater(c, "yield_crop_2", "stock_second_crop", "Second turn on the same plants, against the first");
        laterCrops = ofLater(c, "yield_crop_3", "stock_later_crops", "Third and later turns, against the first");
        Line stands = c.numbers(
                "bench_weeks_crop", "stock_stands_weeks", "Weeks the crop stands", Unit.parse("wk/crop"), WEEKS, 0);

        yieldFactor = s.line("stock_yield_factor", "Yield counted", ONE, when(factor.isPositive(), factor, one()));
        benchWeeks = s.line(
                "stock_bench_weeks",
                "Weeks counted",
                Unit.parse("wk/crop"),
                when(stands.isPositive(), stands, cropWeeks));
        Formula warm = warmth.minus(heatBase);
        Formula byHeat = when(
                warm.isPositive(), heatSum.over(warm.counting(Unit.parse("K"))).in(WEEK), none(WEEK));
        weeksToFruit = s.line(
                "stock_first_fruit_weeks",
                "To first fruit",
                WEEK,
                when(weeksEntered.isPositive(), weeksEntered, when(heatSum.isPositive(), byHeat, none(WEEK))),
                "heat sum over (mean temperature - base); " + published);
        if (!FarmTable.CROPS.hasRows(b.structure())) {
            watchSeason(s, stock, seasonWeeks);
        }
        s.warning(
                "stock_first_fruit_warning",
                "First fruit",
                and(stock.key.isFilled(), weeksToFruit.exceeds(benchWeeks.counting(WEEK))),
                "First fruit comes after the crop is cleared: check weeks_to_fruit, heat_sum and bench_weeks_crop.");
    }

    private static Line ofLater(Columns c, String column, String id, String label) {
        return c.numbers(column, id, label, ONE, new Bounds(0, true, 5, false), 1);
    }

    private void watchSeason(ScheduleBuilder s, PlantStock stock, Line seasonWeeks) {
        s.warning(
                "stock_season_warning",
                "Season",
                and(stock.key.isFilled(), benchWeeks.times(cropsPerYear).exceeds(seasonWeeks)),
                "The crops of a year stand longer than the season lasts: shorten crop_weeks or bench_weeks_crop, or have fewer crops_per_year.");
    }
}
