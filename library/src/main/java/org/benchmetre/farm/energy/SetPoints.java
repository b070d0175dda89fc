package org.benchmetre.farm.energy;

import static org.benchmetre.budget.Formulas.and;
import static org.benchmetre.budget.Formulas.countPositive;
import static org.benchmetre.budget.Formulas.joined;
import static org.benchmetre.budget.Formulas.not;
import static org.benchmetre.budget.Formulas.text;
import static org.benchmetre.budget.Formulas.when;
import static org.benchmetre.farm.energy.EnergyUnits.CELSIUS;
import static org.benchmetre.farm.energy.EnergyUnits.KELVIN;

import org.benchmetre.budget.BudgetBuilder;
import org.benchmetre.budget.Formula;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.ScheduleBuilder;
import org.benchmetre.budget.entry.Bounds;
import org.benchmetre.farm.input.FarmEntries;
import org.benchmetre.farm.input.Sheets;
import org.benchmetre.farm.input.Tables;

/**
 * What the house is held at by month, by day and by night: the regime chosen where one is, else the set points typed by month. All of
 * them may be held warmer by the same kelvins, to try what that costs.
 */
public final class SetPoints {

    private static final Bounds HELD = new Bounds(-20, true, 50, false);

    /** Held inside by day, before {@link #shift}, degC. */
    final Line byDay;
    /** Held inside by night, before {@link #shift}, degC. */
    final Line byNight;
    /** How much warmer all set points are held than entered, K. */
    final Line shift;

    private final Regimes regimes;

    /**
     * Declares entries and lines.
     *
     * @param b where schedules are added
     * @param entries gives entries their values
     * @param climate outside, and its months
     */
    public SetPoints(BudgetBuilder b, FarmEntries entries, Climate climate) {
        ScheduleBuilder single = b.shared(Sheets.OPERATIONS, Tables.HEATING);
        shift = entries.add(single.entry("set_point_shift", "All set points warmer by", KELVIN)
                .from(-20, 20));
        regimes = new Regimes(b, entries);
        ScheduleBuilder s = b.shared(Sheets.OPERATIONS, Tables.HEAT);
        Line dayTyped = climate.months.numbers(s, "day_set", "day_set", "Set point by day, as typed", CELSIUS, HELD);
        Line nightTyped =
                climate.months.numbers(s, "night_set", "night_set", "Set point by night, as typed", CELSIUS, HELD);
        byDay = s.line("day_held", "Held inside by day", CELSIUS, held(dayTyped, regimes.day));
        byNight = s.line("night_held", "Held inside by night", CELSIUS, held(nightTyped, regimes.night));
        s.warning(
                "set_point_warning",
                "Night set point against that of the day",
                byNight.exceeds(byDay),
                "The night set point is above that of the day: nights cost most to heat, so check that they are not swapped.");
        watch(single, climate);
    }

    private Formula held(Line typed, Line ofRegime) {
        return when(regimes.choice.is(Regimes.OWN), typed, ofRegime);
    }

    private void watch(ScheduleBuilder s, Climate climate) {
        Formula chosen = not(regimes.choice.is(Regimes.OWN));
        Formula climates = countPositive(climate.light, climate.months.axis);
        s.warning(
                "regime_climate_warning",
                "Regime without a climate",
                and(chosen, not(climates.isPositive())),
                joined(
                        text("The regime "),
                        regimes.called(),
                        text(
                                " has no climate to hold against: give day_temperature, night_temperature and day_hours in "
                                        + "months.csv.")));
        s.warning(
                "regime_heating_warning",
                "Regime of a house that is not heated",
                and(chosen, climate.use.is("no")),
                joined(
                        text("The regime "),
                        regimes.called(),
                        text(
                                " is chosen, but the house is not heated: set heating_use to yes, or house_regime to own.")));
    }
}
