package org.benchmetre.page;

import java.util.List;
import org.benchmetre.budget.Line;

/**
 * Entries that have their home here, beside what they move: label, value, unit.
 *
 * @param title words above
 * @param entries single entries
 */
public record Levers(String title, List<Line> entries) implements Block {

    /** Refuses entries with an axis. */
    public Levers {
        entries = List.copyOf(entries);
        for (Line entry : entries) {
            if (!entry.axes().isEmpty()) {
                throw new IllegalArgumentException("A lever is a single entry, but found " + entry + ".");
            }
        }
    }

    @Override
    public <R> R show(BlockVisitor<R> visitor) {
        return visitor.levers(this);
    }
}
