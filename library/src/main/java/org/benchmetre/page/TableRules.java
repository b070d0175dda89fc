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
 * @param ratios whether plain numbers are ratios, which are told with two decimals
 */
public record TableRules(Optional<BySize> bySize, Optional<Product> product, List<Line> decisive, boolean ratios) {

    /** Rows in the order given, and no more. */
    public static final TableRules NONE = new TableRules(Optional.empty(), Optional.empty(), List.of(), false);

    /** Keeps the list as it is. */
    public TableRules {
        decisive = List.copyOf(decisive);
    }

    TableRules bySize(BySize order) {
        return new TableRules(Optional.of(order), product, decisive, ratios);
    }

    TableRules product(Product law) {
        return new TableRules(bySize, Optional.of(law), decisive, ratios);
    }

    TableRules decisive(List<Line> lines) {
        return new TableRules(bySize, product, lines, ratios);
    }

    TableRules ofRatios() {
        return new TableRules(bySize, product, decisive, true);
    }
}
