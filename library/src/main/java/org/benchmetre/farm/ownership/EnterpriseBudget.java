package org.benchmetre.farm.ownership;

import static org.benchmetre.budget.Formulas.none;
import static org.benchmetre.budget.Formulas.one;
import static org.benchmetre.budget.Formulas.onlyWhen;
import static org.benchmetre.budget.Formulas.text;
import static org.benchmetre.budget.Formulas.when;
import static org.benchmetre.farm.input.TradeUnits.ONE;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import org.benchmetre.budget.Axis;
import org.benchmetre.budget.BudgetBuilder;
import org.benchmetre.budget.Element;
import org.benchmetre.budget.Formula;
import org.benchmetre.budget.Kind;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.Rows;
import org.benchmetre.budget.ScheduleBuilder;
import org.benchmetre.budget.entry.Given;
import org.benchmetre.budget.unit.Unit;
import org.benchmetre.farm.input.Sheets;
import org.benchmetre.farm.input.Tables;
import org.benchmetre.farm.layout.House;
import org.benchmetre.farm.layout.Planting;

/**
 * The enterprise budget of a year: receipts; operating costs; returns above operating costs; ownership costs by capital recovery at a
 * real rate; overhead; returns above total cost. No loan interest. Every row is a quantity at a price, in total, per metre of bench,
 * per plant, per square metre of floor and per kilogram, what of it is paid in cash, what it is at low and at high yield, with a column
 * for figures of one's own. American Agricultural Economics Association, Commodity Costs and Returns Estimation Handbook, 2000.
 */
public final class EnterpriseBudget {

    private static final Unit YEARLY = Unit.parse("money/a");
    private static final double MOST = 1e12;

    /** Receipts less operating costs, money/a. */
    public final Line aboveOperating;
    /** Receipts less all costs, money/a. */
    public final Line aboveTotal;
    /** The same for a square metre of floor, money/(m2 a). */
    public final Line aboveTotalPerArea;
    /** Operating costs, money/a. */
    public final Line operating;
    /** Ownership costs, money/a. */
    public final Line owning;
    /** All costs, money/a. */
    public final Line total;
    /** Each cost, money/a; 0 for receipts. */
    public final Line costs;
    /** One row for each receipt and cost. */
    public final Axis axis;

    /** Receipts, money/a. */
    final Line receipts;
    /** Returns above all costs for a metre of bench, money/(m a). */
    final Line abovePerMetre;
    /** The same of the year at low yield, money/a. */
    final Formula aboveAtLow;
    /** The same at high yield, money/a. */
    final Formula aboveAtHigh;
    /** Where receipts just cover operating costs. */
    final Evens evensOfOperating;
    /** Where they just cover all costs. */
    public final Evens evensOfAll;

    private final BudgetBuilder builder;
    private final ScheduleBuilder page;
    private final Line quantity;
    private final Line worth;
    private final Line kind;

    /**
     * What money is shared among.
     *
     * @param house benches and floor
     * @param planting plants
     * @param fruit marketable fruit a year
     */
    public record Grounds(House house, Planting planting, Line fruit) {}

    /**
     * Where a cost is just covered; optional numbers.
     *
     * @param price average price, money/kg
     * @param fruit fruit per plant and crop, g
     */
    public record Evens(Line price, Line fruit) {}

