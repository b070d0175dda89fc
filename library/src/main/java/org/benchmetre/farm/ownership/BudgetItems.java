package org.benchmetre.farm.ownership;

import java.util.ArrayList;
import java.util.List;
import org.benchmetre.budget.Element;
import org.benchmetre.budget.Formula;
import org.benchmetre.budget.Line;
import org.benchmetre.farm.crop.Harvest;
import org.benchmetre.farm.takeoff.CostGroups;

/** What stands in the enterprise budget, in reading order: each amount once, with its quantity. */
public final class BudgetItems {

    private final BudgetRows receipts = new BudgetRows().section(BudgetRow.RECEIPT);
    private final BudgetRows operating = new BudgetRows().section(BudgetRow.OPERATING);
    private final BudgetRows owning = new BudgetRows().section(BudgetRow.OWNERSHIP);
    private final BudgetRows overheads = new BudgetRows().section(BudgetRow.OVERHEAD);
    private final MovesWithYield moves;
    private Sums sums;

    /**
     * The sums of the sections, each over the sums that other sections keep of the same amounts, so that what moves one amount moves
     * few cells on its way to the total. The rows add up to them.
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
     */
    public BudgetItems(MovesWithYield moves) {
        this.moves = moves;
        Harvest h = moves.harvest;
        receipts.row("first_grade", "Fruit, first grade", "kg", h.firstGradeKg, h.firstGradeReceipts)
                .row("second_grade", "Fruit, second grade", "kg", h.secondGradeKg, h.secondGradeReceipts);
        operating
                .row("packs", "Packs", "kg packed", h.yield, h.packsCost)
                .row("channel_freight", "Freight of fruit", "kg sent", h.yield, h.channelFreight)
                .row("commission", "Commission, for each unit of receipts", "receipts", h.receipts, h.commissionCost)
                .row("other_by_kg", "Other costs by the kg", "kg", h.yield, h.otherCosts);
    }

    /**
     * An operating cost.
     *
     * @param key of its row
     * @param label what a reader sees
     * @param unit unit of the quantity, in words
     * @param quantity a year
     * @param amount money a year
     * @return this
     */
    public BudgetItems operating(String key, String label, String unit, Formula quantity, Formula amount) {
        operating.row(key, label, unit, quantity, amount);
        return this;
    }

    /**
     * Operating costs of a table, a row each.
     *
     * @param prefix words before each label; empty for none
     * @param label labels along the table
     * @param unit unit of the quantity, in words
     * @param quantity a year, along the table; null for once a year
     * @param amount money a year, along the table
     * @return this
     */
    public BudgetItems operatingEach(String prefix, Line label, String unit, Line quantity, Line amount) {
        operating.each(label.axes().get(0), prefix, label, unit, quantity, amount);
        return this;
    }

    /**
     * Ownership costs: parts by their groups, installing, insurance and property tax.
     *
     * @param groups the groups of cost
     * @param label their labels
     * @param recovery capital recovery of the groups of parts
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
        String unit = "m of bench";
        for (int i = 0; i < groups.partGroups(); i++) {
            String key = "own_" + groups.axis.keys().get(i);
            owning.row(key, new Element(label, groups.axis, i), unit, benchMetres, recovery.get(i));
        }
        owning.row("own_installing", "Installing and taking out", unit, benchMetres, installing);
        owning.row("own_charges", "Insurance and property tax", unit, benchMetres, charges);
        return this;
    }

    /**
     * A further ownership cost.
     *
     * @param key of its row
     * @param label what a reader sees
     * @param unit unit of the quantity, in words
     * @param quantity a year
     * @param amount money a year
     * @return this
     */
    public BudgetItems owning(String key, String label, String unit, Formula quantity, Formula amount) {
        owning.row(key, label, unit, quantity, amount);
        return this;
    }

    /**
     * Overhead.
     *
     * @param o management, office, land, house
     * @return this
     */
    public BudgetItems overhead(Overhead o) {
        overheads
                .lump("management", "Management", o.management)
                .lump("office", "Office", o.office)
                .row("land", "Land", "m² of floor", o.floor, o.land)
                .lump("house_charge", "House by bench and week", o.houseCharge);
        return this;
    }

    /**
     * Says what the sections add up to.
     *
     * @param all the sum of each
     * @return this
     */
    public BudgetItems adding(Sums all) {
        sums = all;
        return this;
    }

    /** What the sections add up to. */
    Sums sums() {
        return sums;
    }

    MovesWithYield moves() {
        return moves;
    }

    List<BudgetRow> counted() {
        List<BudgetRow> all = new ArrayList<>(receipts.all());
        all.addAll(operating.all());
        all.addAll(owning.all());
        all.addAll(overheads.all());
        return all;
    }

    /** Costs added up so far, and what receipts leave above them. */
    record Sum(Line costs, Line returnsAbove) {}

    List<BudgetRow> withTotals(Line sales, Sum running, Line owned, Formula overhead, Sum all) {
        List<BudgetRow> rows = new ArrayList<>(receipts.all());
        rows.addAll(new BudgetRows()
                .total("total_receipts", "Total receipts", sales)
                .all());
        rows.addAll(operating.all());
        rows.addAll(new BudgetRows()
                .total("total_operating", "Total operating costs", running.costs())
                .total("above_operating", "Returns above operating costs", running.returnsAbove())
                .all());
        rows.addAll(owning.all());
        rows.addAll(new BudgetRows()
                .total("total_ownership", "Total ownership costs", owned)
                .all());
        rows.addAll(overheads.all());
        rows.addAll(new BudgetRows()
                .total("total_overhead", "Total overhead", overhead)
                .total("total_cost", "Total cost", all.costs())
                .total("left", "Returns above total cost", all.returnsAbove())
                .all());
        return rows;
    }
}
