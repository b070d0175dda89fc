package org.benchmetre;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.benchmetre.budget.Budget;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.run.Figures;

/**
 * The rows of the enterprise budget of one scenario: the only place where a comparison knows how that table is laid out. Values are
 * what a row adds to what is left in a year, so that costs carry a minus sign.
 *
 * @param rows in the order of the table
 */
record BudgetRows(List<Row> rows) {

    private static final String LABEL = "budget_label";
    private static final String VALUE = "budget_value";
    private static final String KIND = "budget_kind";
    private static final String RECEIPT = "receipt";
    private static final String TOTAL = "total";
    private static final String RECEIPTS_KEY = "receipts";
    private static final String LEFT_KEY = "left";

    /**
     * A row.
     *
     * @param key its key in the table
     * @param label what a reader sees
     * @param kind receipt, cost or total
     * @param value money a year, in the scenario's currency
     */
    record Row(String key, String label, String kind, double value) {

        boolean isReceipt() {
            return kind.equals(RECEIPT);
        }

        boolean isTotal() {
            return kind.equals(TOTAL);
        }
    }

    static BudgetRows of(Figures figures) {
        Budget budget = figures.budget();
        Line labels = budget.line(LABEL);
        Line values = budget.line(VALUE);
        Optional<Line> kinds = budget.find(KIND);
        List<Row> rows = new ArrayList<>();
        for (int row = 0; row < labels.size(); row++) {
            int cell = row;
            String key = labels.axes().get(0).keys().get(row);
            String kind = kinds.map(line -> figures.text(line, cell)).orElse(kindOf(key));
            rows.add(new Row(key, figures.text(labels, row), kind, figures.number(values, row)));
        }
        return new BudgetRows(List.copyOf(rows));
    }

    /** The kind of a row where the table has no column for it. */
    private static String kindOf(String key) {
        return key.equals(LEFT_KEY) ? TOTAL : key.equals(RECEIPTS_KEY) ? RECEIPT : "cost";
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