    /**
     * Declares the lines.
     *
     * @param b where schedules are added
     * @param page the table itself, opened early so that it leads its sheet
     * @param items receipts and costs in reading order
     * @param g benches, floor, plants and fruit
     * @param yields low and high yield
     */
    public EnterpriseBudget(BudgetBuilder b, ScheduleBuilder page, BudgetItems items, Grounds g, YieldRange yields) {
        this.page = page;
        builder = b;
        page.note(
                "Receipts, operating costs, ownership costs by capital recovery at a real rate, overhead. No loan interest. At low and "
                        + "high yield what moves with fruit moves, and the rest stays. A figure of one's own of 0 counts as none.");
        ScheduleBuilder sums = b.shared(Sheets.BUDGET, Tables.BUDGET_SUMS);
        ScheduleBuilder evens = b.schedule(Sheets.BUDGET, "Break-evens: picking, packing and selling move with yield");
        axis = Axis.rows("budget_row", "Row", items.rows.keys(), 0);
        kind = named(b, items.rows);
        quantity = page.line(
                "budget_quantity",
                "Quantity",
                ONE,
                along(items, row -> row.counted().quantity()));
        page.textLine("budget_unit", "Unit", along(items, row -> row.counted().unit()));
        worth = value(along(items, row -> row.counted().amount()));
        costs = page.line("budget_cost", "Cost", YEARLY, when(kind.is(BudgetPart.RECEIPT), none(YEARLY), worth));
        receipts = items.moves.harvest.receipts;
        operating = sums.line(
                "operating_cost_total", "Operating costs", YEARLY, items.sums().operating());
        aboveOperating = sums.line(
                "returns_above_operating", "Returns above operating costs", YEARLY, receipts.minus(operating));
        owning = sums.line(
                "ownership_cost_total", "Ownership costs", YEARLY, items.sums().ownership());
        Line overhead =
                sums.line("budget_overhead", "Overhead", YEARLY, items.sums().overhead());
        total = sums.line(
                "total_cost", "Total cost", YEARLY, operating.plus(owning).plus(overhead));
        aboveTotal = sums.line("returns_above_total", "Returns above total cost", YEARLY, receipts.minus(total));
        BudgetTotals totals = new BudgetTotals(b, kind);
        perUnit(totals, List.of(receipts, operating, aboveOperating, owning, overhead, total, aboveTotal), g);
        Line paid = inCash(totals, along(items, BudgetRow::cash));
        sums.line("cost_not_in_cash", "Costs not paid in cash", YEARLY, total.minus(totals.costs(paid)));
        Line moves = page.line(
                "budget_moves",
                "Of that, moves with yield",
                YEARLY,
                along(items, BudgetRow::moves),
                "in proportion to fruit");
        aboveAtLow = at(totals, "low", items.rows.bends(YieldBends.Bend::low), yields.lowShare, moves);
        aboveAtHigh = at(totals, "high", items.rows.bends(YieldBends.Bend::high), yields.highShare, moves);
        ownFigures(totals);
        abovePerMetre = sums.line(
                "returns_above_total_per_metre",
                "Returns above total cost, per metre of bench",
                Unit.parse("money/(m a)"),
                aboveTotal.over(g.house().benchMetres));
        aboveTotalPerArea = sums.line(
                "returns_above_total_per_area",
                "Returns above total cost, per m² of floor",
                Unit.parse("money/(m2 a)"),
                aboveTotal.over(g.house().houseArea));
        sums.line(
                "returns_above_total_per_plant",
                "Returns above total cost, per plant",
                Unit.parse("money/(plant a)"),
                g.planting().each(aboveTotal));
        sums.line(
                "returns_above_total_per_kg",
                "Returns above total cost, per kg of marketable fruit",
                BreakEvens.PER_KG,
                onlyWhen(g.fruit().isPositive(), aboveTotal.over(g.fruit()), "no yield"));
        BreakEvens even = new BreakEvens(items.moves.harvest, items.moves);
        evensOfAll = new Evens(
                evens.line(
                        "break_even_price",
                        "Break-even price",
                        BreakEvens.PER_KG,
                        even.price(total),
                        BreakEvens.PRICE_RULE),
                evens.line(
                        "break_even_yield",
                        "Break-even yield, fruit per plant and crop",
                        BreakEvens.GRAMS,
                        even.fruit(total),
                        BreakEvens.FRUIT_RULE));
        evensOfOperating = new Evens(
                evens.line(
                        "break_even_price_operating",
                        "Break-even price, operating costs alone",
                        BreakEvens.PER_KG,
                        even.price(operating),
                        BreakEvens.PRICE_RULE),
                evens.line(
                        "break_even_yield_operating",
                        "Break-even yield, operating costs alone",
                        BreakEvens.GRAMS,
                        even.fruit(operating),
                        BreakEvens.FRUIT_RULE));
    }

