package org.benchmetre.farm.irrigation;

import static org.benchmetre.budget.Formulas.and;
import static org.benchmetre.budget.Formulas.greater;
import static org.benchmetre.budget.Formulas.lesser;
import static org.benchmetre.budget.Formulas.none;
import static org.benchmetre.budget.Formulas.number;
import static org.benchmetre.budget.Formulas.one;
import static org.benchmetre.budget.Formulas.or;
import static org.benchmetre.budget.Formulas.when;
import static org.benchmetre.farm.input.TradeUnits.METRE;
import static org.benchmetre.farm.input.TradeUnits.ONE;

import java.util.function.Function;
import java.util.function.Supplier;
import org.benchmetre.budget.Formula;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.ScheduleBuilder;
import org.benchmetre.budget.unit.Unit;

/**
 * Friction and pressure along one lateral, the pipe from a feed to its last outlet. Darcy-Weisbach; the friction factor is the
 * larger of 64/Re (laminar) and 0.3164 Re^-0.25 (Blasius 1913, smooth pipe, to Reynolds 100,000), applied to the whole lateral: its
 * loss is the larger of what each law gives for all of it, see {@link Regime}. Pressure falls by friction and by the rise of the
 * bench; outlets are taken to give equal flow where friction is computed.
 *
 * <p>A line fed in the middle is two laterals of half the outlets; on a slope one of them rises, and the lowest pressure is there.
 */
final class Lateral {

    /** Pressure of a metre of water under standard gravity, in kPa. */
    static final Formula KPA_PER_METRE =
            number(Unit.parse("mH2O").factorTo(Unit.parse("kPa")).toDouble(), Unit.parse("kPa/m"));

    private static final Unit KPA = Unit.parse("kPa");
    private static final Unit VISCOSITY = Unit.parse("m2/s");
    private static final Unit SPEED = Unit.parse("m/s");

    /** Outlets on the lateral, a plain whole number; 0 where anything needed is missing. */
    final Line outlets;
    /** Velocity at the inlet. */
    final Line velocity;
    /** Reynolds number at the inlet. */
    final Line reynolds;
    /** Friction from inlet to last outlet, m. */
    final Line frictionHead;
    /** Pressure at the inlet that gives the outlets their rated pressure on average, kPa. */
    final Line inletPressure;
    /** Lowest pressure at any outlet, kPa, not below zero. */
    final Line lowestPressure;
    /** Flow of that outlet, L/h. */
    final Line lowestFlow;

    private final Outlets from;
    private final Water water;
    private final Line step;
    private final Line laminarLoss;
    private final Line turbulentLoss;
    private final Regime laminar;
    private final Regime turbulent;

    Lateral(ScheduleBuilder s, String id, Formula run, Outlets from, Water water, InReach where) {
        this.from = from;
        this.water = water;
        this.step = where.step;
        Formula diameter = from.diameter.in(METRE);
        outlets = s.line(id + "_lateral_outlets", "Outlets on a lateral", ONE, count(run));
        velocity = s.line(
                id + "_velocity",
                "Velocity at the inlet",
                SPEED,
                whereAny(SPEED, () -> PipeLoss.velocity(outlets.times(from.flow), diameter)));
        reynolds = s.line(
                id + "_reynolds",
                "Reynolds number at the inlet",
                ONE,
                PipeLoss.reynolds(velocity, diameter, water.viscosity));
        Line j1 = s.line(
                id + "_gradient_laminar",
                "Laminar loss per metre at the inlet",
                ONE,
                whereAny(ONE, () -> PipeLoss.laminarGradient(water.viscosity.in(VISCOSITY), velocity, diameter)));
        Line j2 = s.line(
                id + "_gradient_turbulent",
                "Turbulent loss per metre at the inlet",
                ONE,
                whereAny(ONE, () -> PipeLoss.turbulentGradient(reynolds, velocity, diameter)));
        laminar = new Regime(1, j1, outlets, step, from.connection, from.shortfall());
        turbulent = new Regime(1.75, j2, outlets, step, from.connection, from.shortfall());
        laminarLoss = s.line(id + "_friction_laminar", "Friction if laminar", METRE, whereAny(METRE, laminar::loss));
        turbulentLoss =
                s.line(id + "_friction_turbulent", "Friction if turbulent", METRE, whereAny(METRE, turbulent::loss));
        frictionHead = s.line(
                id + "_friction_head",
                "Friction, in metres of water",
                METRE,
                greater(laminarLoss, turbulentLoss),
                "the larger of the laminar and the turbulent total");
        Formula averageDrop = governing(Regime::averageLoss).plus(averageRise());
        inletPressure = s.line(
                id + "_inlet_pressure",
                "Pressure needed at the inlet",
                KPA,
                whereAny(KPA, () -> from.pressure.plus(averageDrop.times(KPA_PER_METRE))));
        Line beyond = s.line(
                id + "_outlets_beyond_lowest",
                "Outlets beyond the lowest pressure",
                ONE,
                whereAny(ONE, this::beyondLowest));
        lowestPressure = s.line(
                id + "_lowest_pressure",
                "Lowest pressure at an outlet",
                KPA,
                whereAny(KPA, () -> pressureBefore(beyond, slope())));
        Unit perHour = Unit.parse("L/h");
        lowestFlow = s.line(id + "_lowest_outlet_flow", "Flow of that outlet", perHour, flowAt(lowestPressure));
    }

