package org.benchmetre.farm.irrigation.hydraulics;

import static org.benchmetre.budget.Formulas.and;
import static org.benchmetre.budget.Formulas.greater;
import static org.benchmetre.budget.Formulas.none;
import static org.benchmetre.budget.Formulas.not;
import static org.benchmetre.budget.Formulas.number;
import static org.benchmetre.budget.Formulas.when;
import static org.benchmetre.farm.input.TradeUnits.METRE;
import static org.benchmetre.farm.input.TradeUnits.ONE;

import org.benchmetre.budget.BudgetBuilder;
import org.benchmetre.budget.Formula;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.ScheduleBuilder;
import org.benchmetre.budget.unit.Unit;
import org.benchmetre.farm.input.Sheets;
import org.benchmetre.farm.input.Tables;
import org.benchmetre.farm.layout.House;
import org.benchmetre.farm.layout.Planting;

/**
 * Where the outlets are: how far apart along a line, how many to a bench, and the fewest in reach of any plant.
 *
 * <pre>
 * 2c = 2 sqrt(r² - o²)              stretch of a line that is in reach of a plant beside it
 * n  = lines wholeDown(2c / s)      fewest outlets in reach of a plant
 * r  reach of an outlet's wetting, m    o  sideways from plant to line, m    s  spacing of outlets, m
 * </pre>
 *
 * However the outlets fall, at least wholeDown(2c / s) of them lie on the stretch, and some plant has no more. Plain geometry.
 *
 * <p>Every line of a bench is taken to lie at the same offset from each plant it serves; a line further away than its reach counts
 * for nothing. Where outlets follow the plants each plant has its own.
 */
final class InReach {

    /** Distance between outlets along a line; 0 where there are none. */
    final Line step;
    /** Outlets on a bench, a plain number. */
    final Line onBench;
    /** Fewest outlets in reach of a plant, outlet/plant. */
    final Line fewest;

    InReach(BudgetBuilder b, Ways ways, Outlets outlets, House house, Planting planting) {
        ScheduleBuilder s = b.shared(Sheets.IRRIGATION, Tables.OUTLETS);
        s.note(
                "The fewest outlets in reach of any plant, however plants and outlets fall beside one another. All lines of a bench "
                        + "are taken to lie equally far from each plant they serve.");
        step = s.line(
                "way_outlet_step",
                "Between outlets along a line",
                METRE,
                when(ways.spacing.isPositive(), ways.spacing, beside(ways, house, planting)),
                "where outlets follow the plants, bench length over the outlets of one line rounded up");
        onBench = s.line(
                "way_outlets_per_bench",
                "Outlets on a bench",
                ONE,
                ways.outletCount.counting(ONE).over(house.benchCount.counting(ONE)));
        Formula aside = greater(square(outlets.reach).minus(square(outlets.offset)), none(ONE));
        Line stretch = s.line(
                "way_stretch_in_reach",
                "Stretch of a line in reach of a plant",
                METRE,
                number(2, ONE).times(aside.power(number(0.5, ONE))).counting(METRE),
                "2 sqrt(reach² - offset²), plane geometry");
        Formula alongTheLine = ways.lines.times(stretch.over(ways.spacing).wholeDown());
        Unit perPlant = Unit.parse("outlet/plant");
        fewest = s.line(
                "way_outlets_in_reach",
                "Fewest outlets in reach of a plant",
                perPlant,
                when(ways.spacing.isPositive(), alongTheLine.counting(perPlant), ways.perPlant),
                "lines times wholeDown(stretch / spacing)");
        s.warning(
                "way_reach_warning",
                "Outlets in reach of every plant",
                and(ways.key.isFilled(), outlets.flow.isPositive(), not(fewest.isPositive())),
                "Some plants have no outlet in reach and stay dry. Choose a closer outlet_spacing (or raise "
                        + "outlets_per_plant), or bring the line nearer (strip_offset).");
        s.warning(
                "way_spacing_warning",
                "Outlet spacing against the bench",
                and(ways.key.isFilled(), ways.spacing.exceeds(house.benchLength)),
                "The outlets are further apart than the bench is long, so that a line has none. Choose a closer outlet_spacing.");
    }

    private static Formula beside(Ways ways, House house, Planting planting) {
        Formula onOneLine = planting.plantsPerBench
                .counting(ONE)
                .times(ways.perPlant.counting(ONE))
                .over(ways.lines)
                .wholeUp();
        Formula any = and(ways.lines.isPositive(), ways.perPlant.isPositive());
        return when(any, house.benchLength.over(greater(onOneLine, number(1, ONE))), none(METRE));
    }

    private static Formula square(Line length) {
        return length.counting(ONE).power(number(2, ONE));
    }
}