    private Formula along(BudgetItems items, Function<BudgetRow, Formula> figure) {
        return items.rows.along(axis, figure);
    }

    private Line named(BudgetBuilder b, BudgetRows rows) {
        b.nameRows(axis, page.textLine("budget_label", "Receipts and costs", rows.along(axis, BudgetRow::label)));
        List<Formula> parts = rows.parts().stream().map(part -> text(part)).toList();
        return page.textLine("budget_kind", "Kind", new Rows(axis, parts));
    }

    /** What each row comes to, and its price, which is what it comes to for one of its quantity. */
    private Line value(Formula amounts) {
        Line price = page.declare("budget_price", "Price of a unit", YEARLY, Kind.NUMBER, List.of(axis), "");
        Line value = page.line("budget_value", "Value", YEARLY, amounts);
        builder.define(price, when(quantity.isPositive(), value.over(quantity), none(YEARLY)));
        return value;
    }

    private void perUnit(BudgetTotals totals, List<Line> sums, Grounds g) {
        Line metres = g.house().benchMetres;
        Line floor = g.house().houseArea;
        page.line("budget_per_metre", "Per metre of bench", Unit.parse("money/(m a)"), worth.over(metres));
        page.line(
                "budget_per_plant",
                "Per plant",
                Unit.parse("money/(plant a)"),
                g.planting().each(worth));
        page.line("budget_per_area", "Per m² of floor", Unit.parse("money/(m2 a)"), worth.over(floor));
        page.line(
                "budget_per_kg",
                "Per kg of fruit",
                Unit.parse("money/kg"),
                onlyWhen(g.fruit().isPositive(), worth.over(g.fruit()), "no yield"));
        totals.each("budget_total_per_metre", "Per metre of bench", sums, sum -> sum.over(metres));
        totals.each("budget_total_per_plant", "Per plant", sums, g.planting()::each);
        totals.each("budget_total_per_area", "Per m² of floor", sums, sum -> sum.over(floor));
        totals.eachKg(sums, g.fruit());
    }

    private Line inCash(BudgetTotals totals, Formula cash) {
        Line paid = page.line(
                "budget_cash",
                "Paid in cash",
                YEARLY,
                cash,
                "No cash: capital recovery, family labour, management and land of one's own, interest, since no loan is counted. What is "
                        + "used up within a year is paid: Commodity Costs and Returns Estimation Handbook, 2000.");
        return totals.of("budget_total_cash", "Paid in cash", paid);
    }

    /** The year at low or high yield; answers what receipts leave above all costs. */
    private Formula at(BudgetTotals totals, String end, List<Formula> bends, Line share, Line moves) {
        String label = "At " + end + " yield";
        List<Formula> rows = new ArrayList<>();
        for (int i = 0; i < axis.size(); i++) {
            Formula moved = new Element(moves, axis, i).times(share.minus(one()));
            Formula inProportion = new Element(worth, axis, i).plus(moved);
            rows.add(bends.get(i) == null ? inProportion : inProportion.plus(bends.get(i)));
        }
        Line value = page.line("budget_" + end, label, YEARLY, new Rows(axis, rows));
        return totals.above(totals.of("budget_total_" + end, label, value));
    }

    private void ownFigures(BudgetTotals totals) {
        Line own = page.entry("budget_own", "Your own figure", YEARLY, axis)
                .from(0, MOST)
                .given(Given.blank(YEARLY));
        Line apart = page.line(
                "budget_difference",
                "Yours less ours, where you gave one",
                YEARLY,
                when(own.isPositive(), own.minus(worth), none(YEARLY)));
        totals.of("budget_total_own", "Your own figure", own);
        totals.of("budget_total_difference", "Yours less ours, where you gave one", apart);
    }
}
