package org.benchmetre.page;

import java.util.List;
import org.benchmetre.budget.Axis;

/**
 * The entries of a table as they are typed, one row for each row of its axis, spare rows last.
 *
 * @param title words above
 * @param axis the rows
 * @param columns entries along the axis
 */
public record EntryTable(String title, Axis axis, List<Column> columns) implements Block {

    /** Keeps the list as it is. */
    public EntryTable {
        columns = List.copyOf(columns);
    }

    @Override
    public <R> R show(BlockVisitor<R> visitor) {
        return visitor.entryTable(this);
    }
}
