package org.benchmetre.farm;

import java.util.HashMap;
import java.util.Map;
import org.benchmetre.budget.Budget;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.entry.Given;
import org.benchmetre.budget.run.Figures;

/** Changes single cells of a sample's tables, for tests. */
final class Cells {

    private final Budget budget;
    private final Map<Line, Map<Integer, Given>> changes = new HashMap<>();

    Cells(Budget budget) {
        this.budget = budget;
    }

    /** A number in the row with a key, or in a single entry where the key is empty; in the unit of the line. */
    Cells number(String id, String key, double value) {
        return put(id, key, Given.number(value, budget.line(id).unit()));
    }

    /** A text in the row with a key; empty for a blank cell. */
    Cells text(String id, String key, String value) {
        return put(id, key, Given.text(value));
    }

    /** The text in the row with a key. */
    static String text(Figures figures, String id, String key) {
        Line line = figures.budget().line(id);
        return figures.text(line, line.axes().get(0).indexOf(key));
    }

    private Cells put(String id, String key, Given value) {
        Line line = budget.line(id);
        int cell = key.isEmpty() ? 0 : line.axes().get(0).indexOf(key);
        changes.computeIfAbsent(line, any -> new HashMap<>()).put(cell, value);
        return this;
    }

    Figures figures() {
        return Figures.of(Sample.typedOver(budget, changes));
    }
}
