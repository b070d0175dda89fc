package org.benchmetre.farm.ownership;

import static org.benchmetre.budget.Formulas.none;
import static org.benchmetre.budget.Formulas.onlyWhen;
import static org.benchmetre.budget.Formulas.sumWhere;
import static org.benchmetre.budget.Formulas.text;
import static org.benchmetre.budget.Formulas.when;
import static org.benchmetre.farm.input.TradeUnits.ONE;

import java.util.List;
import java.util.function.Function;
import org.benchmetre.budget.Axis;
import org.benchmetre.budget.BudgetBuilder;
import org.benchmetre.budget.Formula;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.Rows;
import org.benchmetre.budget.ScheduleBuilder;
import org.benchmetre.budget.entry.Given;
import org.benchmetre.budget.unit.Unit;
import org.benchmetre.farm.input.Sheets;
import org.benchmetre.farm.layout.House;
import org.benchmetre.farm.layout.Planting;

/**
 * The enterprise budget of a year: receipts; operating costs; returns above operating costs; ownership costs by capital recovery at a
 * real rate; overhead; returns above total cost. No loan interest. Every row is a quantity at a price, in total, per metre of bench,
 * per plant, per square metre of floor and per kilogram, with a blank column for one's own figures. American Agricultural Economics
 * Association, Commodity Costs and Returns Estimation Handbook, 2000.
 */
public final class EnterpriseBudget {

    private static final Unit YEARLY = Unit.parse("money/a");

    /** Receipts less operating costs, money/a. */
    public final Line aboveOperating;
    /** Receipts less all costs, money/a. */
    public final Line aboveTotal;
    /** Operating costs, money/a. */
    public final Line operating;
    /** All costs, money/a. */
    public final Line total;
    /** Each cost, money/a; 0 for receipts. */
    public final Line costs;
    /** One row for each receipt, cost and sum. */
    public final Axis axis;

    private final BudgetBuilder b;
    private final ScheduleBuilder page;
    private Line section;
    private Line amount;

    /**
     * Declares the lines.
     *
     * @param b where schedules are added
     * @param page the table itself, opened early so that it leads its sheet
     * @param items receipts and costs in reading order
     * @param house benches
     * @param planting plants
     * @param fruit marketable fruit a year
     */
    public EnterpriseBudget(
            BudgetBuilder b, ScheduleBuilder page, BudgetItems items, House house, Planting planting, Line fruit) {
        this.b = b;
        this.page = page;
        page.note(
                "Receipts, operating costs, ownership costs by capital recovery at a real rate, overhead. No loan interest. The "
                        + "last column is for figures of one's own.");
        page.roomBelow(30);
        ScheduleBuilder sums = b.schedule(Sheets.BUDGET, "Sums of the budget");
        ScheduleBuilder units = b.schedule(Sheets.BUDGET, "Returns for each unit");
        ScheduleBuilder evens = b.schedule(Sheets.BUDGET, "Break-evens: picking, packing and selling move with yield");
        List<BudgetRow> counted = items.counted();
        costs = amounts(counted);
        Line receipts = sums.line("budget_receipts", "Receipts", YEARLY, sumOf(BudgetRow.RECEIPT));
        operating = sums.line("operating_cost_total", "Operating costs", YEARLY, sumOf(BudgetRow.OPERATING));
        aboveOperating = sums.line(
                "returns_above_operating", "Returns above operating costs", YEARLY, receipts.minus(operating));
        Line owning = sums.line("ownership_cost_total", "Ownership costs", YEARLY, sumOf(BudgetRow.OWNERSHIP));
        Line overhead = sums.line("budget_overhead", "Overhead", YEARLY, sumOf(BudgetRow.OVERHEAD));
        total = sums.line(
                "total_cost", "Total cost", YEARLY, operating.plus(owning).plus(overhead));
        aboveTotal = sums.line("returns_above_total", "Returns above total cost", YEARLY, receipts.minus(total));
        List<BudgetRow> rows = items.withTotals(
                receipts,
                new BudgetItems.Sum(operating, aboveOperating),
                owning,
                overhead,
                new BudgetItems.Sum(total, aboveTotal));
        axis = Axis.rows("budget_row", "Row", rows.stream().map(BudgetRow::key).toList(), 0);
        table(rows, house, planting, fruit);
        perUnit(units, house, planting);
        units.line(
                "returns_above_total_per_kg",
                "Returns above total cost, per kg of marketable fruit",
                BreakEvens.PER_KG,
                onlyWhen(fruit.isPositive(), aboveTotal.over(fruit), "no yield"));
        breakEvens(evens, new BreakEvens(items.moves().harvest, items.moves(), planting), operating, total);
    }

