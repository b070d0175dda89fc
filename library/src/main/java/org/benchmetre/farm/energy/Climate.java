package org.benchmetre.farm.energy;

import static org.benchmetre.budget.Formulas.and;
import static org.benchmetre.budget.Formulas.none;
import static org.benchmetre.budget.Formulas.when;
import static org.benchmetre.farm.energy.EnergyUnits.CELSIUS;
import static org.benchmetre.farm.energy.EnergyUnits.HOURS_A_DAY;
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
 * Outside by month: means of the light hours and of the dark hours, sun on level ground, hours of light, and the share of the month in
 * which the house is heated. A climate is given, never assumed: a month without temperatures and hours of light has none, no heat is
 * counted in it, and that is said. Sun that is not given warms nothing.
 */
public final class Climate {

    private static final Bounds LEVEL = new Bounds(-60, true, 60, false);
    private static final Bounds HOURS = new Bounds(0, true, 24, false);

    /** Outside, mean of the light hours, degC. */
    public final Line outsideByDay;
    /** Outside, mean of the dark hours, degC. */
    public final Line outsideByNight;
    /** Sun on level ground, kWh/(m2 d). */
    public final Line sun;
    /** Hours of light, h/d. */
    public final Line light;
    /** Share of the month that heat is counted for: the share heated, nothing without a climate. */
    public final Line heated;
    /** Share of the month that is heated and has no climate, so that its heat is not counted. */
    final Line unknown;
    /** Whether the house is heated at all, yes or no. */
    final Line use;
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
        use = entries.add(b.shared(Sheets.OPERATIONS, Tables.HEATING)
                .textEntry("heating_use", "Is the house heated? yes or no")
                .oneOf(List.of("yes", "no")));
        ScheduleBuilder s = b.shared(Sheets.OPERATIONS, Tables.HEAT);
        s.note(
                "Means of the hours of light and of the hours of dark. A month without hours of light has no climate and no heat. Where a "
                        + "set point is below the outside mean only the cold days of the month are heated.");
        outsideByDay = months.numbersOrBlank(s, "day_temperature", "day_temperature", "Outside by day", CELSIUS, LEVEL);
        outsideByNight =
                months.numbersOrBlank(s, "night_temperature", "night_temperature", "Outside by night", CELSIUS, LEVEL);
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
    }
}
