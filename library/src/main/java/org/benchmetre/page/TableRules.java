package org.benchmetre.page;

import java.util.Optional;
import org.benchmetre.budget.Line;

/**
 * What holds for all rows of a table.
 *
 * @param largestFirst a number line along the axis whose size decides the order of the rows, as written; empty for the order given
 * @param product columns of which two multiplied give the third to the printed digits, if any do
 */
public record TableRules(Optional<Line> largestFirst, Optional<Product> product) {

    /** Rows in the order given, and no more. */
    public static final TableRules NONE = new TableRules(Optional.empty(), Optional.empty());
}