    private static void breakEvens(ScheduleBuilder s, BreakEvens evens, Line operating, Line all) {
        s.line(
                "break_even_price_operating",
                "Break-even price, operating costs alone",
                BreakEvens.PER_KG,
                evens.price(operating),
                BreakEvens.PRICE_RULE);
        s.line("break_even_price", "Break-even price", BreakEvens.PER_KG, evens.price(all), BreakEvens.PRICE_RULE);
        s.line(
                "break_even_yield_operating",
                "Break-even yield, operating costs alone",
                BreakEvens.GRAMS,
                evens.fruit(operating),
                BreakEvens.FRUIT_RULE);
        s.line(
                "break_even_yield",
                "Break-even yield, fruit per plant and crop",
                BreakEvens.GRAMS,
                evens.fruit(all),
                BreakEvens.FRUIT_RULE);
    }

    /** What counts, each row with its section, before any sum. */
    private Line amounts(List<BudgetRow> counted) {
        Axis items = Axis.rows(
                "budget_item", "Item", counted.stream().map(BudgetRow::key).toList(), 0);
        ScheduleBuilder s = b.schedule(Sheets.BUDGET, "Items as they count");
        b.nameRows(items, s.textLine("budget_item_label", "Item", rows(items, counted, BudgetRow::label)));
        section = s.textLine("budget_section", "Section", rows(items, counted, row -> text(row.section())));
        amount = s.line("budget_amount", "Amount", YEARLY, rows(items, counted, BudgetRow::amount));
        return s.line("budget_cost", "Cost", YEARLY, when(section.is(BudgetRow.RECEIPT), none(YEARLY), amount));
    }

    private Formula sumOf(String name) {
        return sumWhere(amount, section, text(name), section.axes().get(0));
    }

    private static Formula rows(Axis axis, List<BudgetRow> rows, Function<BudgetRow, Formula> cell) {
        return new Rows(axis, rows.stream().map(cell).toList());
    }

    private void table(List<BudgetRow> rows, House house, Planting planting, Line fruit) {
        b.nameRows(axis, page.textLine("budget_label", "Receipts and costs", rows(axis, rows, BudgetRow::label)));
        page.textLine("budget_kind", "Kind", rows(axis, rows, row -> text(row.section())));
        Line quantity = page.line("budget_quantity", "Quantity", ONE, rows(axis, rows, BudgetRow::quantity));
        page.textLine("budget_unit", "Unit", rows(axis, rows, row -> text(row.unit())));
        Line price = page.line(
                "budget_price",
                "Price of a unit",
                YEARLY,
                when(quantity.isPositive(), rows(axis, rows, BudgetRow::amount).over(quantity), none(YEARLY)));
        Line worth = page.line("budget_value", "Value", YEARLY, quantity.times(price));
        page.line("budget_per_metre", "Per metre of bench", Unit.parse("money/(m a)"), worth.over(house.benchMetres));
        page.line("budget_per_plant", "Per plant", Unit.parse("money/(plant a)"), planting.each(worth));
        page.line("budget_per_area", "Per m² of floor", Unit.parse("money/(m2 a)"), worth.over(house.houseArea));
        page.line(
                "budget_per_kg",
                "Per kg of fruit",
                Unit.parse("money/kg"),
                onlyWhen(fruit.isPositive(), worth.over(fruit), "no yield"));
        page.entry("budget_own", "Your own figure", YEARLY, axis).given(Given.blank(YEARLY));
    }

    private void perUnit(ScheduleBuilder s, House house, Planting planting) {
        perUnit(s, "Returns above operating costs", aboveOperating, house, planting);
        perUnit(s, "Returns above total cost", aboveTotal, house, planting);
    }

    private static void perUnit(ScheduleBuilder s, String label, Line returns, House house, Planting planting) {
        s.line(
                returns.id() + "_per_metre",
                label + ", per metre of bench",
                Unit.parse("money/(m a)"),
                returns.over(house.benchMetres));
        s.line(
                returns.id() + "_per_plant",
                label + ", per plant",
                Unit.parse("money/(plant a)"),
                planting.each(returns));
        s.line(
                returns.id() + "_per_area",
                label + ", per m² of floor",
                Unit.parse("money/(m2 a)"),
                returns.over(house.houseArea));
    }
}
