package org.benchmetre;

import java.util.ArrayList;
import java.util.List;
import org.benchmetre.budget.Budget;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.run.Figures;

/**
 * The enterprise budget of one scenario as it is printed: the only place where a comparison knows how that page is laid out.
 *
 * @param rows in the order of the page
 */
record BudgetPage(List<Row> rows) {

    private static final String LABEL = "budget_label";
    private static final String KIND = "budget_kind";
    private static final String VALUE = "budget_value";
    private static final String TOTAL = "total";

    /**
     * A row.
     *
     * @param key its key on the page
     * @param label what a reader sees
     * @param kind receipt, operating, ownership, overhead or total
     * @param value money a year, in the scenario's currency, as the page has it
     */
    record Row(String key, String label, String kind, double value) {

        boolean isReceipt() {
            return kind.equals(Section.RECEIPTS.kind());
        }

        boolean isTotal() {
            return kind.equals(TOTAL);
        }

        /** What the row adds to what is left: costs carry a minus sign. */
        double added() {
            return isReceipt() ? value : -value;
        }
    }

    static BudgetPage of(Figures figures) {
        Budget budget = figures.budget();
        Line labels = budget.line(LABEL);
        Line kinds = budget.line(KIND);
        Line values = budget.line(VALUE);
        List<String> keys = labels.axes().get(0).keys();
        List<Row> rows = new ArrayList<>();
        for (int row = 0; row < keys.size(); row++) {
            rows.add(new Row(
                    keys.get(row), figures.text(labels, row), figures.text(kinds, row), figures.number(values, row)));
        }
        return new BudgetPage(List.copyOf(rows));
    }

    /** Receipts and costs, without totals. */
    List<Row> causes() {
        return rows.stream().filter(row -> !row.isTotal()).toList();
    }

    double receipts() {
        return rows.stream().filter(Row::isReceipt).mapToDouble(Row::value).sum();
    }

    /** What is left after every cost: the last total. */
    Row left() {
        List<Row> totals = rows.stream().filter(Row::isTotal).toList();
        return totals.get(totals.size() - 1);
    }
}
