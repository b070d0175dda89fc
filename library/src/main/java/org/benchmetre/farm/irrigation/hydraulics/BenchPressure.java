package org.benchmetre.farm.irrigation.hydraulics;

import static org.benchmetre.budget.Formulas.greater;
import static org.benchmetre.budget.Formulas.one;
import static org.benchmetre.farm.input.TradeUnits.METRE;
import static org.benchmetre.farm.input.TradeUnits.ONE;

import org.benchmetre.budget.BudgetBuilder;
import org.benchmetre.budget.Formula;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.ScheduleBuilder;
import org.benchmetre.budget.unit.Unit;
import org.benchmetre.farm.input.Sheets;

/**
 * Pressure along the lines of one bench: at the inlet, where it is lowest, at the far end, where it is highest, which is at the first
 * outlet or, on a fall, at the last. See {@link LateralPressure}.
 */
final class BenchPressure {

    private static final Unit KPA = Unit.parse("kPa");

    /** Friction of one lateral. */
    final Lateral friction;
    /** Rise of the laterals. */
    final Slope slope;
    /** Pressure along one lateral. */
    final LateralPressure lateral;
    /** Highest pressure at any outlet, kPa. */
    final Line highest;

    BenchPressure(BudgetBuilder b, Lateral friction, Outlets outlets, Conditions water) {
        this.friction = friction;
        ScheduleBuilder s = b.schedule(Sheets.IRRIGATION, "Pressure along a bench");
        s.note("Outlets have their rated pressure on average. " + LateralPressure.SYMBOLS);
        slope = new Slope(s, outlets, water);
        lateral = new LateralPressure(s, "way", friction, slope, outlets);
        EqualOutlets spaced = friction.spaced;
        Line length = s.line(
                "way_lateral_length",
                "From the inlet to the last outlet",
                METRE,
                friction.whereAny(METRE, spaced::length));
        s.line(
                "way_far_pressure",
                "Pressure at the far end",
                KPA,
                lateral.at(friction.frictionHead, length, slope.steepest),
                LateralPressure.SOURCE);
        Formula allButOne = friction.outlets.minus(one());
        Line beyond = s.line(
                "way_outlets_beyond_first", "Outlets beyond the first", ONE, friction.whereAny(ONE, () -> allButOne));
        Line toTheFirst = friction.frictionBefore(s, "way_first", "the first outlet", beyond);
        Line first = s.line(
                "way_first_pressure",
                "Pressure at the first outlet, at its highest",
                KPA,
                lateral.at(toTheFirst, spaced.distanceBefore(beyond), slope.kindest),
                LateralPressure.SOURCE);
        Line last = s.line(
                "way_last_pressure",
                "Pressure at the last outlet, at its highest",
                KPA,
                lateral.at(friction.frictionHead, length, slope.kindest),
                LateralPressure.SOURCE);
        highest = s.line("way_highest_pressure", "Highest pressure at an outlet", KPA, greater(first, last));
    }
}
