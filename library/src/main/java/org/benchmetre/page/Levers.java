package org.benchmetre.page;

import java.util.List;

/**
 * Entries that have their home here, beside what they move: label, value, unit.
 *
 * @param title words above
 * @param rows single entries, under labels of a word or two
 */
public record Levers(String title, List<FigureRow> rows) implements Block {

    /** Keeps the list as it is. */
    public Levers {
        rows = List.copyOf(rows);
    }

    @Override
    public <R> R show(BlockVisitor<R> visitor) {
        return visitor.levers(this);
    }
}
