package org.benchmetre.batch;

import java.util.List;
import org.benchmetre.budget.Budget;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.run.Figures;

/** The enterprise budget, a row a line: quantity, price, value, per metre of bench and per square metre of floor. */
final class BudgetTable {

    /** Where the totals stand, in their order. */
    private static final List<String> SUMS = List.of(
            "budget_receipts",
            "operating_cost_total",
            "returns_above_operating",
            "ownership_cost_total",
            "budget_overhead",
            "total_cost",
            "returns_above_total");

    private final Figures figures;
    private final Budget budget;

    BudgetTable(Figures figures) {
        this.figures = figures;
        this.budget = figures.budget();
    }

    @Override
    public String toString() {
        TextTable table = new TextTable(
                        List.of("", "Quantity", "Unit", "Price", "Value", "Per m of bench", "Per m² of floor"), 1)
                .right(1, 3, 4, 5, 6);
        Line label = budget.line("budget_label");
        for (int row = 0; row < label.size(); row++) {
            if (figures.number(budget.line("budget_value"), row) != 0) {
                table.row(List.of(
                        figures.text(label, row),
                        shown("budget_quantity", row),
                        figures.text(budget.line("budget_unit"), row),
                        shown("budget_price", row),
                        shown("budget_value", row),
                        shown("budget_per_metre", row),
                        shown("budget_per_area", row)));
            }
        }
        Line total = budget.line("budget_total_label");
        for (int row = 0; row < total.size(); row++) {
            table.row(List.of(
                    figures.text(total, row),
                    "",
                    "",
                    "",
                    shown(SUMS.get(row), 0),
                    shown("budget_total_per_metre", row),
                    shown("budget_total_per_area", row)));
        }
        return table.toString();
    }

    private String shown(String id, int row) {
        return new Amounts(figures).of(budget.line(id), row);
    }
}
