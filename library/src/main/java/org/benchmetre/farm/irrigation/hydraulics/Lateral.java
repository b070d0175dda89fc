package org.benchmetre.farm.irrigation.hydraulics;

import static org.benchmetre.budget.Formulas.greater;
import static org.benchmetre.budget.Formulas.none;
import static org.benchmetre.budget.Formulas.number;
import static org.benchmetre.budget.Formulas.one;
import static org.benchmetre.budget.Formulas.when;
import static org.benchmetre.farm.input.TradeUnits.METRE;
import static org.benchmetre.farm.input.TradeUnits.ONE;

import java.util.function.Supplier;
import org.benchmetre.budget.Formula;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.ScheduleBuilder;
import org.benchmetre.budget.unit.Unit;

/**
 * Friction of one lateral, the pipe from a feed to its last outlet. A line fed in the middle is two laterals of half the outlets.
 *
 * <pre>
 * v  = N q / (pi d²/4)                     J1 = 32 nu v / (g d²)              laminar, 64/Re put in
 * Re = v d / nu                            J2 = 0.3164 Re^-0.25 v² / (2 g d)  turbulent (Blasius 1913)
 * hf = the larger of J1 L(F1) and J2 L(F1.75), L the equivalent length of {@link EqualOutlets}
 * N  outlets on the lateral        q  flow of an outlet, L/h    d  inner diameter, mm
 * v  velocity at the inlet, m/s    nu kinematic viscosity, mm²/s    g  9.80665 m/s²
 * J  loss of a metre at the inlet, m/m      Re Reynolds number there, to 100,000
 * F  {@link OutletFactor}, of exponent 1 laminar, 1.75 turbulent; one more for the average over outlets
 * hf friction from inlet to last outlet, m
 * </pre>
 *
 * Darcy and Weisbach in smooth pipe. One law is applied to the whole lateral, the one with the larger total; outlets are taken to
 * give equal flow.
 */
final class Lateral {

    /** The symbols in the sources of its lines, for the note of a schedule. */
    static final String SYMBOLS =
            "In the formulas N is outlets on a lateral and n those beyond a point, q their flow, s their spacing, d "
                    + "inner diameter, nu viscosity, g gravity, v velocity, Re Reynolds number, J loss per metre at the inlet, m the exponent "
                    + "of flow, F multiple-outlet factor, hf friction, c pipe that loses as much as one connection, and h 0.5 where the "
                    + "first outlet stands at half a spacing.";

    private static final Unit VISCOSITY = Unit.parse("m2/s");
    private static final Unit SPEED = Unit.parse("m/s");
    private static final double LAMINAR = 1;
    private static final double TURBULENT = 1.75;

    /** Outlets on the lateral, a plain whole number; 0 where anything needed is missing. */
    final Line outlets;
    /** The same with their spacing. */
    final EqualOutlets spaced;
    /** Velocity at the inlet, m/s. */
    final Line velocity;
    /** Friction from inlet to last outlet, m. */
    final Line frictionHead;
    /** Friction from the inlet to an outlet, averaged over all outlets, m. */
    final Line averageFriction;
    /** Exponent of flow in the law that governs. */
    final Line exponent;
    /** Loss of a metre at the inlet by that law. */
    final Line gradient;

