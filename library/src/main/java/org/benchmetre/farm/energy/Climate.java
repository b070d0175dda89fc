package org.benchmetre.farm.energy;

import static org.benchmetre.farm.energy.EnergyUnits.CELSIUS;
import static org.benchmetre.farm.energy.EnergyUnits.HOURS_A_DAY;
import static org.benchmetre.farm.input.TradeUnits.COMMON;
import static org.benchmetre.farm.input.TradeUnits.ONE;

import org.benchmetre.budget.BudgetBuilder;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.ScheduleBuilder;
import org.benchmetre.budget.entry.Bounds;
import org.benchmetre.budget.unit.Unit;
import org.benchmetre.farm.input.Months;
import org.benchmetre.farm.input.Sheets;

/**
 * Outside and inside by month: means of the light hours and of the dark hours, set points, sun on level ground, hours of light, and
 * the share of the month in which the house is heated. The documented climate is made up: an inland site at 40 degrees with cold
 * winters and hot summers. Hours of light there: sunrise equation, middle of the month.
 */
public final class Climate {

    private static final String SITE = "an invented temperate continental site, no real place";
    private static final Bounds LEVEL = new Bounds(-60, true, 60, false);
    private static final Bounds HOURS = new Bounds(0, true, 24, false);
    private static final double[] DAY = {0, 2, 8, 14, 20, 25, 27, 26, 22, 15, 8, 2};
    private static final double[] NIGHT = {-5, -4, 0, 5, 10, 15, 18, 17, 13, 7, 2, -3};
    private static final double[] SUN = {1.9, 2.8, 3.9, 4.9, 5.8, 6.3, 6.2, 5.5, 4.4, 3.1, 2.0, 1.6};
    private static final double[] LIGHT = {9.5, 10.4, 11.7, 13.1, 14.2, 14.8, 14.6, 13.5, 12.2, 10.9, 9.7, 9.2};

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
    /** Share of the month in which the house is heated. */
    public final Line heated;

    /**
     * Declares entries and lines.
     *
     * @param b where schedules are added
     * @param months reads the columns
     */
    public Climate(BudgetBuilder b, Months months) {
        ScheduleBuilder s = b.schedule(Sheets.OPERATIONS, "Climate and set points");
        s.note(
                "Means of the hours of light and of the hours of dark. Where a set point is below the outside mean nothing is heated; "
                        + "that is normal in summer.");
        outsideByDay =
                months.numbers(s, "day_temperature", "day_temperature", "Outside by day", CELSIUS, LEVEL, DAY, SITE);
        outsideByNight = months.numbers(
                s, "night_temperature", "night_temperature", "Outside by night", CELSIUS, LEVEL, NIGHT, SITE);
        heldByDay = months.numbers(
                s, "day_set", "day_set", "Held inside by day", CELSIUS, LEVEL, new double[] {18}, COMMON);
        heldByNight = months.numbers(
                s, "night_set", "night_set", "Held inside by night", CELSIUS, LEVEL, new double[] {8}, COMMON);
        sun = months.numbers(
                s,
                "radiation",
                "solar_radiation",
                "Sun on level ground",
                Unit.parse("kWh/(m2 d)"),
                new Bounds(0, true, 12, false),
                SUN,
                SITE);
        light = months.numbers(
                s,
                "day_hours",
                "day_hours",
                "Hours of light",
                HOURS_A_DAY,
                HOURS,
                LIGHT,
                "sunrise equation at 40 degrees north, middle of the month");
        heated = months.numbers(
                s,
                "heated",
                "heated_share",
                "Share of the month in which the house is heated",
                ONE,
                new Bounds(0, true, 1, false),
                new double[] {1},
                COMMON);
        s.warning(
                "set_point_warning",
                "Night set point against that of the day",
                heldByNight.exceeds(heldByDay),
                "The night set point is above that of the day: nights cost most to heat, so check that they are not swapped.");
    }
}
