package org.benchmetre.farm.pages;

import org.benchmetre.budget.Budget;
import org.benchmetre.budget.Line;
import org.benchmetre.page.Column;
import org.benchmetre.page.Table;

/** What to doubt first: the entries whose usual ranges move returns most. */
final class DoubtBlock {

    private static final int ROWS = 3;

    private DoubtBlock() {}

    /** The first three, in the order of the figures as written. */
    static Table top(Budget budget) {
        Line label = budget.line("swing_label");
        return Table.of(
                        "What to doubt first",
                        label.axes().get(0),
                        Column.of("Entry", label),
                        Column.of("Usual range", budget.line("swing_range")),
                        Column.of("Moves returns by", budget.line("swing_size")))
                .largestFirst(budget.line("swing_size"))
                .most(ROWS);
    }
}
