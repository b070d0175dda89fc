package org.benchmetre.farm.ownership;

import static org.benchmetre.budget.Formulas.none;
import static org.benchmetre.budget.Formulas.text;

import java.util.ArrayList;
import java.util.List;
import org.benchmetre.budget.Axis;
import org.benchmetre.budget.BudgetBuilder;
import org.benchmetre.budget.Element;
import org.benchmetre.budget.Formula;
import org.benchmetre.budget.Given;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.Rows;
import org.benchmetre.budget.ScheduleBuilder;
import org.benchmetre.budget.unit.Unit;
import org.benchmetre.farm.crop.Harvest;
import org.benchmetre.farm.input.Sheets;
import org.benchmetre.farm.layout.House;
import org.benchmetre.farm.layout.Planting;
import org.benchmetre.farm.takeoff.CostGroups;

/**
 * The enterprise budget of a year, before labour and energy: receipts, what moves with yield, yearly cost by group, what is left;
 * each in total, per metre of bench, per plant and per square metre of floor, with a blank column for one's own figures. Costs carry
 * a minus sign, so that the rows above the last add up to it.
 */
public final class EnterpriseBudget {

    private static final Unit YEARLY = Unit.parse("money/a");

    private final List<String> keys = new ArrayList<>();
    private final List<Formula> labels = new ArrayList<>();
    private final List<Formula> values = new ArrayList<>();

    /**
     * Declares the lines.
     *
     * @param b where schedules are added
     * @param harvest receipts
     * @param groups the groups of cost
     * @param groupLabel their labels
     * @param groupCost their yearly cost
     * @param margin what is left
     * @param house benches
     * @param planting plants
     */
    public EnterpriseBudget(
            BudgetBuilder b,
            Harvest harvest,
            CostGroups groups,
            Line groupLabel,
            Line groupCost,
            Line margin,
            House house,
            Planting planting) {
        row("receipts", text("Receipts"), harvest.receipts);
        row("yield_costs", text("Picking, packing, packs and commission"), minus(harvest.yieldCosts));
        for (int i = 0; i < groups.axis.size(); i++) {
            row(
                    groups.axis.keys().get(i),
                    new Element(groupLabel, groups.axis, i),
                    minus(new Element(groupCost, groups.axis, i)));
        }
        row("left", text("Left, before labour and energy"), margin);
        Axis axis = Axis.rows("budget_row", "Row", keys, 0);

        ScheduleBuilder s = b.schedule(Sheets.BUDGET, "Enterprise budget of a year, before labour and energy");
        s.note(
                "Receipts less what moves with yield less yearly cost (capital recovery, no loan interest). Costs carry a minus sign.");
        b.nameRows(axis, s.textLine("budget_label", "Receipts and costs", new Rows(axis, labels)));
        Line value = s.line("budget_value", "Value", YEARLY, new Rows(axis, values));
        s.line("budget_per_metre", "Per metre of bench", Unit.parse("money/(m a)"), value.over(house.benchMetres));
        s.line("budget_per_plant", "Per plant", Unit.parse("money/(plant a)"), value.over(planting.plantCount));
        s.line("budget_per_area", "Per m² of floor", Unit.parse("money/(m2 a)"), value.over(house.houseArea));
        s.entry("budget_own", "Your own figure", YEARLY, axis).given(Given.blank(YEARLY));
    }

    private void row(String key, Formula label, Formula value) {
        keys.add(keys.contains(key) ? key + "_" + keys.size() : key);
        labels.add(label);
        values.add(value);
    }

    private static Formula minus(Formula cost) {
        return none(YEARLY).minus(cost);
    }
}
