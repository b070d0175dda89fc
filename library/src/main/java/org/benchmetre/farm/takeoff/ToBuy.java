package org.benchmetre.farm.takeoff;

import static org.benchmetre.budget.Formulas.none;
import static org.benchmetre.budget.Formulas.sum;
import static org.benchmetre.budget.Formulas.text;
import static org.benchmetre.farm.input.TradeUnits.MONEY;

import java.util.List;
import java.util.stream.IntStream;
import org.benchmetre.budget.Axis;
import org.benchmetre.budget.BudgetBuilder;
import org.benchmetre.budget.Element;
import org.benchmetre.budget.Formula;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.Rows;
import org.benchmetre.budget.ScheduleBuilder;
import org.benchmetre.farm.input.Sheets;
import org.benchmetre.farm.input.Tables;

/**
 * What is ordered now, for the chosen irrigation system: freight and tax of each part, whole packs by group, and what is filled in below
 * the list of the scenario. Packs x price of a pack at the level of prices + freight and tax = money, part by part. Plain sums.
 */
public final class ToBuy {

    /** Name of the axis of groups. */
    public static final String GROUPS = "buy_group";

    /**
     * Declares the lines.
     *
     * @param b where schedules are added
     * @param m parts as entered
     * @param t their quantities and costs
     * @param costs groups of the parts
     */
    public ToBuy(BudgetBuilder b, Materials m, TakeOff t, CostGroups costs) {
        ScheduleBuilder list = b.shared(Sheets.MATERIALS, Tables.PARTS_BOUGHT);
        ScheduleBuilder below = b.schedule(Sheets.MATERIALS, "To buy, parts added below the list");
        Line onPrice = list.line(
                "material_freight_tax",
                "Freight and sales tax",
                MONEY,
                t.bought.minus(t.packs.times(m.price).times(t.priceLevel)));
        byGroup(b, m, t, costs);
        below.line("added_freight_tax", "Freight and sales tax", MONEY, below(onPrice, m.axis));
        below.line("added_purchase_cost", "Whole packs", MONEY, below(t.bought, m.axis));
        below.line("added_left_value", "Value left over", MONEY, below(t.leftValue, m.axis));
        below.line("freight_tax_total", "All parts, freight and sales tax", MONEY, sum(onPrice, m.axis));
    }

    /** Sum over the spare rows alone. */
    private static Formula below(Line byPart, Axis parts) {
        return IntStream.range(0, parts.size())
                .filter(parts::isSpare)
                .<Formula>mapToObj(row -> new Element(byPart, parts, row))
                .reduce(Formula::plus)
                .orElse(none(MONEY));
    }

    private static void byGroup(BudgetBuilder b, Materials m, TakeOff t, CostGroups costs) {
        ScheduleBuilder s = b.schedule(Sheets.MATERIALS, "To buy, by group");
        Axis axis = Axis.rows(GROUPS, "Group", m.groups.keys(), 0);
        List<Formula> names =
                m.groups.names().stream().<Formula>map(name -> text(name)).toList();
        Line label = s.textLine("buy_group_label", "Group", new Rows(axis, names));
        b.nameRows(axis, label);
        s.line("buy_group_left_value", "Left over", MONEY, new Rows(axis, costs.ofParts(t.leftValue)));
        s.line("buy_group_cost", "Whole packs", MONEY, new Rows(axis, costs.ofParts(t.bought)));
    }
}
