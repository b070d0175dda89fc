package org.benchmetre.farm.pages;

import static org.benchmetre.farm.pages.Placed.cell;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.benchmetre.budget.Axis;
import org.benchmetre.budget.Budget;
import org.benchmetre.budget.CellRef;
import org.benchmetre.budget.Line;
import org.benchmetre.farm.input.FarmTable;
import org.benchmetre.page.Block;
import org.benchmetre.page.Column;
import org.benchmetre.page.FigureList;
import org.benchmetre.page.FigureRow;
import org.benchmetre.page.FixedWords;
import org.benchmetre.page.Page;
import org.benchmetre.page.Sentence;
import org.benchmetre.page.Sentences;
import org.benchmetre.page.Table;
import org.benchmetre.page.TableRow;
import org.benchmetre.page.Tone;

/** What to order now, in whole packs and plants, and what start-up takes. */
final class ToBuyPage {

    private static final List<Integer> PARTS = List.of(28, 8, 6, 7, 10, 6, 10, 11, 7, 9, 11);
    private static final List<Integer> SUMS = List.of(20, 11, 11);

    /** Rows that the sums beside the parts take, but for the groups. */
    private static final int SUM_ROWS = 24;

    private ToBuyPage() {}

    static Page of(Budget budget) {
        Axis parts = budget.line("material_label").axes().get(0);
        PartRows rows = new PartRows(budget, parts);
        int groups = budget.line("buy_group_label").size();
        boolean listed = FarmTable.CROPS.hasRows(budget.structure());
        boolean below = rows.height() >= SUM_ROWS + groups;
        Page page = Page.payment("To buy", "What has to be ordered now?")
                .head(new Sentences(List.of(
                        new Sentence(budget.line("order_now"), Tone.LEAD),
                        new Sentence(budget.line("order_plants_by"), Tone.PLAIN),
                        new Sentence(budget.line("order_price_level"), Tone.WARNING))))
                .left(PARTS, needed(budget, parts, below ? rows.all() : rows.needed()));
        Page all = page.right(SUMS, sums(budget, listed));
        return below || rows.ofOthers().isEmpty() ? all : all.foot(ofOthers(budget, parts, rows));
    }

    private static Table needed(Budget budget, Axis parts, List<TableRow> rows) {
        List<CellRef> added = singles(budget, "added_freight_tax", "added_purchase_cost", "added_left_value");
        List<CellRef> all = singles(budget, "freight_tax_total", "purchase_cost", "leftover_value");
        return table(
                "Parts, in whole packs, " + budget.currency(),
                budget,
                parts,
                Placed.with(
                        rows,
                        TableRow.single("Parts added below the list", added),
                        TableRow.single("All parts", all).total()));
    }

    /** Rows that fold away, below both panels where the list is short: a folded row takes what stands beside it along. */
    private static Table ofOthers(Budget budget, Axis parts, PartRows rows) {
        return table(
                "Parts of the other irrigation systems, folded away while none is bought",
                budget,
                parts,
                rows.ofOthers());
    }

    private static Table table(String title, Budget budget, Axis parts, List<TableRow> rows) {
        return Table.of(
                        title,
                        parts,
                        Column.of("Part", budget.line("material_label")),
                        Column.of("Pack of", budget.line("material_pack")),
                        Column.of("Unit", budget.line("material_unit_counted")),
                        Column.of("Packs", budget.line("material_packs")),
                        Column.of("Price a pack", budget.line("material_price")),
                        Column.of("Price year", budget.line("material_price_year")),
                        Column.of("Freight, tax", budget.line("material_freight_tax")),
                        Column.of("Money", budget.line("material_purchase_cost")),
                        Column.of("Left", budget.line("material_left")),
                        Column.of("Value left", budget.line("material_left_value")),
                        Column.of("Supplier", budget.line("material_supplier")))
                .rows(rows)
                .nothingWithout(budget.line("material_purchase_cost"));
    }

    private static List<CellRef> singles(Budget budget, String freight, String cost, String left) {
        return Arrays.asList(
                null,
                null,
                null,
                null,
                null,
                null,
                cell(budget, freight),
                cell(budget, cost),
                null,
                cell(budget, left),
                null);
    }

    private static Table groups(Budget budget) {
        Line label = budget.line("buy_group_label");
        Axis axis = label.axes().get(0);
        Table table = Table.of(
                "By group",
                axis,
                Column.of("Group", label),
                Column.of("Money", budget.line("buy_group_cost")),
                Column.of("Left over", budget.line("buy_group_left_value")));
        List<CellRef> total = Arrays.asList(null, cell(budget, "purchase_cost"), cell(budget, "leftover_value"));
        return table.rows(
                Placed.with(table.rows(), TableRow.single("All parts", total).total()));
    }

    private static Table plantsByCrop(Budget budget) {
        Line label = budget.line("crop_label");
        Table table = Table.of(
                "Plants, whole, by crop",
                label.axes().get(0),
                Column.of("Crop", label),
                Column.of("To order", budget.line("crop_plants_ordered")),
                Column.of("Money", budget.line("crop_plants_cost")));
        List<CellRef> total = Arrays.asList(null, cell(budget, "plants_ordered"), cell(budget, "plants_order_cost"));
        return table.rows(Placed.with(
                table.rows(), TableRow.single("Plants, whole", total).total()));
    }

    private static Block[] sums(Budget budget, boolean listed) {
        List<Block> blocks = new ArrayList<>(List.of(groups(budget)));
        blocks.addAll(listed ? List.of(plantsByCrop(budget), orders(budget)) : List.of(plants(budget)));
        blocks.addAll(List.of(
                startUp(budget),
                leftOver(budget),
                new FixedWords("", "Packs × price + freight and tax = money.", Tone.FAINT)));
        return blocks.toArray(Block[]::new);
    }

    private static Table orders(Budget budget) {
        Line label = budget.line("crop_label");
        return Table.of(
                "When to order plants",
                label.axes().get(0),
                Column.of("Crop", label),
                Column.of("Order in", budget.line("crop_order_told")),
                Column.of("For", budget.line("crop_planted_told")));
    }

    private static FigureList plants(Budget budget) {
        return new FigureList(
                "Plants",
                List.of(
                        FigureRow.of("Plants that stand", budget.line("plant_count")),
                        FigureRow.of("To order, with losses", budget.line("plants_ordered")),
                        FigureRow.of("Price of a plant", budget.line("plants_order_price")),
                        FigureRow.of("Freight", budget.line("plants_order_freight")),
                        FigureRow.of("Growing on", budget.line("plants_growing_on")),
                        FigureRow.total("Plants, whole", budget.line("plants_order_cost"))));
    }

    private static FigureList startUp(Budget budget) {
        return new FigureList(
                "Start-up cash",
                List.of(
                        FigureRow.of("Parts, whole packs", budget.line("purchase_cost")),
                        FigureRow.of("Plants, whole", budget.line("plants_order_cost")),
                        FigureRow.of("Installing labour", budget.line("startup_labour")),
                        FigureRow.of("House, contingency", budget.line("startup_lumps")),
                        FigureRow.total("Start-up cash", budget.line("startup_cash"))));
    }

    private static FigureList leftOver(Budget budget) {
        return new FigureList(
                "Start-up cash against first cost",
                List.of(
                        FigureRow.of("First cost, exact", budget.line("first_cost_total")),
                        FigureRow.of("Left over, rounded up", budget.line("startup_left")),
                        FigureRow.total("Start-up cash", budget.line("startup_cash"))));
    }
}
