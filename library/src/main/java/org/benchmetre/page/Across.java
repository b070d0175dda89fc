package org.benchmetre.page;

import java.util.List;
import org.benchmetre.budget.Axis;

/**
 * One column for each filled row of an axis, or for some of them, and one row for each line: criteria down, what is compared across.
 *
 * @param title words above
 * @param axis what is compared; its row names head the columns
 * @param rows criteria
 * @param from first row of the axis that has a column, from 0
 * @param to where the columns end, a row of the axis, itself left out
 */
public record Across(String title, Axis axis, List<Criterion> rows, int from, int to) implements Block {

    /** Refuses columns the axis has no filled rows for; keeps the list as it is. */
    public Across {
        rows = List.copyOf(rows);
        if (from < 0 || from > to || to > axis.filled()) {
            throw new IllegalArgumentException("Columns of " + axis + " are some of the first " + axis.filled()
                    + " rows, but found " + from + " to " + to + ".");
        }
    }

    /**
     * All filled rows of the axis.
     *
     * @param title words above
     * @param axis what is compared
     * @param rows criteria
     */
    public Across(String title, Axis axis, List<Criterion> rows) {
        this(title, axis, rows, 0, axis.filled());
    }

    @Override
    public <R> R show(BlockVisitor<R> visitor) {
        return visitor.across(this);
    }
}
