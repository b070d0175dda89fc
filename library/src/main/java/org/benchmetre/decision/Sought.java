package org.benchmetre.decision;

import java.io.Serializable;
import java.util.Optional;
import java.util.stream.IntStream;
import org.benchmetre.budget.CellRef;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.run.Figures;

/**
 * The cell of an entry whose value is sought: that of the row whose key another cell names, so that it follows when the name changes.
 *
 * @param entry an entry of numbers along a table
 * @param keys the keys of that table, a text
 * @param name a cell that holds one of the keys, or the empty text when nothing is sought
 */
public record Sought(Line entry, Line keys, CellRef name) implements Serializable {

    /** The cell meant; empty when the name is empty or no row has it. */
    Optional<CellRef> in(Figures figures) {
        String wanted = figures.text(name.line(), name.cell());
        return IntStream.range(0, wanted.isEmpty() ? 0 : keys.size())
                .filter(row -> figures.text(keys, row).equalsIgnoreCase(wanted))
                .mapToObj(row -> new CellRef(entry, row))
                .findFirst();
    }
}
