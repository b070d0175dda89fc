package org.benchmetre.farm.irrigation;

import static org.benchmetre.budget.Formulas.and;
import static org.benchmetre.budget.Formulas.greater;
import static org.benchmetre.budget.Formulas.none;
import static org.benchmetre.budget.Formulas.number;
import static org.benchmetre.budget.Formulas.one;
import static org.benchmetre.budget.Formulas.sum;
import static org.benchmetre.budget.Formulas.when;
import static org.benchmetre.farm.input.TradeUnits.ONE;

import org.benchmetre.budget.BudgetBuilder;
import org.benchmetre.budget.Formula;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.ScheduleBuilder;
import org.benchmetre.budget.entry.Bounds;
import org.benchmetre.budget.unit.Unit;
import org.benchmetre.farm.input.Months;
import org.benchmetre.farm.input.Sheets;

/**
 * Water given, by way to water, so that the driest plant has its need: need / (1 - drain fraction) for the drain (University of
 * Florida, IFAS Extension, ENH1268) and need / emission uniformity for uneven outlets (Keller and Karmeli, Transactions of the ASAE
 * 17(4), 1974; from memory). The water that drains under well-watered plants is the same water that the driest plant lacks, so the
 * larger of the two is enough; the user may ask for both multiplied. What is given and not kept drains.
 */
public final class GrossWater {

    /** Uniformity below which the allowance grows no more; a warning says so. */
    private static final double LEAST_UNIFORMITY = 20;

    /** Water given over water kept, 1 or more, by way; 0 in empty rows. */
    public final Line factor;
    /** Water given, m3/mo, by way and month. */
    public final Line byMonth;
    /** Water given, m3/a, by way. */
    public final Line year;
    /** Drain, m3/a, by way. */
    public final Line drain;

    /**
     * Declares the lines.
     *
     * @param b where schedules are added
     * @param ways ways to water
     * @param uniformity emission uniformity in %, by way
     * @param share drain share and rule
     * @param need water kept
     * @param months months
     */
    public GrossWater(BudgetBuilder b, Ways ways, Line uniformity, DrainShare share, WaterNeed need, Months months) {
        Unit perMonth = Unit.parse("m3/mo");
        Unit perYear = Unit.parse("m3/a");
        Unit percent = uniformity.unit();
        ScheduleBuilder s = b.schedule(Sheets.IRRIGATION, "Water given, by way to water");
        s.note("Water given so that the driest plant has what it needs; what plants do not keep drains.");
        Line even = s.line(
                "way_uniformity_counted",
                "Uniformity counted",
                ONE,
                ways.whereFilled(
                        greater(uniformity, number(LEAST_UNIFORMITY, percent)).in(ONE)));
        Line caught = ways.columns
                .in(s)
                .numbers(
                        "share_caught",
                        "way_share_caught",
                        "Caught by substrate, share; less where outlets drip between containers",
                        ONE,
                        new Bounds(0, false, 1, false),
                        1);
        Formula missed = when(caught.isPositive(), one().over(caught), one());
        Formula forDrain = one().over(one().minus(share.planned));
        Formula forUneven = when(even.isPositive(), one().over(even), one());
        factor = s.line(
                "way_gross_factor",
                "Water given over water kept",
                ONE,
                ways.whereFilled(
                        when(share.rule.is(DrainShare.BOTH), forDrain.times(forUneven), greater(forDrain, forUneven))
                                .times(missed)),
                "1/(1 - drain fraction) and 1/uniformity: the larger, or both multiplied; over the share caught");
        byMonth = b.schedule(Sheets.IRRIGATION, "Water given by month and way to water")
                .line("way_month_gross_water", "Water given", perMonth, factor.times(need.byMonth));
        year = s.line(
                "way_gross_water",
                "Water given, a year",
                perYear,
                sum(byMonth, months.axis).counting(perYear));
        drain = s.line("way_drain_water", "Drain, a year", perYear, year.minus(ways.whereFilled(need.year)));
        s.line(
                "way_drain_share",
                "Share that drains",
                ONE,
                when(year.isPositive(), drain.over(year), none(ONE)),
                "more than the drain fraction where uneven outlets need more water");
        s.warning(
                "way_uniformity_warning",
                "Uniformity",
                and(ways.key.isFilled(), number(LEAST_UNIFORMITY, percent).exceeds(uniformity)),
                "Outlets are so uneven that water is counted as if their uniformity were 20 %: shorten the run, widen the "
                        + "line, or take compensating outlets.");
    }
}
