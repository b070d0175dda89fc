package org.benchmetre.farm.irrigation.hydraulics;

import static org.benchmetre.budget.Formulas.and;
import static org.benchmetre.budget.Formulas.not;
import static org.benchmetre.budget.Formulas.number;
import static org.benchmetre.budget.Formulas.or;
import static org.benchmetre.farm.input.TradeUnits.ONE;

import org.benchmetre.budget.Formula;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.ScheduleBuilder;

/**
 * What is wrong with the lines of a bench and what to change. An exponent up to 0.1 counts as compensating (solution of a GATE
 * examination in agricultural engineering).
 */
final class BenchWarnings {

    private static final double COMPENSATING = 0.1;

    BenchWarnings(
            ScheduleBuilder s,
            Ways ways,
            Outlets outlets,
            Conditions water,
            Lateral lateral,
            LateralPressure pressure) {
        Line compensating = s.line(
                "way_compensating",
                "Counts as compensating, 1 or 0",
                ONE,
                and(lateral.outlets.isPositive(), not(outlets.exponent.exceeds(number(COMPENSATING, ONE)))),
                "an exponent up to 0.1: solution of a GATE examination in agricultural engineering");
        Line following = s.line(
                "way_following_pressure",
                "Flow follows pressure, 1 or 0",
                ONE,
                and(lateral.outlets.isPositive(), not(compensating)));
        Line low = s.line("way_pressure_too_low", "Pressure below the range, 1 or 0", ONE, pressure.isTooLow());
        Line high = s.line("way_pressure_too_high", "Pressure above the range, 1 or 0", ONE, pressure.isTooHigh());
        Formula outside = or(low, high);
        s.warning(
                "way_hydraulics_warning",
                "Flow and pipe of the system",
                and(ways.key.isFilled(), not(outlets.areKnown())),
                "Nothing is said of flow, friction and evenness: fill in outlet_flow, outlet_pressure and inner_diameter.");
        s.warning(
                "way_compensating_warning",
                "Pressure range of a compensating outlet",
                and(compensating, outside),
                "The pressure along the bench leaves the range in which the outlet compensates. Change outlet_pressure, shorten "
                        + "the run, or choose an outlet with another range.");
        s.warning(
                "way_rating_warning",
                "Pressure rating of the line",
                and(following, high),
                "The line runs beyond its rated pressure at the inlet and can burst. Lower outlet_pressure, fit a pressure "
                        + "regulator, shorten the run, or choose a line with a thicker wall.");
        s.warning(
                "way_low_pressure_warning",
                "Least working pressure of the line",
                and(following, low),
                "Part of the line runs below its least working pressure. Raise outlet_pressure, shorten the run, or choose a "
                        + "wider pipe.");
        s.warning(
                "way_velocity_warning",
                "Velocity in the line",
                lateral.velocity.exceeds(water.velocityLimit),
                "Water runs faster than the usual limit at the inlet. Choose a wider pipe, feed in the middle, or shorten the run.");
    }
}
