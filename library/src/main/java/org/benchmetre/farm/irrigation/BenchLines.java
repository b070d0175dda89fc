package org.benchmetre.farm.irrigation;

import static org.benchmetre.budget.Formulas.greater;
import static org.benchmetre.budget.Formulas.none;
import static org.benchmetre.budget.Formulas.number;
import static org.benchmetre.budget.Formulas.one;
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
 * The lines of one bench: flow, friction, pressure at the far end, and how evenly they water, with classes and warnings. Hazen and
 * Williams with C = 150 stands beside as a check only: it understates small polyethylene laterals (Watters and Keller 1978, from
 * memory).
 */
final class BenchLines {

    private static final Unit KPA = Unit.parse("kPa");
    private static final Unit PER_HOUR = Unit.parse("L/h");
    private static final double SMALL_SHARE = 0.05;

    /** Pressure and friction along one lateral. */
    final Lateral lateral;
    /** Flow of a bench, L/h. */
    final Line flow;
    /** Flow for a plant, averaged, L/(h plant). */
    final Line flowPerPlant;
    /** Emission uniformity, %. */
    final Line uniformity;
    /** Its class in words. */
    final Line emissionClass;
    /** Whether friction decides, in words. */
    final Line frictionNote;
    /** The same where the pressure range is kept, else 0, %. */
    final Line uniformityInRange;

    private final Outlets outlets;

    BenchLines(
            BudgetBuilder b, Ways ways, Outlets outlets, Water water, InReach where, House house, Planting planting) {
        this.outlets = outlets;
        ScheduleBuilder s = b.schedule(Sheets.IRRIGATION, "Flow, friction and pressure of a bench");
        s.note(
                "Outlets have their rated pressure on average. Friction is the larger of the laminar and the turbulent total of a "
                        + "lateral; a sum from outlet to outlet is up to 11 % more where both are alike, near an inlet Reynolds number "
                        + "of 1,800.");
        flow = s.line("way_flow_per_bench", "Flow of a bench", PER_HOUR, where.onBench.times(outlets.flow));
        flowPerPlant = s.line(
                "way_flow_per_plant",
                "Flow for a plant",
                Unit.parse("L/(h plant)"),
                flow.over(planting.plantsPerBench));
        Formula run = when(outlets.run.isPositive(), outlets.run, house.benchLength);
        lateral = new Lateral(s, "way", run, outlets, water, where);
        Line friction = s.line("way_friction", "Friction", KPA, lateral.frictionHead.times(Lateral.KPA_PER_METRE));
        hazenWilliams(s, where);
        Formula last = none(ONE);
        Line far = s.line(
                "way_far_pressure",
                "Pressure at the far end",
                KPA,
                lateral.whereAny(KPA, () -> lateral.pressureBefore(last, lateral.slope())));
        Formula first = lateral.outlets.minus(one());
        Line highest = s.line(
                "way_highest_pressure",
                "Highest pressure at an outlet",
                KPA,
                lateral.whereAny(
                        KPA,
                        () -> greater(
                                lateral.pressureBefore(first, lateral.kindestSlope()),
                                lateral.pressureBefore(last, lateral.kindestSlope()))));
        frictionNote = s.textLine("way_friction_note", "Does friction decide?", frictionNote(friction));

        ScheduleBuilder even = b.schedule(Sheets.IRRIGATION, "How evenly a bench is watered");
        even.note(
                "Emission uniformity is that of new, clean outlets. Classes of uniformity: Merriam and Keller 1978 and ASAE EP458; "
                        + "of the maker's coefficient of variation: ASAE EP405.1; both from memory.");
        Line most =
                even.line("way_highest_outlet_flow", "Highest flow of an outlet", PER_HOUR, lateral.flowAt(highest));
        even.line(
                "way_flow_variation",
                "Flow variation, 1 - lowest/highest",
                Evenness.PERCENT,
                when(most.isPositive(), one().minus(lateral.lowestFlow.over(most)), none(ONE))
                        .in(Evenness.PERCENT));
        Formula allowed = when(
                outlets.exponent.isPositive(),
                Evenness.pressureVariation(water.flowVariation.in(ONE), guarded(outlets.exponent)),
                one());
        even.line(
                "way_pressure_variation_allowed",
                "Pressure variation that keeps flow in its limit",
                Evenness.PERCENT,
                lateral.whereAny(Evenness.PERCENT, () -> allowed.in(Evenness.PERCENT)),
                "1 - (1 - v)^(1/x); 100 % where flow does not depend on pressure");
        uniformity = even.line(
                "way_emission_uniformity",
                "Emission uniformity, new",
                Evenness.PERCENT,
                lateral.whereAny(
                        Evenness.PERCENT,
                        () -> Evenness.emissionUniformity(
                                outlets.variation, where.fewest.counting(ONE), lateral.lowestFlow.over(outlets.flow))));
        uniformityInRange = even.line(
                "way_uniformity_in_range",
                "The same where the pressure range is kept, else 0",
                Evenness.PERCENT,
                lateral.whereInRange(uniformity));
        Formula known = lateral.outlets.isPositive();
        emissionClass = even.textLine(
                "way_emission_class",
                "Its class",
                when(
                        known,
                        when(
                                uniformityInRange.isPositive(),
                                Evenness.uniformityClass(uniformity),
                                text("outside its pressure range")),
                        text("")));
        even.textLine(
                "way_cv_class",
                "Class of the outlet as made",
                when(known, Evenness.variationClass(outlets.variation, outlets.kind.is(Outlets.LINE)), text("")));
        Formula meets = when(water.target.exceeds(uniformityInRange), text("no"), text("yes"));
        even.textLine("way_meets_target", "Meets the uniformity asked for", when(known, meets, text("")));
        new BenchWarnings(even, ways, outlets, water, lateral);
    }

    private Formula guarded(Line exponent) {
        return when(exponent.isPositive(), exponent, one());
    }

    private void hazenWilliams(ScheduleBuilder s, InReach where) {
        double m = 1.852;
        Unit cubicMetres = Unit.parse("m3/s");
        Formula cubes = lateral.outlets.times(outlets.flow.in(cubicMetres)).over(number(1, cubicMetres));
        Formula size = outlets.diameter.in(METRE).over(number(1, METRE));
        Line gradient = s.line(
                "way_gradient_hazen_williams",
                "Hazen-Williams loss per metre",
                ONE,
                lateral.whereAny(
                        ONE,
                        () -> number(10.67 / StrictMath.pow(150, m), ONE)
                                .times(cubes.power(number(m, ONE)))
                                .over(size.power(number(4.8704, ONE)))));
        s.line(
                "way_friction_hazen_williams",
                "Check: friction by Hazen-Williams, C = 150",
                METRE,
                lateral.whereAny(
                        METRE,
                        () -> new Regime(
                                        m,
                                        gradient,
                                        lateral.outlets,
                                        where.step,
                                        outlets.connection,
                                        outlets.shortfall())
                                .loss()),
                "a check, not used: 10.67 L Q^1.852 / (C^1.852 D^4.8704)");
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
