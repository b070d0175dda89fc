package org.benchmetre.farm.operations;

import static org.benchmetre.budget.Formulas.and;
import static org.benchmetre.budget.Formulas.greater;
import static org.benchmetre.budget.Formulas.lesser;
import static org.benchmetre.budget.Formulas.monthOf;
import static org.benchmetre.budget.Formulas.not;
import static org.benchmetre.budget.Formulas.number;
import static org.benchmetre.budget.Formulas.sum;
import static org.benchmetre.budget.Formulas.when;
import static org.benchmetre.budget.Formulas.yearOf;
import static org.benchmetre.farm.input.TradeUnits.ONE;

import org.benchmetre.budget.BudgetBuilder;
import org.benchmetre.budget.Formula;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.ScheduleBuilder;
import org.benchmetre.budget.unit.Unit;
import org.benchmetre.farm.crop.Harvest;
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
    private static final Unit WEEKS_A_YEAR = Unit.parse("wk/a");

    /** Weeks that months and stock may differ. */
    private static final double WEEKS_APART = 2;

    /** Share of the days in crop that falls in each month. */
    public final Line evenShare;
    /** Share of the fruit that is picked in each month. */
    public final Line yieldShare;
    /** Weeks in crop in a year, wk/a. */
    public final Line weeks;
    /** Crops in a year, crop/a. */
    public final Line cropsPerYear;
    /** The months. */
    final Months months;

    /**
     * Declares the lines.
     *
     * @param b where schedules are added
     * @param months the months
     * @param inCrop share of each month in crop
     * @param harvest crops a year and fruit
     * @param stands weeks a year the chosen stock stands, wk/a
     */
    public CropMonths(BudgetBuilder b, Months months, Line inCrop, Harvest harvest, Formula stands) {
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
        Line stock = year.line("weeks_stock_stands", "Weeks the chosen stock stands", WEEKS_A_YEAR, stands);
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
    }
}
