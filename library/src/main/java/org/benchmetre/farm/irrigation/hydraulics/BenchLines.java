package org.benchmetre.farm.irrigation.hydraulics;

import static org.benchmetre.budget.Formulas.number;
import static org.benchmetre.budget.Formulas.text;
import static org.benchmetre.budget.Formulas.when;
import static org.benchmetre.farm.input.TradeUnits.METRE;
import static org.benchmetre.farm.input.TradeUnits.ONE;

import org.benchmetre.budget.BudgetBuilder;
import org.benchmetre.budget.Formula;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.ScheduleBuilder;
import org.benchmetre.budget.unit.Unit;
import org.benchmetre.farm.input.Sheets;
import org.benchmetre.farm.layout.House;
import org.benchmetre.farm.layout.Planting;

/**
 * Flow of one bench and friction of its lines. Hazen and Williams with C = 150 stands beside as a check only: it understates small
 * polyethylene laterals (Watters and Keller 1978, from memory).
 *
 * <pre>
 * J = 10.67 Q^1.852 / (C^1.852 d^4.8704)
 * J  loss of a metre, m/m    Q  flow at the inlet, m³/s    C  150    d  inner diameter, m
 * </pre>
 */
final class BenchLines {

    private static final Unit KPA = Unit.parse("kPa");
    private static final Unit PER_HOUR = Unit.parse("L/h");
    private static final double SMALL_SHARE = 0.05;
    private static final double HAZEN_WILLIAMS = 1.852;

    /** Friction of one lateral. */
    final Lateral lateral;
    /** Flow of a bench, L/h. */
    final Line flow;
    /** Flow for a plant, averaged, L/(h plant). */
    final Line flowPerPlant;
    /** Whether friction decides, in words. */
    final Line frictionNote;

    private final Outlets outlets;

    BenchLines(BudgetBuilder b, Outlets outlets, Conditions water, InReach where, House house, Planting planting) {
        this.outlets = outlets;
        ScheduleBuilder s = b.schedule(Sheets.IRRIGATION, "Flow and friction of a bench");
        s.note(
                "Outlets have their rated pressure on average. Friction is the larger of the laminar and the turbulent total of a "
                        + "lateral; a sum from outlet to outlet is up to 11 % more where both are alike, near an inlet Reynolds number "
                        + "of 1,800. " + Lateral.SYMBOLS);
        flow = s.line("way_flow_per_bench", "Flow of a bench", PER_HOUR, where.onBench.times(outlets.flow));
        flowPerPlant = s.line(
                "way_flow_per_plant", "Flow for a plant", Unit.parse("L/(h plant)"), planting.eachOnABench(flow));
        Line run = s.line(
                "way_run",
                "Length of a line from its inlet",
                METRE,
                when(outlets.run.isPositive(), outlets.run, house.benchLength));
        lateral = new Lateral(s, "way", run, outlets, water, where);
        Line friction = s.line(
                "way_friction",
                "Friction",
                KPA,
                lateral.frictionHead.times(LateralPressure.KPA_PER_METRE),
                "a metre of water is 9.80665 kPa, standard gravity");
        hazenWilliams(s);
        frictionNote = s.line(
                "way_friction_note",
                "Does friction decide?",
                ONE,
                frictionNote(friction),
                "small under 5 % of the pressure at the outlets: common practice, no source");
    }

    private void hazenWilliams(ScheduleBuilder s) {
        double m = HAZEN_WILLIAMS;
        Unit cubicMetres = Unit.parse("m3/s");
        Formula cubes = lateral.outlets.times(outlets.flow.in(cubicMetres)).counting(ONE);
        Formula size = outlets.diameter.in(METRE).counting(ONE);
        Line gradient = s.line(
                "way_gradient_hazen_williams",
                "Hazen-Williams loss per metre",
                ONE,
                lateral.whereAny(
                        ONE,
                        () -> number(10.67 / StrictMath.pow(150, m), ONE)
                                .times(cubes.power(number(m, ONE)))
                                .over(size.power(number(4.8704, ONE)))),
                "10.67 Q^1.852 / (C^1.852 d^4.8704), C = 150, Q in m³/s and d in m");
        Line factor = s.line(
                "way_factor_hazen_williams",
                "Multiple-outlet factor of exponent 1.852",
                ONE,
                OutletFactor.of(m, lateral.outlets),
                OutletFactor.SOURCE);
        s.line(
                "way_friction_hazen_williams",
                "Check: friction by Hazen-Williams, C = 150",
                METRE,
                lateral.whereAny(METRE, () -> gradient.times(lateral.spaced.equivalentLength(factor))),
                "a check, not used; " + EqualOutlets.SOURCE);
    }

    private Formula frictionNote(Line friction) {
        Formula small = number(SMALL_SHARE, ONE).times(outlets.pressure).exceeds(friction);
        return when(
                lateral.outlets.isPositive(),
                when(
                        small,
                        text("Friction is under 5 % of the pressure at the outlets: it does not decide here."),
                        text("Friction is 5 % of the pressure at the outlets or more: it counts.")),
                text(""));
    }
}
