package org.benchmetre.farm.irrigation.water;

import static org.benchmetre.budget.Formulas.and;
import static org.benchmetre.budget.Formulas.greatest;
import static org.benchmetre.budget.Formulas.none;
import static org.benchmetre.budget.Formulas.when;
import static org.benchmetre.farm.input.TradeUnits.ONE;

import org.benchmetre.budget.BudgetBuilder;
import org.benchmetre.budget.Formula;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.ScheduleBuilder;
import org.benchmetre.budget.unit.Unit;
import org.benchmetre.farm.input.FarmEntries;
import org.benchmetre.farm.input.Months;
import org.benchmetre.farm.input.Sheets;
import org.benchmetre.farm.input.Tables;
import org.benchmetre.farm.irrigation.hydraulics.Hydraulics;
import org.benchmetre.farm.irrigation.hydraulics.Ways;

/**
 * How long and how often: water of one watering = the pulse and what drains from the lines after it, which fills them first; run time =
 * water of it / flow a plant; waterings a day = water given a plant and day / water of one; hours a day = waterings x run time x zones, zones running one after the other. Waterings are an average over the
 * month and need not be whole. Plain counting.
 */
public final class WateringHours {

    /** Run time of one watering of one zone, min, by way. */
    public final Line runTime;
    /** Waterings of a day in crop, 1/d, by way and month. */
    public final Line perDay;
    /** Hours a day that all zones take together, h/d, by way and month. */
    public final Line hours;

    /**
     * Declares the entry and the lines.
     *
     * @param b where schedules are added
     * @param entries gives entries their values
     * @param months months
     * @param h hydraulics of the benches
     * @param gross water given
     * @param zonesRun zones as run, by way
     */
    public WateringHours(
            BudgetBuilder b, FarmEntries entries, Months months, Hydraulics h, GrossWater gross, Line zonesRun) {
        Ways ways = h.ways;
        Line perPlant = h.flowPerPlant;
        Formula each = h.pulse.plus(h.drained);
        WaterNeed need = gross.need;
        Unit minute = Unit.parse("min");
        Unit perDayUnit = Unit.parse("1/d");
        Unit hoursPerDay = Unit.parse("h/d");
        Line most = entries.add(b.schedule(Sheets.ENTRIES, "Watering hours")
                .entry("watering_hours", "Hours a day in which watering may run", hoursPerDay)
                .above(0, 24));

        ScheduleBuilder list = b.shared(Sheets.IRRIGATION, Tables.ZONES_AND_PUMP);
        runTime = list.line(
                "way_run_time",
                "Run time of one watering, filling the lines counted",
                minute,
                when(perPlant.isPositive(), each.over(perPlant).in(minute), none(minute)));
        Formula given = gross.factor.times(need.perPlant).over(each).in(perDayUnit);
        perDay = b.schedule(Sheets.IRRIGATION, "Waterings a day, by month and irrigation system")
                .line(
                        "way_month_events",
                        "Waterings a day",
                        perDayUnit,
                        when(and(ways.key.isFilled(), need.cropShare.isPositive()), given, none(perDayUnit)));
        hours = b.schedule(Sheets.IRRIGATION, "Hours of watering a day, by month and irrigation system")
                .line(
                        "way_month_hours",
                        "Hours a day, all zones",
                        hoursPerDay,
                        perDay.times(runTime).times(zonesRun.counting(ONE)).in(hoursPerDay));
        Line peak = list.line(
                "way_peak_hours",
                "Hours a day in the busiest month, all zones",
                hoursPerDay,
                greatest(hours, months.axis));
        list.warning(
                "way_hours_warning",
                "Hours a day",
                and(ways.key.isFilled(), peak.exceeds(most)),
                "Watering all zones takes longer than the hours of a day set aside for it: raise supply_flow so that fewer "
                        + "zones are needed, lower zone_count, take outlets of more flow, or raise watering_hours.");
    }
}
