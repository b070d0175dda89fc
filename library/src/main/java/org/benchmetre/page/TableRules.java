package org.benchmetre.page;

import java.util.List;
import java.util.Optional;
import org.benchmetre.budget.Line;

/**
 * What holds for all rows of a table.
 *
 * @param bySize what decides the order of the rows of the axis, as written; empty for the order given
 * @param product columns of which two multiplied give the third to the printed digits, if any do
 * @param decisive lines that are zero where a row of the axis is nothing; empty for all numbers of the row
 */
public record TableRules(Optional<BySize> bySize, Optional<Product> product, List<Line> decisive) {

    /** Rows in the order given, and no more. */
    public static final TableRules NONE = new TableRules(Optional.empty(), Optional.empty(), List.of());

    /** Keeps the list as it is. */
    public TableRules {
        decisive = List.copyOf(decisive);
    }

    TableRules bySize(BySize order) {
        return new TableRules(Optional.of(order), product, decisive);
    }

    TableRules product(Product law) {
        return new TableRules(bySize, Optional.of(law), decisive);
    }

    TableRules decisive(List<Line> lines) {
        return new TableRules(bySize, product, lines);
    }
}
