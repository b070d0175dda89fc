package org.benchmetre.page;

import java.util.List;
import org.benchmetre.budget.Axis;

/**
 * One column for each filled row of an axis, one row for each line: criteria down, what is compared across.
 *
 * @param title words above
 * @param axis what is compared; its row names head the columns
 * @param rows criteria
 */
public record Across(String title, Axis axis, List<Criterion> rows) implements Block {

    /** Keeps the list as it is. */
    public Across {
        rows = List.copyOf(rows);
    }

    @Override
    public <R> R show(BlockVisitor<R> visitor) {
        return visitor.across(this);
    }
}
