package org.benchmetre.farm.energy;

import static org.benchmetre.budget.Formulas.and;
import static org.benchmetre.budget.Formulas.none;
import static org.benchmetre.budget.Formulas.number;
import static org.benchmetre.budget.Formulas.when;
import static org.benchmetre.farm.energy.EnergyUnits.HOURS_A_DAY;
import static org.benchmetre.farm.energy.EnergyUnits.KELVIN;
import static org.benchmetre.farm.input.TradeUnits.ONE;

import org.benchmetre.budget.BudgetBuilder;
import org.benchmetre.budget.Formula;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.ScheduleBuilder;
import org.benchmetre.budget.unit.Unit;
import org.benchmetre.farm.input.FarmEntries;
import org.benchmetre.farm.input.Sheets;
import org.benchmetre.farm.input.Tables;

/**
 * Kelvins that heat makes up by month, by day and by night: what the house would be short of its set points with the sun alone, over
 * days of the month as they differ.
 *
 * <pre>
 * L = S A t u / (H h)     x = Ti - To - L by day, Ti - To by night
 * L  warmer inside by the sun, mean of the light hours, K     S  sun on level ground, kWh/(m2 d)     A  floor, m2
 * t  share that comes through the roof                        u  share of that which warms the air
 * H  lost for each kelvin by day, W/K                         h  hours of light, h/d
 * x  short of the set point on the mean, K                    Ti, To  held inside and mean outside, degC
 * </pre>
 *
 * A base temperature lowered by what the sun gives is that of degree-days of any base: CIBSE TM41, 2006, from memory. The sun's own
 * shares: common practice, no source. Sun that is left over by day is vented, not kept for the night.
 */
public final class MadeUpByHeat {

    /** Warmer inside by the sun, mean of the light hours, K, by month. */
    final Line sunLift;
    /** Made up by heat by day, mean of the days that are heated, K, by month. */
    final Line byDay;
    /** Made up by heat by night, mean of the days that are heated, K, by month. */
    final Line byNight;
    /** Hours of dark, h/d, by month. */
    final Line dark;
    /** Outside. */
    final Climate climate;
    /** The set points. */
    final SetPoints set;

    /**
     * Declares entries and lines.
     *
     * @param b where schedules are added
     * @param entries gives entries their values
     * @param loss what the house loses for each kelvin
     * @param climate outside
     * @param set what the house is held at
     * @param floor of the house
     */
    public MadeUpByHeat(
            BudgetBuilder b, FarmEntries entries, HeatLoss loss, Climate climate, SetPoints set, Line floor) {
        this.climate = climate;
        this.set = set;
        ScheduleBuilder sunshine = b.schedule(Sheets.OPERATIONS, "Sun that warms the house");
        Line through = entries.add(sunshine.entry("solar_transmission", "Share of sun that comes through the roof", ONE)
                .from(0, 1));
        Line useful = entries.add(sunshine.entry("solar_useful_share", "Share of that which warms the air", ONE)
                .from(0, 1));
        TemperatureSpread spread = new TemperatureSpread(b, entries);
        ScheduleBuilder s = b.shared(Sheets.OPERATIONS, Tables.HEAT);
        Formula kept = loss.total.times(climate.light).in(Unit.parse("kWh/(d K)"));
        sunLift = s.line(
                "sun_lift",
                "Warmer inside by the sun, by day",
                KELVIN,
                when(
                        and(climate.light.isPositive(), loss.total.isPositive()),
                        climate.sun.times(floor).times(through).times(useful).over(kept),
                        none(KELVIN)),
                "sun times floor times what comes through times what warms the air, over loss times hours of light: common "
                        + "practice, no source");
        dark = s.line(
                "dark_hours",
                "Hours of dark",
                HOURS_A_DAY,
                number(24, HOURS_A_DAY).minus(climate.light));
        Line shortByDay = s.line(
                "day_short",
                "Short of the set point by day, on the mean",
                KELVIN,
                below(set.byDay, climate.outsideByDay).minus(sunLift));
        Line shortByNight = s.line(
                "night_short",
                "Short of the set point by night, on the mean",
                KELVIN,
                below(set.byNight, climate.outsideByNight));
        byDay = s.line(
                "day_kelvins", "Made up by heat by day", KELVIN, spread.kelvins(shortByDay), TemperatureSpread.SOURCE);
        byNight = s.line(
                "night_kelvins",
                "Made up by heat by night",
                KELVIN,
                spread.kelvins(shortByNight),
                TemperatureSpread.SOURCE);
    }

    private Formula below(Line held, Line outside) {
        return held.plus(set.shift).minus(outside);
    }
}