    private Formula count(Formula run) {
        Formula onTheLine = run.over(step).wholeDown();
        Formula half = onTheLine.over(number(2, ONE)).wholeUp();
        Formula all = when(from.isFedInTheMiddle(), half, onTheLine);
        return when(step.isPositive(), when(from.areKnown(), all, none(ONE)), none(ONE));
    }

    /** A figure where there are outlets at all, else nothing. */
    Formula whereAny(Unit unit, Supplier<Formula> figure) {
        return when(outlets.isPositive(), figure.get(), none(unit));
    }

    private Formula governing(Function<Regime, Formula> part) {
        return when(turbulentLoss.exceeds(laminarLoss), part.apply(turbulent), part.apply(laminar));
    }

    /** The slope that makes for the lowest pressure: of two laterals fed in the middle, that of the rising one. */
    Formula slope() {
        return when(from.isFedInTheMiddle(), water.steepness(), water.rise());
    }

    /** The slope that makes for the highest pressure: of two laterals fed in the middle, that of the falling one. */
    Formula kindestSlope() {
        return when(from.isFedInTheMiddle(), none(ONE).minus(water.steepness()), water.rise());
    }

    private Formula averageRise() {
        Formula outletsToTheMiddle = outlets.plus(one()).over(number(2, ONE)).minus(from.shortfall());
        return when(
                from.isFedInTheMiddle(), none(METRE), water.rise().times(step).times(outletsToTheMiddle));
    }

    private Formula beyondLowest() {
        Formula fall = none(ONE).minus(slope());
        Formula turning = governing(regime -> regime.beyondTurningPoint(fall)).wholeDown();
        return when(fall.isPositive(), lesser(outlets.minus(one()), turning), none(ONE));
    }

    /** How far from the inlet the outlet stands that has so many beyond it, m. */
    Formula distanceBefore(Formula beyond) {
        return step.times(outlets.minus(beyond).minus(from.shortfall()));
    }

    /** Pressure at the outlet that has so many beyond it, kPa, not below zero. */
    Formula pressureBefore(Formula beyond, Formula slope) {
        Formula friction = when(
                turbulentLoss.exceeds(laminarLoss),
                turbulent.lossBefore(turbulentLoss, beyond),
                laminar.lossBefore(laminarLoss, beyond));
        Formula drop = friction.plus(slope.times(distanceBefore(beyond)));
        return greater(inletPressure.minus(drop.times(KPA_PER_METRE)), none(KPA));
    }

    /** Flow of an outlet under a pressure, q = k H^x, L/h. */
    Formula flowAt(Line pressure) {
        Formula ratio = pressure.over(from.pressure).power(from.exponent);
        Formula given = when(from.pressure.isPositive(), ratio.times(from.flow), none(from.flow.unit()));
        return when(pressure.isPositive(), given, none(from.flow.unit()));
    }

    /** Whether the lowest pressure is below the outlet's range, where that is given. */
    Formula isTooLow() {
        return from.lowPressure.exceeds(lowestPressure);
    }

    /** Whether the inlet is above the outlet's range or the line's rating, where that is given. */
    Formula isTooHigh() {
        return and(from.highPressure.isPositive(), inletPressure.exceeds(from.highPressure));
    }

    /** A figure where the whole lateral keeps to its pressure range, else nothing. */
    Formula whereInRange(Line figure) {
        return when(or(isTooLow(), isTooHigh()), none(figure.unit()), figure);
    }
}
