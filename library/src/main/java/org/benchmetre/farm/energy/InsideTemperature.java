package org.benchmetre.farm.energy;

import static org.benchmetre.budget.Formulas.countPositive;
import static org.benchmetre.budget.Formulas.greater;
import static org.benchmetre.budget.Formulas.greatest;
import static org.benchmetre.budget.Formulas.lesser;
import static org.benchmetre.budget.Formulas.none;
import static org.benchmetre.budget.Formulas.number;
import static org.benchmetre.budget.Formulas.onlyWhen;
import static org.benchmetre.farm.energy.EnergyUnits.CELSIUS;
import static org.benchmetre.farm.energy.EnergyUnits.HOURS_A_DAY;
import static org.benchmetre.farm.input.TradeUnits.ONE;

import org.benchmetre.budget.BudgetBuilder;
import org.benchmetre.budget.Formula;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.ScheduleBuilder;
import org.benchmetre.farm.input.FarmEntries;
import org.benchmetre.farm.input.Months;
import org.benchmetre.farm.input.Sheets;
import org.benchmetre.farm.input.Tables;

/**
 * How warm it is in the house by month, means of the light hours, of the dark hours and of both. A house floats: by day as much above
 * outside as the sun lifts it, by night as cold as outside. Heat makes up what is missing to the set point, for the share of the month
 * that is heated; vents hold it down, and never below outside nor below what heat holds.
 *
 * <pre>
 * day    min(To + L + s K, max(V, Ti, To))     night  To + s K     mean  (day h + night (24 - h)) / 24
 * To  outside, degC     L  lift by the sun, K     s  share of the month heated     K  made up by heat, K
 * V   vented above, degC     Ti  held inside, degC     h  hours of light, h/d
 * </pre>
 *
 * A balance of means: common practice, no source. A month without a climate has no temperature; nothing is assumed.
 */
public final class InsideTemperature {

    private static final String NO_CLIMATE = "no climate";
    private static final String BALANCE = "outside, sun and heat less what is vented: common practice, no source";

    /** Mean of the light hours, degC, by month; a text where there is no climate. */
    public final Line day;
    /** Mean of the dark hours, degC, by month; a text where there is no climate. */
    public final Line night;
    /** Mean of day and night, degC, by month; a text where there is no climate. */
    public final Line mean;

    /** Months without a climate, a count. */
    public final Line unknown;

    private final Climate climate;

    /**
     * Declares entry and lines.
     *
     * @param b where schedules are added
     * @param entries gives entries their values
     * @param heat what heat makes up
     */
    public InsideTemperature(BudgetBuilder b, FarmEntries entries, MadeUpByHeat heat) {
        this.climate = heat.climate;
        ScheduleBuilder single = b.schedule(Sheets.OPERATIONS, "Vents");
        Line vent =
                entries.add(single.entry("vent_set", "Vented above", CELSIUS).from(-20, 60));
        ScheduleBuilder s = b.shared(Sheets.OPERATIONS, Tables.HEAT);
        Formula held = heat.set.byDay.plus(heat.set.shift);
        Formula warmed = climate.outsideByDay.plus(heat.sunLift).plus(climate.heated.times(heat.byDay));
        day = s.line(
                "inside_day",
                "Inside by day",
                CELSIUS,
                known(lesser(warmed, greater(greater(vent, held), climate.outsideByDay))),
                BALANCE);
        night = s.line(
                "inside_night",
                "Inside by night",
                CELSIUS,
                known(climate.outsideByNight.plus(climate.heated.times(heat.byNight))),
                BALANCE);
        Formula hours = part(day, climate.light).plus(part(night, heat.dark)).over(number(24, HOURS_A_DAY));
        mean = s.line("inside_mean", "Inside, mean", CELSIUS, known(hours), "by hours of light and of dark");
        unknown = single.line(
                "months_without_temperature",
                "Months without a climate",
                ONE,
                number(Months.IN_A_YEAR, ONE).minus(countPositive(climate.light, climate.months.axis)),
                "twelve months less those with hours of light");
        Line most = single.line(
                "day_held_most", "Warmest set point by day", CELSIUS, greatest(heat.set.byDay, climate.months.axis));
        single.warning(
                "vent_warning",
                "Vents against set points",
                most.exceeds(vent),
                "Vents open below a set point of the day, so that heat would be let out: raise vent_set or lower day_set.");
    }

    private Formula known(Formula value) {
        return onlyWhen(climate.light.isPositive(), value, NO_CLIMATE);
    }

    private static Formula part(Line mean, Line hours) {
        return mean.numberOr(none(CELSIUS)).times(hours);
    }
}
