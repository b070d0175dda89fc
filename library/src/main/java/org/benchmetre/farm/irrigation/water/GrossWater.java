package org.benchmetre.farm.irrigation.water;

import static org.benchmetre.budget.Formulas.and;
import static org.benchmetre.budget.Formulas.none;
import static org.benchmetre.budget.Formulas.not;
import static org.benchmetre.budget.Formulas.one;
import static org.benchmetre.budget.Formulas.when;
import static org.benchmetre.budget.Formulas.yearOf;
import static org.benchmetre.farm.input.TradeUnits.COMMON;
import static org.benchmetre.farm.input.TradeUnits.ONE;

import org.benchmetre.budget.BudgetBuilder;
import org.benchmetre.budget.Formula;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.ScheduleBuilder;
import org.benchmetre.budget.entry.Bounds;
import org.benchmetre.budget.unit.Unit;
import org.benchmetre.farm.input.Months;
import org.benchmetre.farm.input.Sheets;
import org.benchmetre.farm.irrigation.hydraulics.Hydraulics;
import org.benchmetre.farm.irrigation.hydraulics.Ways;

/**
 * Water given, by irrigation system, so that the driest plant has its need. What is given and not kept drains.
 *
 * <pre>
 * G = K a / c,  a = the larger of 1/(1 - D) and 1/EU, or both multiplied
 * G  water given    K  water kept    D  drain fraction    c  share caught by the substrate
 * EU  emission uniformity over whole pulses, a share
 * </pre>
 *
 * For the drain: University of Florida, IFAS Extension, ENH1268; for uneven outlets: Keller and Karmeli, Transactions of the ASAE
 * 17(4), 1974; from memory. The water that drains under well-watered plants is the same water that the driest plant lacks, so the
 * larger of the two is enough; the user may ask for both multiplied.
 */
public final class GrossWater {

    /** Water given over water kept, 1 or more, by way; 0 in empty rows. */
    public final Line factor;
    /** Water given, m3/mo, by way and month. */
    public final Line byMonth;
    /** Water given, m3/a, by way. */
    public final Line year;
    /** Drain, m3/a, by way. */
    public final Line drain;
    /** Water kept. */
    final WaterNeed need;
    /** What is given on top of it, for drain and uneven outlets. */
    final Allowance allowance;

    /**
     * Declares the lines.
     *
     * @param b where schedules are added
     * @param ways irrigation systems
     * @param h hydraulics of the benches
     * @param share drain share and rule
     * @param need water kept
     * @param months months
     */
    public GrossWater(BudgetBuilder b, Ways ways, Hydraulics h, DrainShare share, WaterNeed need, Months months) {
        this.need = need;
        Line uniformity = h.pulsedUniformity;
        Unit perMonth = Unit.parse("m3/mo");
        Unit perYear = Unit.parse("m3/a");
        Line forDrain = b.schedule(Sheets.IRRIGATION, "Allowance for drain")
                .line(
                        "drain_allowance",
                        "Water given over water kept, for the drain",
                        ONE,
                        one().over(one().minus(share.planned)),
                        "1/(1 - drain fraction): University of Florida, IFAS Extension, ENH1268");
        ScheduleBuilder s = b.schedule(Sheets.IRRIGATION, "Water given, by irrigation system");
        s.note(
                "Water given so that the driest plant has what it needs over whole pulses; what plants do not keep drains. Uniformity "
                        + "over whole pulses is a mass-balance bound derived here, not published.");
        Line even = s.line(
                "way_uniformity_counted",
                "Uniformity counted",
                ONE,
                ways.whereFilled(Allowance.counted(uniformity)),
                "that over whole pulses, at least 20 %: " + COMMON);
        Line caught = ways.columns
                .in(s)
                .numbers(
                        "share_caught",
                        "way_share_caught",
                        "Caught by substrate, share; less where outlets drip between containers",
                        ONE,
                        new Bounds(0, false, 1, false),
                        1);
        allowance = new Allowance(ways, forDrain, share.rule, caught);
        factor = s.line(
                "way_gross_factor",
                "Water given over water kept",
                ONE,
                allowance.factor(even),
                "the larger of both allowances, or both multiplied; for uneven outlets 1/uniformity: Keller and Karmeli 1974, from memory");
        byMonth = b.schedule(Sheets.IRRIGATION, "Water given by month and irrigation system")
                .line("way_month_gross_water", "Water given", perMonth, factor.times(need.byMonth));
        year = s.line("way_gross_water", "Water given, a year", perYear, yearOf(byMonth, months.axis));
        drain = s.line("way_drain_water", "Drain, a year", perYear, year.minus(ways.whereFilled(need.year)));
        s.line(
                "way_drain_share",
                "Share that drains",
                ONE,
                when(year.isPositive(), drain.over(year), none(ONE)),
                "more than the drain fraction where uneven outlets need more water");
        Formula known = and(h.lateralOutlets.isPositive(), h.outletsInReach.isPositive());
        s.warning(
                "way_uniformity_warning",
                "Uniformity",
                and(ways.key.isFilled(), known, even.exceeds(uniformity.in(ONE))),
                "Outlets are so uneven that water is counted as if their uniformity were 20 %: shorten the run, widen the "
                        + "line, take compensating outlets; where lines drain, longer pulses or check valves.");
        s.warning(
                "way_uniformity_unknown_warning",
                "Uniformity that is not known",
                and(ways.key.isFilled(), not(known)),
                "The system has no uniformity, since its flow or pipe is not known or no outlet reaches some plants; its water is "
                        + "counted as if it were 20 %. Mend that first.");
    }
}
