package org.benchmetre.batch;

import java.util.List;
import org.benchmetre.budget.Budget;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.run.Figures;

/** The enterprise budget, a row a line: quantity, price, value, per metre of bench and per square metre of floor. */
final class BudgetTable {

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
            boolean total = figures.text(budget.line("budget_kind"), row).equals("total");
            if (total || value("budget_value", row) != 0) {
                table.row(List.of(
                        figures.text(label, row),
                        total ? "" : shown("budget_quantity", row),
                        total ? "" : figures.text(budget.line("budget_unit"), row),
                        total ? "" : shown("budget_price", row),
                        shown("budget_value", row),
                        shown("budget_per_metre", row),
                        shown("budget_per_area", row)));
            }
        }
        return table.toString();
    }

    private double value(String id, int row) {
        return figures.number(budget.line(id), row);
    }

    private String shown(String id, int row) {
        return new Amounts(figures).of(budget.line(id), row);
    }
}
