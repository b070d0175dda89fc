package org.benchmetre;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/** Finds the rows that several enterprise budgets have in common, by section and label. Rows of one label in one section count together. */
final class RowsMatched {

    private final List<BudgetPage> tables;
    private final List<Double> sizes;
    private final List<String> order = new ArrayList<>();
    private final Map<String, BudgetPage.Row> rows = new LinkedHashMap<>();
    private final Map<String, List<Double>> values = new LinkedHashMap<>();

    /** Budgets, and by what the values of each are divided. */
    RowsMatched(List<BudgetPage> tables, List<Double> sizes) {
        this.tables = tables;
        this.sizes = sizes;
    }

    List<Cause> causes() {
        for (int scenario = 0; scenario < tables.size(); scenario++) {
            take(scenario);
        }
        return order.stream().map(this::cause).toList();
    }

    private void take(int scenario) {
        int next = 0;
        for (BudgetPage.Row row : tables.get(scenario).causes()) {
            String label = folded(row);
            if (rows.putIfAbsent(label, row) == null) {
                order.add(next, label);
                values.put(label, new ArrayList<>(Collections.nCopies(tables.size(), 0.0)));
            }
            next = order.indexOf(label) + 1;
            List<Double> known = values.get(label);
            known.set(scenario, known.get(scenario) + row.added() / sizes.get(scenario));
        }
    }

    private Cause cause(String label) {
        BudgetPage.Row row = rows.get(label);
        return new Cause(row.key(), row.label(), Section.of(row.kind()), values.get(label));
    }

    private static String folded(BudgetPage.Row row) {
        return row.kind() + " " + row.label().strip().toLowerCase(Locale.ROOT);
    }
}
