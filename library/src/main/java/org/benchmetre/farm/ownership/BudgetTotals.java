package org.benchmetre.farm.ownership;

import static org.benchmetre.budget.Formulas.onlyWhen;
import static org.benchmetre.budget.Formulas.sumWhere;
import static org.benchmetre.budget.Formulas.text;

import java.util.List;
import java.util.function.UnaryOperator;
import org.benchmetre.budget.Axis;
import org.benchmetre.budget.BudgetBuilder;
import org.benchmetre.budget.Element;
import org.benchmetre.budget.Formula;
import org.benchmetre.budget.Kind;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.Rows;
import org.benchmetre.budget.ScheduleBuilder;
import org.benchmetre.budget.unit.Unit;
import org.benchmetre.farm.input.Sheets;

/** Totals of the enterprise budget for each of its columns: parts are sums of their rows, returns are receipts less costs. */
final class BudgetTotals {

    private static final int RECEIPTS = 0;
    private static final int OPERATING = 1;
    private static final int OWNERSHIP = 3;
    private static final int OVERHEAD = 4;
    private static final int COSTS = 5;
    private static final int ABOVE = 6;

    /** One row for each total. */
    final Axis axis = Axis.rows(
            "budget_total",
            "Total",
            List.of("receipts", "operating", "above_operating", "ownership", "overhead", "costs", "above_costs"),
            0);

    private final BudgetBuilder b;
    private final ScheduleBuilder s;
    private final Line kind;

    /**
     * Names the totals.
     *
     * @param b where a schedule is added
     * @param kind the part each row of the budget counts in
     */
    BudgetTotals(BudgetBuilder b, Line kind) {
        this.b = b;
        this.kind = kind;
        s = b.schedule(Sheets.BUDGET, "Totals of the budget");
        List<Formula> labels = List.of(
                text("Total receipts"),
                text("Total operating costs"),
                text("Returns above operating costs"),
                text("Total ownership costs"),
                text("Total overhead"),
                text("Costs, as listed"),
                text("Returns above listed costs"));
        b.nameRows(axis, s.textLine("budget_total_label", "Total", new Rows(axis, labels)));
    }

    /** Totals of a column: sums of its rows by part, and what follows from them. */
    Line of(String id, String label, Line rows) {
        Line totals = s.declare(id, label, rows.unit(), Kind.NUMBER, List.of(axis), "");
        b.define(
                totals,
                new Rows(
                        axis,
                        List.of(
                                part(rows, BudgetPart.RECEIPT),
                                part(rows, BudgetPart.OPERATING),
                                cell(totals, RECEIPTS).minus(cell(totals, OPERATING)),
                                part(rows, BudgetPart.OWNERSHIP),
                                part(rows, BudgetPart.OVERHEAD),
                                cell(totals, OPERATING)
                                        .plus(cell(totals, OWNERSHIP))
                                        .plus(cell(totals, OVERHEAD)),
                                cell(totals, RECEIPTS).minus(cell(totals, COSTS)))));
        return totals;
    }

    private Formula part(Line rows, String name) {
        return sumWhere(rows, kind, text(name), rows.axes().get(0));
    }

    private Formula cell(Line totals, int row) {
        return new Element(totals, axis, row);
    }

    /** All costs of a column of totals. */
    Formula costs(Line totals) {
        return cell(totals, COSTS);
    }

    /** What receipts leave above all costs, of a column of totals. */
    Formula above(Line totals) {
        return cell(totals, ABOVE);
    }

    /**
     * Totals for each unit.
     *
     * @param totals money a year, one for each row
     * @param over how a year's money is shared
     */
    void each(String id, String label, List<Line> totals, UnaryOperator<Formula> over) {
        s.line(
                id,
                label,
                over.apply(totals.get(0)).unit(),
                new Rows(axis, totals.stream().<Formula>map(over::apply).toList()));
    }

    /** Totals for a kilogram. */
    void eachKg(List<Line> totals, Line fruit) {
        each(
                "budget_total_per_kg",
                "Per kg of fruit",
                totals,
                total -> onlyWhen(fruit.isPositive(), total.over(fruit).in(Unit.parse("money/kg")), "no yield"));
    }
}
