package org.benchmetre.farm.irrigation.hydraulics;

import static org.benchmetre.budget.Formulas.none;
import static org.benchmetre.budget.Formulas.number;
import static org.benchmetre.budget.Formulas.one;
import static org.benchmetre.budget.Formulas.text;
import static org.benchmetre.budget.Formulas.when;
import static org.benchmetre.farm.input.TradeUnits.METRE;
import static org.benchmetre.farm.input.TradeUnits.ONE;

import java.util.ArrayList;
import java.util.List;
import org.benchmetre.budget.Axis;
import org.benchmetre.budget.BudgetBuilder;
import org.benchmetre.budget.Formula;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.Rows;
import org.benchmetre.budget.ScheduleBuilder;
import org.benchmetre.budget.unit.Unit;
import org.benchmetre.farm.input.Sheets;

/**
 * Pressure and flow along a lateral, from its first outlet to its last in tenths of the way between them; each point is the outlet
 * there. Of two laterals fed in the middle of a sloping bench this is the rising one.
 */
final class AlongTheRun {

    private static final int TENTHS = 10;

    AlongTheRun(BudgetBuilder b, Outlets outlets, Lateral lateral, BenchPressure bench) {
        Axis points = Axis.periods("point", "Point", keys());
        ScheduleBuilder list = b.schedule(Sheets.IRRIGATION, "Points along a lateral");
        b.nameRows(points, list.textLine("point_label", "Point", new Rows(points, names())));
        Line share = list.line(
                "point_share",
                "Share of the way from first outlet to last",
                ONE,
                new Rows(points, shares()),
                "tenths, a choice of this table");
        ScheduleBuilder s = b.schedule(Sheets.IRRIGATION, "Pressure and flow along a lateral");
        s.note("Each point is the outlet at that tenth of the way from the first outlet to the last.");
        Formula number = one().plus(lateral.outlets.minus(one()).times(share)).wholeDown();
        Line outlet =
                s.line("point_outlet", "Outlet, counted from the inlet", ONE, lateral.whereAny(ONE, () -> number));
        Line beyond = s.line("point_outlets_beyond", "Outlets beyond it", ONE, lateral.outlets.minus(outlet));
        Line distance = s.line(
                "point_distance",
                "Distance from the inlet",
                METRE,
                lateral.whereAny(METRE, () -> lateral.spaced.distanceBefore(beyond)));
        Line friction = lateral.frictionBefore(s, "point", "it", beyond);
        Line pressure = s.line(
                "point_pressure",
                "Pressure",
                Unit.parse("kPa"),
                bench.lateral.at(friction, distance, bench.slope.steepest),
                LateralPressure.SOURCE);
        Line flow = s.line(
                "point_flow",
                "Flow of the outlet",
                Unit.parse("L/h"),
                bench.lateral.flowAt(pressure),
                LateralPressure.FLOW);
        ScheduleBuilder relative = b.schedule(Sheets.IRRIGATION, "The same against the average of the line");
        Unit percent = Unit.parse("%");
        relative.line("point_pressure_share", "Pressure", percent, against(outlets.pressure, pressure));
        relative.line("point_flow_share", "Flow", percent, against(outlets.flow, flow));
    }

    private static Formula against(Line average, Line here) {
        Formula known = average.isPositive();
        Unit percent = Unit.parse("%");
        return when(
                known,
                here.over(when(known, average, number(1, average.unit()))).in(percent),
                none(percent));
    }

    private static List<String> keys() {
        List<String> keys = new ArrayList<>();
        for (int i = 0; i <= TENTHS; i++) {
            keys.add("point_" + i);
        }
        return keys;
    }

    private static List<Formula> names() {
        List<Formula> names = new ArrayList<>();
        for (int i = 0; i <= TENTHS; i++) {
            names.add(text(i == 0 ? "first" : i == TENTHS ? "last" : 100 / TENTHS * i + " %"));
        }
        return names;
    }

    private static List<Formula> shares() {
        List<Formula> shares = new ArrayList<>();
        for (int i = 0; i <= TENTHS; i++) {
            shares.add(i == 0 ? none(ONE) : number(i / (double) TENTHS, ONE));
        }
        return shares;
    }
}
