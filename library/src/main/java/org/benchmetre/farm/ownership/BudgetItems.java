package org.benchmetre.farm.ownership;

import static org.benchmetre.budget.Formulas.joined;
import static org.benchmetre.budget.Formulas.one;
import static org.benchmetre.budget.Formulas.text;

import java.util.List;
import java.util.function.UnaryOperator;
import org.benchmetre.budget.Axis;
import org.benchmetre.budget.Element;
import org.benchmetre.budget.Formula;
import org.benchmetre.budget.Line;
import org.benchmetre.farm.crop.Harvest;
import org.benchmetre.farm.takeoff.CostGroups;

/**
 * What stands in the enterprise budget, in reading order: each amount once, with its quantity. Capital recovery is not paid in cash;
 * what is used up, insurance and property tax are.
 */
public final class BudgetItems {

    private static final String KG = "kg";
    private static final String YEAR = "year";

    /** All rows. */
    final BudgetRows rows = new BudgetRows();
    /** What moves with yield. */
    final MovesWithYield moves;

    private Sums sums;

    /**
     * The sums of the parts of the budget, each over the sums that other sections keep of the same amounts, so that what moves one amount
     * moves few cells on its way to the total. The rows add up to them.
     *
     * @param operating operating costs, money/a
     * @param ownership ownership costs, money/a
     * @param overhead overhead, money/a
     */
    public record Sums(Formula operating, Formula ownership, Formula overhead) {}

    /**
     * Starts with receipts and what selling takes.
     *
     * @param moves fruit, receipts and what moves with yield
     * @param bends what full channels make of low and high yield
     * @param currency what commission is counted by
     */
    public BudgetItems(MovesWithYield moves, YieldBends bends, String currency) {
        this.moves = moves;
        Harvest h = moves.harvest;
        receipt(BudgetRow.of("first_grade", "Fruit, first grade", KG, h.firstGradeKg, h.firstGradeReceipts)
                .withYield(bends.first()));
        receipt(BudgetRow.of("second_grade", "Fruit, second grade", KG, h.secondGradeKg, h.secondGradeReceipts)
                .withYield(bends.second()));
        operating(BudgetRow.of("packs", "Packs", KG, h.yield, h.packsCost).withYield(bends.packs()));
        operating(BudgetRow.of("channel_freight", "Freight of fruit", KG, h.yield, h.channelFreight)
                .withYield(bends.freight()));
        operating(BudgetRow.of("commission", "Commission on receipts", currency, h.receipts, h.commissionCost)
                .withYield(bends.commission()));
        operating(BudgetRow.of("other_by_kg", "Other costs by the kg", KG, h.yield, h.otherCosts)
                .withYield());
    }

    private void receipt(BudgetRow row) {
        rows.add(BudgetPart.RECEIPT, row);
    }

    /**
     * An operating cost.
     *
     * @param row quantity and money
     * @return this
     */
    public BudgetItems operating(BudgetRow row) {
        rows.add(BudgetPart.OPERATING, row);
        return this;
    }

    /**
     * Amounts by group of work.
     *
     * @param label labels of the groups
     * @param quantity by group; null for once a year
     * @param amount money a year by group
     * @param moves what of it moves with yield
     */
    public record ByGroup(Line label, Line quantity, Line amount, Line moves) {}

    /**
     * Hired work, a row for each group.
     *
     * @param work hours, what they cost and what of that moves with yield
     * @return this
     */
    public BudgetItems hired(ByGroup work) {
        each("work_", work, "h", label -> joined(label, text(" labour")));
        return this;
    }

    /**
     * Inputs, a row for each group.
     *
     * @param inputs what they cost and what of that moves with yield
     * @return this
     */
    public BudgetItems inputs(ByGroup inputs) {
        each("inputs_", inputs, YEAR, label -> joined(label, text(" inputs")));
        return this;
    }

    private void each(String prefix, ByGroup g, String unit, UnaryOperator<Formula> words) {
        Axis axis = g.label().axes().get(0);
        for (int i = 0; i < axis.size(); i++) {
            Formula count = g.quantity() == null ? one() : new Element(g.quantity(), axis, i);
            Formula label = words.apply(new Element(g.label(), axis, i));
            operating(BudgetRow.of(
                            prefix + axis.keys().get(i), label, text(unit), count, new Element(g.amount(), axis, i))
                    .withYield(new Element(g.moves(), axis, i)));
        }
    }

    /**
     * Parts that are used up within a year, a row for each group.
     *
     * @param groups the groups of cost
     * @param label their labels
     * @param amount money a year of each group of parts
     * @param benchMetres metres of bench, the quantity of all of them
     * @return this
     */
    public BudgetItems usedUp(CostGroups groups, Line label, List<Formula> amount, Line benchMetres) {
        for (int i = 0; i < groups.partGroups(); i++) {
            Formula words = joined(new Element(label, groups.axis, i), text(", used up"));
            operating(
                    BudgetRow.of("used_up_" + groups.axis.keys().get(i), words, text("m"), benchMetres, amount.get(i)));
        }
        return this;
    }

    /**
     * Ownership costs: parts by their groups, installing, insurance and property tax.
     *
     * @param groups the groups of cost
     * @param label their labels
     * @param recovery capital recovery of the groups of parts, of those that last
     * @param installing installing and taking out a year
     * @param charges insurance and property tax a year
     * @param benchMetres metres of bench, the quantity of all of them
     * @return this
     */
    public BudgetItems ownership(
            CostGroups groups,
            Line label,
            List<Formula> recovery,
            Formula installing,
            Formula charges,
            Line benchMetres) {
        for (int i = 0; i < groups.partGroups(); i++) {
            String key = "own_" + groups.axis.keys().get(i);
            Formula words = new Element(label, groups.axis, i);
            owning(BudgetRow.of(key, words, text("m"), benchMetres, recovery.get(i))
                    .noCash());
        }
        owning(BudgetRow.of("own_installing", "Installing and taking out", "m", benchMetres, installing)
                .noCash());
        owning(BudgetRow.of("own_charges", "Insurance and property tax", "m", benchMetres, charges));
        return this;
    }

    /**
     * An ownership cost.
     *
     * @param row quantity and money
     * @return this
     */
    public BudgetItems owning(BudgetRow row) {
        rows.add(BudgetPart.OWNERSHIP, row);
        return this;
    }

    /**
     * Overhead.
     *
     * @param o management, office, land, vehicles, licences, house
     * @return this
     */
    public BudgetItems overhead(Overhead o) {
        overhead(BudgetRow.lump("management", text("Management"), o.management).inCash(o.managementCash));
        overhead(BudgetRow.lump("office", text("Office"), o.office));
        overhead(BudgetRow.of("land", "Land", "m²", o.floor, o.land).inCash(o.landCash));
        overhead(BudgetRow.lump("vehicles", text("Vehicles"), o.vehicles));
        overhead(BudgetRow.lump("licences", text("Licences"), o.licences));
        overhead(BudgetRow.lump("house_charge", text("House by bench and week"), o.houseCharge)
                .inCash(o.houseCash));
        return this;
    }

    /**
     * Says what the parts add up to.
     *
     * @param all the sum of each
     * @return this
     */
    public BudgetItems adding(Sums all) {
        sums = all;
        return this;
    }

    /** What the parts add up to. */
    Sums sums() {
        return sums;
    }

    private void overhead(BudgetRow row) {
        rows.add(BudgetPart.OVERHEAD, row);
    }
}
