package org.benchmetre.page;

import java.util.Optional;

/**
 * What holds for all rows of a table.
 *
 * @param bySize what decides the order of the rows of the axis, as written; empty for the order given
 * @param product columns of which two multiplied give the third to the printed digits, if any do
 * @param told whether a sentence of the page tells the most of it, so that the table is left out where room is short
 */
public record TableRules(Optional<BySize> bySize, Optional<Product> product, boolean told) {

    /** Rows in the order given, and no more. */
    public static final TableRules NONE = new TableRules(Optional.empty(), Optional.empty(), false);

    TableRules bySize(BySize order) {
        return new TableRules(Optional.of(order), product, told);
    }

    TableRules product(Product law) {
        return new TableRules(bySize, Optional.of(law), told);
    }

    TableRules toldElsewhere() {
        return new TableRules(bySize, product, true);
    }
}
