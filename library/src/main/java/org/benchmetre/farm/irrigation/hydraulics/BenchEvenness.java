package org.benchmetre.farm.irrigation.hydraulics;

import static org.benchmetre.budget.Formulas.none;
import static org.benchmetre.budget.Formulas.one;
import static org.benchmetre.budget.Formulas.text;
import static org.benchmetre.budget.Formulas.when;
import static org.benchmetre.farm.input.TradeUnits.ONE;

import org.benchmetre.budget.BudgetBuilder;
import org.benchmetre.budget.Formula;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.ScheduleBuilder;
import org.benchmetre.budget.unit.Unit;
import org.benchmetre.farm.input.Sheets;

/** How evenly the lines of a bench water, by {@link Evenness}, with classes and warnings. */
final class BenchEvenness {

    /** Evenness of outlets as made, a plain number. */
    final Line asMade;
    /** Emission uniformity, %. */
    final Line uniformity;
    /** Its class in words. */
    final Line emissionClass;
    /** The same where the pressure range is kept, else 0, %. */
    final Line uniformityInRange;

    private final ScheduleBuilder s;
    private final Formula known;

    BenchEvenness(BudgetBuilder b, Ways ways, Outlets outlets, Conditions water, InReach where, BenchPressure bench) {
        Lateral lateral = bench.friction;
        LateralPressure pressure = bench.lateral;
        known = lateral.outlets.isPositive();
        s = b.schedule(Sheets.IRRIGATION, "How evenly a bench is watered");
        s.note(
                "Emission uniformity is that of new, clean outlets. Classes of uniformity: Merriam and Keller 1978 and ASAE EP458; "
                        + "of the maker's coefficient of variation: ASAE EP405.1; both from memory.");
        flowVariation(outlets, water, bench);
        asMade = s.line(
                "way_evenness_as_made",
                "Evenness of outlets as made",
                ONE,
                Evenness.asMade(outlets.variation, where.fewest.counting(ONE)),
                "1 - 1.27 cv / sqrt(n), 0 where no outlet is in reach: Keller and Karmeli 1974");
        uniformity = s.line(
                "way_emission_uniformity",
                "Emission uniformity, new",
                Evenness.PERCENT,
                Evenness.emissionUniformity(asMade, lateral, pressure, outlets),
                Evenness.SOURCE);
        uniformityInRange = s.line(
                "way_uniformity_in_range",
                "The same where the pressure range is kept, else 0",
                Evenness.PERCENT,
                pressure.whereInRange(uniformity));
        Line band = s.line(
                "way_uniformity_band",
                "Class of that uniformity alone",
                ONE,
                when(known, Evenness.uniformityClass(uniformity), text("")),
                "Merriam and Keller 1978 and ASAE EP458, from memory");
        emissionClass = s.textLine("way_emission_class", "Its class", emissionClass(band, where));
        variationClass(outlets);
        new BenchWarnings(s, ways, outlets, water, lateral, pressure);
    }

    private void flowVariation(Outlets outlets, Conditions water, BenchPressure bench) {
        Line most = s.line(
                "way_highest_outlet_flow",
                "Highest flow of an outlet",
                Unit.parse("L/h"),
                bench.lateral.flowAt(bench.highest),
                LateralPressure.FLOW);
        s.line(
                "way_flow_variation",
                "Flow variation, 1 - lowest/highest",
                Evenness.PERCENT,
                when(most.isPositive(), one().minus(bench.lateral.lowestFlow.over(most)), none(ONE))
                        .in(Evenness.PERCENT));
        Formula guarded = when(outlets.exponent.isPositive(), outlets.exponent, one());
        Formula allowed = when(
                outlets.exponent.isPositive(), Evenness.pressureVariation(water.flowVariation.in(ONE), guarded), one());
        s.line(
                "way_pressure_variation_allowed",
                "Pressure variation that keeps flow in its limit",
                Evenness.PERCENT,
                bench.friction.whereAny(Evenness.PERCENT, () -> allowed.in(Evenness.PERCENT)),
                "1 - (1 - v)^(1/x); 100 % where flow does not depend on pressure");
    }

    /** What is wrong comes before the class: no outlet in reach first, since no change of pressure mends that. */
    private Formula emissionClass(Line band, InReach where) {
        Formula inRange = when(uniformityInRange.isPositive(), band, text("outside its pressure range"));
        Formula reached = when(where.fewest.isPositive(), inRange, text("no outlet in reach of some plants"));
        return when(known, reached, text(""));
    }

    private void variationClass(Outlets outlets) {
        String source = "ASAE EP405.1 table 1, from memory";
        Line point = s.line(
                "way_cv_class_point",
                "Class of the outlet as made, were it a point source",
                ONE,
                when(known, Evenness.pointClass(outlets.variation), text("")),
                source);
        Line line = s.line(
                "way_cv_class_line",
                "Class of the outlet as made, were it a line source",
                ONE,
                when(known, Evenness.lineClass(outlets.variation), text("")),
                source);
        s.textLine("way_cv_class", "Class of the outlet as made", when(outlets.kind.is(Outlets.LINE), line, point));
    }
}
