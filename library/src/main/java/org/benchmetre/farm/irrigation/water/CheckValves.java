package org.benchmetre.farm.irrigation.water;

import static org.benchmetre.budget.Formulas.none;
import static org.benchmetre.budget.Formulas.when;
import static org.benchmetre.farm.input.TradeUnits.COMMON;
import static org.benchmetre.farm.input.TradeUnits.ONE;

import org.benchmetre.budget.BudgetBuilder;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.ScheduleBuilder;
import org.benchmetre.budget.unit.Unit;
import org.benchmetre.farm.input.Sheets;
import org.benchmetre.farm.irrigation.hydraulics.Hydraulics;
import org.benchmetre.farm.irrigation.hydraulics.Ways;

/**
 * The water of each irrigation system as it would be if check valves or outlets that do not leak kept its lines full: nothing drains
 * between pulses, so that uniformity is that of lines that run full. What such outlets cost is in no figure here.
 *
 * <pre>
 * S = (G - Gv) c
 * S   saved a year, money/a             G   water given, m3/a
 * Gv  water given with valves, m3/a     c   cost of a cubic metre more, money/m3
 * </pre>
 */
public final class CheckValves {

    /** Water given with check valves, m3/a, by way. */
    public final Line given;
    /** What check valves would save in water, nutrient solution, drain and pumping, money/a, by way; nothing where they are fitted. */
    public final Line saved;

    CheckValves(BudgetBuilder b, Hydraulics h, GrossWater gross, Line costOfMore) {
        Ways ways = h.ways;
        ScheduleBuilder s = b.schedule(Sheets.IRRIGATION, "Water given, if check valves kept the lines full");
        s.note("What outlets with check valves cost more is not in it: it is the most that they may cost in a year.");
        Line even = s.line(
                "valve_uniformity_counted",
                "Uniformity counted, with check valves",
                ONE,
                ways.whereFilled(Allowance.counted(h.emissionUniformity)),
                "at least 20 %: " + COMMON);
        Line factor = s.line(
                "valve_gross_factor",
                "Water given over water kept, with check valves",
                ONE,
                gross.allowance.factor(even));
        given = s.line(
                "valve_gross_water",
                "Water given a year, with check valves",
                Unit.parse("m3/a"),
                when(gross.factor.isPositive(), gross.year.times(factor.over(gross.factor)), none(gross.year.unit())));
        saved = s.line(
                "valve_cost_saved",
                "Water, nutrient solution, drain and pumping saved by check valves",
                Unit.parse("money/a"),
                gross.year.minus(given).times(costOfMore));
    }
}
