package org.benchmetre.page;

import java.util.List;
import org.benchmetre.budget.Line;

/**
 * Single entries, one a row: value and unit as typed, what it counts as, usual range, source. Those that have their home among levers
 * are shown by reference; ends of a usual range that are entries stand in the row of the entry they belong to.
 *
 * @param title words above
 * @param entries single entries
 */
public record EntryList(String title, List<Line> entries) implements Block {

    /** Keeps the list as it is. */
    public EntryList {
        entries = List.copyOf(entries);
    }

    @Override
    public <R> R show(BlockVisitor<R> visitor) {
        return visitor.entries(this);
    }
}
