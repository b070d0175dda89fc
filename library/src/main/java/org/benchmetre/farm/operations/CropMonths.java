package org.benchmetre.farm.operations;

import static org.benchmetre.budget.Formulas.and;
import static org.benchmetre.budget.Formulas.greater;
import static org.benchmetre.budget.Formulas.lesser;
import static org.benchmetre.budget.Formulas.monthOf;
import static org.benchmetre.budget.Formulas.not;
import static org.benchmetre.budget.Formulas.number;
import static org.benchmetre.budget.Formulas.sum;
import static org.benchmetre.budget.Formulas.sumWhere;
import static org.benchmetre.budget.Formulas.when;
import static org.benchmetre.budget.Formulas.yearOf;
import static org.benchmetre.farm.input.TradeUnits.ONE;

import org.benchmetre.budget.Axis;
import org.benchmetre.budget.BudgetBuilder;
import org.benchmetre.budget.Formula;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.ScheduleBuilder;
import org.benchmetre.budget.unit.Unit;
import org.benchmetre.farm.crop.Crop;
import org.benchmetre.farm.crop.CropPlants;
import org.benchmetre.farm.crop.CropYear;
import org.benchmetre.farm.crop.Crops;
import org.benchmetre.farm.crop.Harvest;
import org.benchmetre.farm.input.FarmTable;
import org.benchmetre.farm.input.Months;
import org.benchmetre.farm.input.Sheets;
import org.benchmetre.farm.input.Tables;

/**
 * How work is spread over the year: evenly over the days in crop, or as the fruit comes. Each pattern adds to one, also without a
 * day in crop (then evenly over the year) and without fruit (then as the days in crop). Plain arithmetic.
 */
public final class CropMonths {

    private static final Unit DAYS_A_MONTH = Unit.parse("d/mo");
    private static final Unit DAYS_A_YEAR = Unit.parse("d/a");
    private static final Unit TIMES = Unit.parse("1/a");
    private static final Unit WEEKS_A_YEAR = Unit.parse("wk/a");

    /** Weeks that months and stock may differ. */
    private static final double WEEKS_APART = 2;

    /** Share of the days in crop that falls in each month. */
    public final Line evenShare;
    /** Share of the fruit that is picked in each month. */
    public final Line yieldShare;
    /** Weeks in crop in a year, wk/a. */
    public final Line weeks;
    /** Share of the planting that falls in each month. */
    public final Line plantingShare;
    /** Share of the clearing out that falls in each month. */
    public final Line clearingShare;
    /** Crops in a year, on all benches, crop/a. */
    public final Line cropsPerYear;
    /** Times a year that plants are set, on all benches, 1/a. */
    public final Line plantings;
    /** The months. */
    final Months months;

    /**
     * Declares the lines.
     *
     * @param b where schedules are added
     * @param months the months
     * @param inCrop share of each month in crop
     * @param harvest crops a year and fruit
     * @param crop the plants of the crops and when they are set and cleared
     */
    public CropMonths(BudgetBuilder b, Months months, Line inCrop, Harvest harvest, Crop crop) {
        this.months = months;
        cropsPerYear = harvest.cropsPerYear;
        Line monthYield = harvest.monthYield;
        Line picked = harvest.yield;
        ScheduleBuilder s = b.shared(Sheets.OPERATIONS, Tables.MONTHS);
        ScheduleBuilder year = b.schedule(Sheets.OPERATIONS, "Weeks in crop");
        Line days = s.line("crop_days_in_month", "Days in crop", DAYS_A_MONTH, months.days.times(inCrop));
        Line cropDays = year.line("crop_days", "Days in crop", DAYS_A_YEAR, yearOf(days, months.axis));
        weeks = year.line("weeks_in_crop", "Weeks in crop", WEEKS_A_YEAR, cropDays.in(WEEKS_A_YEAR));
        s.warning(
                "month_fruit_warning",
                "Fruit and months in crop",
                and(monthYield.isPositive(), not(inCrop.isPositive())),
                "Fruit is picked in a month without crop: change share or crop_share in months.csv.");
        if (!FarmTable.CROPS.hasRows(b.structure())) {
            watchWeeks(b, year, crop.chosen);
        }
        evenShare = s.line(
                "month_even_share",
                "Share of the days in crop",
                ONE,
                when(
                        cropDays.isPositive(),
                        days.over(monthOf(cropDays)),
                        months.days.over(sum(months.days, months.axis))));
        yieldShare = s.line(
                "month_yield_share",
                "Share of the fruit",
                ONE,
                when(picked.isPositive(), monthYield.over(monthOf(picked)), evenShare));
        Crops crops = crop.chosen.crops();
        plantings =
                year.line("plantings_in_year", "Plants are set, times a year", TIMES, sum(crops.plantings, crops.axis));
        plantingShare = shareOf(
                s,
                crops.plantings,
                crops.planting,
                new Named("month_planting_share", "Share of the planting"),
                crop.chosen.year());
        clearingShare = shareOf(
                s,
                crops.clearings,
                crops.clearOut,
                new Named("month_clearing_share", "Share of the clearing out"),
                crop.chosen.year());
    }

    private record Named(String id, String label) {}

    /** Spread by the months in which crops are set or cleared; as the days in crop where none is. */
    private Line shareOf(ScheduleBuilder s, Line times, Line month, Named named, CropYear year) {
        Axis crops = times.axes().get(0);
        Formula all = sum(times, crops);
        return s.line(
                named.id,
                named.label,
                ONE,
                when(
                        all.isPositive(),
                        sumWhere(times, month, year.monthName, crops).over(all),
                        evenShare));
    }

    private void watchWeeks(BudgetBuilder b, ScheduleBuilder year, CropPlants plants) {
        Crops crops = plants.crops();
        Line each = b.shared(Sheets.CROP, Tables.CROPS)
                .line(
                        "crop_weeks_standing",
                        "Weeks each crop stands, by its plant stock",
                        WEEKS_A_YEAR,
                        plants.benchWeeks());
        Line stock =
                year.line("weeks_stock_stands", "Weeks the plant stock stands", WEEKS_A_YEAR, sum(each, crops.axis));
        Line apart = year.line(
                "weeks_apart", "Apart by", WEEKS_A_YEAR, greater(weeks, stock).minus(lesser(weeks, stock)));
        Line allowed = year.line(
                "weeks_apart_most",
                "Apart by at most",
                WEEKS_A_YEAR,
                number(WEEKS_APART, WEEKS_A_YEAR),
                "common practice, no source");
        year.warning(
                "weeks_in_crop_warning",
                "Weeks in crop",
                apart.exceeds(allowed),
                "The months in crop and the weeks the stock stands differ by more than two weeks; water and weekly work follow the "
                        + "months: change crop_share in months.csv, or crop_weeks or bench_weeks_crop.");
    }
}
