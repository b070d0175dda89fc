package org.benchmetre.farm.irrigation.hydraulics;

import static org.benchmetre.budget.Formulas.and;
import static org.benchmetre.budget.Formulas.none;
import static org.benchmetre.budget.Formulas.number;
import static org.benchmetre.budget.Formulas.when;
import static org.benchmetre.farm.input.TradeUnits.METRE;
import static org.benchmetre.farm.input.TradeUnits.MILLIMETRE;
import static org.benchmetre.farm.input.TradeUnits.ONE;

import java.util.List;
import org.benchmetre.budget.BudgetBuilder;
import org.benchmetre.budget.Formula;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.ScheduleBuilder;
import org.benchmetre.budget.entry.Bounds;
import org.benchmetre.budget.unit.Unit;
import org.benchmetre.farm.input.Columns;
import org.benchmetre.farm.input.Sheets;
import org.benchmetre.farm.input.Tables;

/**
 * What a maker's sheet and a tape measure say of the outlets and the pipe of each way: further columns of {@code irrigation.csv}.
 * An outlet gives q = k H^x: {@code outlet_flow} at {@code outlet_pressure} fixes k, and x is the {@code flow_exponent}, 0 for
 * a fully compensating outlet, about 0.5 for a turbulent path, 1 for a laminar one.
 */
final class Outlets {

    /** Outlets that stand apart, each for a plant. */
    static final String POINT = "point";
    /** Outlets along a line that wet a strip. */
    static final String LINE = "line";
    /** Fed half way along the bench. */
    static final String MIDDLE = "middle";
    /** First outlet half a spacing from the inlet. */
    static final String HALF = "half";
    /** Check valves in the outlets. */
    static final String YES = "yes";

    private static final Unit KPA = Unit.parse("kPa");

    /** Flow of one outlet at its rated pressure, L/h; 0 where unknown. */
    final Line flow;
    /** Pressure at which that flow is rated, and which the outlets of a bench are to have on average, kPa. */
    final Line pressure;
    /** Exponent x of pressure. */
    final Line exponent;
    /** Least pressure to work at, kPa; 0 where unknown. */
    final Line lowPressure;
    /** Greatest pressure to work at, kPa; 0 where unknown. */
    final Line highPressure;
    /** Maker's coefficient of variation of flow. */
    final Line variation;
    /** Point or line. */
    final Line kind;
    /** Sideways distance from plant to line. */
    final Line offset;
    /** How far from an outlet a plant still gets its water. */
    final Line reach;
    /** Inner diameter as measured, mm; 0 where unknown. */
    final Line diameter;
    /** Length of pipe that loses as much as one connection. */
    final Line connection;
    /** End or middle. */
    final Line feed;
    /** What the first spacing is short of, 0 or half of one. */
    final Line shortfall;
    /** Length of one line from its feed, 0 for that of the bench. */
    final Line run;
    /** Yes or no. */
    final Line valves;

    Outlets(BudgetBuilder b, Ways ways) {
        ScheduleBuilder s = b.shared(Sheets.IRRIGATION, Tables.OUTLETS);
        s.note(
                "From the maker's sheet and a measurement. Measure the inner diameter: the size in the name of a pipe is not it, and "
                        + "friction goes with its fifth power. An exponent of 0 is a compensating outlet.");
        Columns c = ways.columns.in(s);
        flow = c.numbers("outlet_flow", "way_outlet_flow", "Flow of an outlet", Unit.parse("L/h"), upTo(100_000), 0);
        pressure = c.documented(
                "outlet_pressure",
                "way_outlet_pressure",
                "Rated pressure of an outlet",
                KPA,
                new Bounds(0, false, 2000, false));
        exponent = c.numbers("flow_exponent", "way_flow_exponent", "Exponent of pressure", ONE, upTo(1.2), 0);
        lowPressure = c.numbers("pressure_low", "way_pressure_low", "Least working pressure", KPA, upTo(2000), 0);
        highPressure = c.numbers("pressure_high", "way_pressure_high", "Greatest working pressure", KPA, upTo(2000), 0);
        variation = c.documented(
                "coefficient_of_variation",
                "way_coefficient_of_variation",
                "Maker's coefficient of variation",
                ONE,
                upTo(0.5));
        kind = c.choice("outlet_kind", "way_outlet_kind", "Kind of outlet", List.of(POINT, LINE), POINT);
        offset = c.numbers("strip_offset", "way_strip_offset", "Sideways from plant to line", METRE, upTo(10), 0);
        reach = c.documented("reach", "way_reach", "Reach of the wetting", METRE, upTo(10));
        diameter =
                c.numbers("inner_diameter", "way_inner_diameter", "Inner diameter, measured", MILLIMETRE, upTo(200), 0);
        connection = c.numbers(
                "connection_loss", "way_connection_loss", "Pipe that loses as much as one barb", METRE, upTo(10), 0);
        feed = c.choice("feed_point", "way_feed_point", "Fed at", List.of("end", MIDDLE), "end");
        Line first = c.choice("first_outlet", "way_first_outlet", "First outlet at", List.of("full", HALF), "full");
        run = c.numbers("run_length", "way_run_length", "Length of a line, blank for the bench", METRE, upTo(2000), 0);
        valves = c.choice("check_valves", "way_check_valves", "Check valves", List.of(YES, "no"), "no");
        shortfall = s.line(
                "way_first_shortfall",
                "Short of a whole first spacing, share of it",
                ONE,
                when(first.is(HALF), number(0.5, ONE), none(ONE)),
                "one half where the first outlet stands at half a spacing");
    }

    private static Bounds upTo(double most) {
        return new Bounds(0, true, most, false);
    }

    /** Where everything needed to compute a line of pipe is filled in: a truth. */
    Formula areKnown() {
        return and(flow.isPositive(), pressure.isPositive(), diameter.isPositive());
    }

    /** Whether lines are fed half way along. */
    Formula isFedInTheMiddle() {
        return feed.is(MIDDLE);
    }
}
