package org.benchmetre.page;

import java.util.List;
import java.util.Set;
import org.benchmetre.budget.Line;

/**
 * Single entries, one a row: value and unit as typed, what it counts as, usual range, source. Those that have their home among levers
 * are shown by reference; ends of a usual range that are entries stand in the row of the entry they belong to.
 *
 * @param title words above
 * @param entries single entries
 * @param seldom those of them that few people need: folded away while they are as documented
 */
public record EntryList(String title, List<Line> entries, Set<Line> seldom) implements Block {

    /** Keeps the list as it is. */
    public EntryList {
        entries = List.copyOf(entries);
        seldom = Set.copyOf(seldom);
    }

    /**
     * A list that shows all of its rows.
     *
     * @param title words above
     * @param entries single entries
     */
    public EntryList(String title, List<Line> entries) {
        this(title, entries, Set.of());
    }

    @Override
    public <R> R show(BlockVisitor<R> visitor) {
        return visitor.entries(this);
    }
}
