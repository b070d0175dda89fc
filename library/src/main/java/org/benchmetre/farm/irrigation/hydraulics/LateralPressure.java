package org.benchmetre.farm.irrigation.hydraulics;

import static org.benchmetre.budget.Formulas.and;
import static org.benchmetre.budget.Formulas.greater;
import static org.benchmetre.budget.Formulas.lesser;
import static org.benchmetre.budget.Formulas.none;
import static org.benchmetre.budget.Formulas.number;
import static org.benchmetre.budget.Formulas.one;
import static org.benchmetre.budget.Formulas.or;
import static org.benchmetre.budget.Formulas.when;
import static org.benchmetre.farm.input.TradeUnits.ONE;

import org.benchmetre.budget.Formula;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.ScheduleBuilder;
import org.benchmetre.budget.unit.Unit;

/**
 * Pressure along one lateral. It falls by friction and by the rise of the bench; the inlet has what gives the outlets their rated
 * pressure on average.
 *
 * <pre>
 * H0   = H + w (mean of hf(n) + i' mean of x(n))     pressure at the inlet
 * H(n) = H0 - w (hf(n) + i x(n)), not below 0        pressure at the outlet that has n beyond it
 * q(n) = q (H(n) / H)^a                              flow of that outlet
 * H  rated pressure of an outlet, kPa        w  a metre of water, 9.80665 kPa
 * hf(n), x(n)  friction and distance, m, see {@link EqualOutlets}
 * i, i'  rise for each metre, and on average, see {@link Slope}
 * q  rated flow, L/h                         a  exponent of pressure
 * </pre>
 *
 * The lowest pressure is at the last outlet, or on a fall where friction takes as much as the fall gains.
 */
final class LateralPressure {

    /** Pressure of a metre of water under standard gravity, in kPa. */
    static final Formula KPA_PER_METRE =
            number(Unit.parse("mH2O").factorTo(Unit.parse("kPa")).toDouble(), Unit.parse("kPa/m"));

    /** Where the formula of pressure comes from. */
    static final String SOURCE = "H0 - w (hf(n) + i x(n)), w = 9.80665 kPa a metre of water, standard gravity";

    /** Where the formula of the outlet's flow comes from. */
    static final String FLOW = "q (H(n) / H)^a, the law of the outlet: Keller and Karmeli 1974, from memory";

    /** The symbols in the sources of its lines, for the note of a schedule. */
    static final String SYMBOLS =
            "In the formulas H is rated pressure, H0 that at the inlet, H(n), hf(n) and x(n) pressure, friction and "
                    + "distance where n outlets lie beyond, i the rise for each metre, q the rated flow and a the exponent of pressure.";

    private static final Unit KPA = Unit.parse("kPa");

    /** Pressure at the inlet that gives the outlets their rated pressure on average, kPa. */
    final Line inlet;
    /** Lowest pressure at any outlet, kPa, not below zero. */
    final Line lowest;
    /** Flow of that outlet, L/h. */
    final Line lowestFlow;

    private final Lateral lateral;
    private final Outlets from;

    LateralPressure(ScheduleBuilder s, String id, Lateral lateral, Slope slope, Outlets from) {
        this.lateral = lateral;
        this.from = from;
        EqualOutlets spaced = lateral.spaced;
        inlet = s.line(
                id + "_inlet_pressure",
                "Pressure needed at the inlet",
                KPA,
                lateral.whereAny(KPA, () -> {
                    Formula drop = lateral.averageFriction.plus(slope.average.times(spaced.averageDistance()));
                    return from.pressure.plus(drop.times(KPA_PER_METRE));
                }),
                "H + w (mean friction + mean rise), w = 9.80665 kPa a metre of water, standard gravity");
        Formula fall = none(ONE).minus(slope.steepest);
        Line turning = s.line(
                id + "_turning_outlets",
                "Outlets beyond the point where a fall gains what friction takes",
                ONE,
                lateral.whereAny(
                        ONE,
                        () -> when(
                                fall.isPositive(),
                                spaced.beyondTurningPoint(fall, lateral.gradient, lateral.exponent),
                                none(ONE))),
                "N (i / (J (1 + c/s)))^(1/m), i the fall: where the loss of a metre with its connections is that fall");
        Line beyond = s.line(
                id + "_outlets_beyond_lowest",
                "Outlets beyond the lowest pressure",
                ONE,
                lateral.whereAny(ONE, () -> lesser(lateral.outlets.minus(one()), turning.wholeDown())));
        Line friction = lateral.frictionBefore(s, id + "_lowest", "the lowest pressure", beyond);
        lowest = s.line(
                id + "_lowest_pressure",
                "Lowest pressure at an outlet",
                KPA,
                at(friction, spaced.distanceBefore(beyond), slope.steepest),
                SOURCE);
        lowestFlow = s.line(id + "_lowest_outlet_flow", "Flow of that outlet", Unit.parse("L/h"), flowAt(lowest), FLOW);
    }

    /** Pressure after so much friction, so far from the inlet on such a rise, kPa, not below zero. */
    Formula at(Formula friction, Formula distance, Formula rise) {
        return lateral.whereAny(KPA, () -> {
            Formula drop = friction.plus(rise.times(distance));
            return greater(inlet.minus(drop.times(KPA_PER_METRE)), none(KPA));
        });
    }

    /** Flow of an outlet under a pressure, L/h. */
    Formula flowAt(Line pressure) {
        Formula ratio = pressure.over(from.pressure).power(from.exponent);
        Formula given = when(from.pressure.isPositive(), ratio.times(from.flow), none(from.flow.unit()));
        return when(pressure.isPositive(), given, none(from.flow.unit()));
    }

    /** Whether the lowest pressure is below the outlet's range, where that is given. */
    Formula isTooLow() {
        return from.lowPressure.exceeds(lowest);
    }

    /** Whether the inlet is above the outlet's range or the line's rating, where that is given. */
    Formula isTooHigh() {
        return and(from.highPressure.isPositive(), inlet.exceeds(from.highPressure));
    }

    /** A figure where the whole lateral keeps to its pressure range, else nothing. */
    Formula whereInRange(Line figure) {
        return when(or(isTooLow(), isTooHigh()), none(figure.unit()), figure);
    }
}