    Lateral(ScheduleBuilder s, String id, Formula run, Outlets from, Conditions water, InReach where) {
        Line step = where.step;
        Formula diameter = from.diameter.in(METRE);
        Line onTheLine = s.line(
                id + "_line_outlets",
                "Outlets on a line",
                ONE,
                when(step.isPositive(), run.over(step).wholeDown(), none(ONE)));
        Formula half = onTheLine.over(number(2, ONE)).wholeUp();
        outlets = s.line(
                id + "_lateral_outlets",
                "Outlets on a lateral",
                ONE,
                when(from.areKnown(), when(from.isFedInTheMiddle(), half, onTheLine), none(ONE)),
                "half of them, rounded up, where the line is fed in the middle; 0 where the outlet is not known");
        spaced = new EqualOutlets(outlets, step, from.connection, from.shortfall);
        velocity = s.line(
                id + "_velocity",
                "Velocity at the inlet",
                SPEED,
                whereAny(SPEED, () -> PipeLoss.velocity(outlets.times(from.flow), diameter)),
                "N q / (pi d²/4)");
        Line reynolds = s.line(
                id + "_reynolds",
                "Reynolds number at the inlet",
                ONE,
                PipeLoss.reynolds(velocity, diameter, water.viscosity),
                "v d / nu");
        Line j1 = s.line(
                id + "_gradient_laminar",
                "Laminar loss per metre at the inlet",
                ONE,
                whereAny(ONE, () -> PipeLoss.laminarGradient(water.viscosity.in(VISCOSITY), velocity, diameter)),
                "32 nu v / (g d²): Hagen and Poiseuille");
        Line j2 = s.line(
                id + "_gradient_turbulent",
                "Turbulent loss per metre at the inlet",
                ONE,
                whereAny(ONE, () -> PipeLoss.turbulentGradient(reynolds, velocity, diameter)),
                "0.3164 Re^-0.25 v² / (2 g d): Darcy and Weisbach, Blasius 1913");
        Line laminar = total(s, id, "laminar", LAMINAR, j1);
        Line turbulent = total(s, id, "turbulent", TURBULENT, j2);
        frictionHead = s.line(
                id + "_friction_head",
                "Friction, in metres of water",
                METRE,
                greater(laminar, turbulent),
                "the larger of the laminar and the turbulent total");
        exponent = s.line(
                id + "_friction_exponent",
                "Exponent of flow in the law that governs",
                ONE,
                when(turbulent.exceeds(laminar), number(TURBULENT, ONE), number(LAMINAR, ONE)),
                "1.75 where the turbulent total is the larger (Blasius 1913), else 1");
        gradient = s.line(id + "_gradient", "Loss per metre at the inlet by that law", ONE, governing(j2, j1));
        Line averageTurbulent = s.line(
                id + "_average_factor_turbulent",
                "Multiple-outlet factor of exponent 2.75",
                ONE,
                OutletFactor.of(TURBULENT + 1, outlets),
                OutletFactor.SOURCE);
        Line averageFactor = s.line(
                id + "_average_factor",
                "Multiple-outlet factor of the next higher exponent",
                ONE,
                governing(averageTurbulent, OutletFactor.of(LAMINAR + 1, outlets)),
                OutletFactor.SOURCE);
        averageFriction = s.line(
                id + "_average_friction",
                "Friction up to an outlet, averaged over all",
                METRE,
                whereAny(METRE, () -> gradient.times(spaced.equivalentLength(averageFactor))),
                EqualOutlets.SOURCE + "; F of the next higher exponent");
    }

    private Line total(ScheduleBuilder s, String id, String law, double power, Line atTheInlet) {
        Line factor = s.line(
                id + "_factor_" + law,
                "Multiple-outlet factor, " + law,
                ONE,
                OutletFactor.of(power, outlets),
                OutletFactor.SOURCE);
        return s.line(
                id + "_friction_" + law,
                "Friction if " + law,
                METRE,
                whereAny(METRE, () -> atTheInlet.times(spaced.equivalentLength(factor))),
                EqualOutlets.SOURCE);
    }

    /** A figure where there are outlets at all, else nothing. */
    Formula whereAny(Unit unit, Supplier<Formula> figure) {
        return when(outlets.isPositive(), figure.get(), none(unit));
    }

    private Formula governing(Formula ifTurbulent, Formula ifLaminar) {
        return when(exponent.exceeds(one()), ifTurbulent, ifLaminar);
    }

    /**
     * Friction from the inlet to one outlet, in three lines.
     *
     * @param s where they are added
     * @param id what their names begin with
     * @param place the outlet in words, such as {@code the first outlet}
     * @param beyond how many outlets lie beyond it
     * @return m
     */
    Line frictionBefore(ScheduleBuilder s, String id, String place, Line beyond) {
        Line turbulent = s.line(
                id + "_factor_turbulent",
                "Turbulent factor of the outlets beyond " + place,
                ONE,
                OutletFactor.of(TURBULENT, beyond),
                OutletFactor.SOURCE);
        Line factor = s.line(
                id + "_factor",
                "Factor of the outlets beyond " + place,
                ONE,
                governing(turbulent, OutletFactor.of(LAMINAR, beyond)),
                OutletFactor.SOURCE);
        return s.line(
                id + "_friction",
                "Friction up to " + place,
                METRE,
                whereAny(METRE, () -> frictionHead.minus(spaced.lossBeyond(beyond, factor, gradient, exponent))),
                "hf - J (s + c) n F(n) (n/N)^m, n the outlets beyond");
    }
}
