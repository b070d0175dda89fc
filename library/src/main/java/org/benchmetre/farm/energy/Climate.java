package org.benchmetre.farm.energy;

import static org.benchmetre.budget.Formulas.and;
import static org.benchmetre.budget.Formulas.none;
import static org.benchmetre.budget.Formulas.when;
import static org.benchmetre.farm.energy.EnergyUnits.CELSIUS;
import static org.benchmetre.farm.energy.EnergyUnits.HOURS_A_DAY;
import static org.benchmetre.farm.energy.EnergyUnits.KELVIN;
import static org.benchmetre.farm.input.TradeUnits.ONE;

import java.util.List;
import org.benchmetre.budget.BudgetBuilder;
import org.benchmetre.budget.Formula;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.ScheduleBuilder;
import org.benchmetre.budget.entry.Bounds;
import org.benchmetre.budget.rule.FilledTogether;
import org.benchmetre.budget.unit.Unit;
import org.benchmetre.farm.input.FarmEntries;
import org.benchmetre.farm.input.Months;
import org.benchmetre.farm.input.Sheets;
import org.benchmetre.farm.input.Tables;

/**
 * Outside and inside by month: means of the light hours and of the dark hours, set points, sun on level ground, hours of light, and
 * the share of the month in which the house is heated. A climate is given, never assumed: a month without temperatures and hours of
 * light has none, no heat is counted in it, and that is said. Sun that is not given warms nothing.
 */
public final class Climate {

    private static final Bounds LEVEL = new Bounds(-60, true, 60, false);
    private static final Bounds HELD = new Bounds(-20, true, 50, false);
    private static final Bounds HOURS = new Bounds(0, true, 24, false);

    /** Outside, mean of the light hours, degC. */
    public final Line outsideByDay;
    /** Outside, mean of the dark hours, degC. */
    public final Line outsideByNight;
    /** Held inside by day, degC. */
    public final Line heldByDay;
    /** Held inside by night, degC. */
    public final Line heldByNight;
    /** Sun on level ground, kWh/(m2 d). */
    public final Line sun;
    /** Hours of light, h/d. */
    public final Line light;
    /** Share of the month that heat is counted for: the share heated, nothing without a climate. */
    public final Line heated;
    /** Share of the month that is heated and has no climate, so that its heat is not counted. */
    final Line unknown;
    /** How much warmer all set points are held than entered, K. */
    final Line shift;
    /** The months. */
    final Months months;

    /**
     * Declares entries and lines.
     *
     * @param b where schedules are added
     * @param entries gives entries their values
     * @param months reads the columns
     */
    public Climate(BudgetBuilder b, FarmEntries entries, Months months) {
        this.months = months;
        ScheduleBuilder single = b.schedule(Sheets.OPERATIONS, "Heating: use and set points");
        Line use = entries.add(single.textEntry("heating_use", "Is the house heated? yes or no")
                .oneOf(List.of("yes", "no")));
        shift = entries.add(single.entry("set_point_shift", "All set points warmer by", KELVIN)
                .from(-20, 20));
        ScheduleBuilder s = b.shared(Sheets.OPERATIONS, Tables.HEAT);
        s.note(
                "Means of the hours of light and of the hours of dark. A month without hours of light has no climate and no heat. Where a "
                        + "set point is below the outside mean nothing is heated; that is normal in summer.");
        outsideByDay = months.numbersOrBlank(s, "day_temperature", "day_temperature", "Outside by day", CELSIUS, LEVEL);
        outsideByNight =
                months.numbersOrBlank(s, "night_temperature", "night_temperature", "Outside by night", CELSIUS, LEVEL);
        heldByDay = months.numbers(s, "day_set", "day_set", "Held inside by day", CELSIUS, HELD);
        heldByNight = months.numbers(s, "night_set", "night_set", "Held inside by night", CELSIUS, HELD);
        sun = months.numbersOrBlank(
                s,
                "radiation",
                "solar_radiation",
                "Sun on level ground",
                Unit.parse("kWh/(m2 d)"),
                new Bounds(0, true, 12, false));
        light = months.numbersOrBlank(s, "day_hours", "day_hours", "Hours of light", HOURS_A_DAY, HOURS);
        b.rule(new FilledTogether(List.of(outsideByDay, outsideByNight, light)));
        Formula isHeated = use.is("yes");
        Line share = months.numbers(
                s,
                "heated",
                "heated_share",
                "Share of the month in which the house is heated",
                ONE,
                new Bounds(0, true, 1, false));
        heated = s.line(
                "heat_counted_share",
                "Share of the month that heat is counted for",
                ONE,
                when(and(light.isPositive(), isHeated), share, none(ONE)),
                "a month without hours of light has no climate");
        unknown = s.line(
                "heat_unknown_share",
                "Share of the month heated without a climate",
                ONE,
                when(isHeated, share.minus(heated), none(ONE)));
        s.warning(
                "set_point_warning",
                "Night set point against that of the day",
                heldByNight.exceeds(heldByDay),
                "The night set point is above that of the day: nights cost most to heat, so check that they are not swapped.");
    }
}
