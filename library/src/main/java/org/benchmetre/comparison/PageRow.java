package org.benchmetre.comparison;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.benchmetre.budget.Budget;
import org.benchmetre.budget.CellRef;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.run.Figures;

/**
 * A receipt or cost of one scenario's enterprise budget: the only place where a comparison knows how that page is laid out.
 *
 * @param key its key on the page
 * @param label what a reader sees
 * @param section where it counts
 * @param value where its money of a year stands; costs without a sign
 */
record PageRow(String key, String label, BudgetSection section, CellRef value) {

    private static final String LABEL = "budget_label";
    private static final String KIND = "budget_kind";
    private static final String VALUE = "budget_value";
    private static final String LEFT = "returns_above_total";

    /** Receipts and costs in the order of the page. */
    static List<PageRow> of(Figures figures) {
        Budget budget = figures.budget();
        Line labels = budget.line(LABEL);
        List<PageRow> rows = new ArrayList<>();
        for (int row = 0; row < labels.size(); row++) {
            Optional<BudgetSection> section = BudgetSection.of(figures.text(budget.line(KIND), row));
            if (section.isPresent()) {
                rows.add(new PageRow(
                        labels.index(row),
                        figures.text(labels, row),
                        section.get(),
                        new CellRef(budget.line(VALUE), row)));
            }
        }
        return rows;
    }

    /** What is left after every cost. */
    static CellRef left(Figures figures) {
        return new CellRef(figures.budget().line(LEFT), 0);
    }

    /** What the page calls that. */
    static String leftLabel(Figures figures) {
        return figures.budget().line(LEFT).label();
    }
}
