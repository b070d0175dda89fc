package org.benchmetre.page;

import java.util.List;

/**
 * Single figures, one a row: label, value, unit.
 *
 * @param title words above
 * @param rows first to last
 */
public record FigureList(String title, List<FigureRow> rows) implements Block {

    /** Keeps the list as it is. */
    public FigureList {
        rows = List.copyOf(rows);
    }

    @Override
    public <R> R show(BlockVisitor<R> visitor) {
        return visitor.figures(this);
    }
}
