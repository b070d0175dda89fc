package org.benchmetre.farm.pages;

import java.util.List;
import java.util.Set;
import org.benchmetre.budget.Budget;
import org.benchmetre.budget.Line;
import org.benchmetre.page.Block;
import org.benchmetre.page.EntryList;
import org.benchmetre.page.Page;

/** Every single value that is entered, by what it is about. Those that have their home among the levers are shown by reference. */
final class EntriesPage {

    private static final List<Integer> WIDTHS = List.of(46, 14, 14, 14, 20, 42);

    private EntriesPage() {}

    static Page of(Budget budget) {
        Set<Line> seldom = SeldomEntered.of(budget);
        Block[] lists = Subjects.of(budget).entrySet().stream()
                .map(subject -> new EntryList(subject.getKey(), subject.getValue(), seldom))
                .toArray(Block[]::new);
        return Page.entries(
                        "Entries",
                        "What is entered? Change framed cells; + at the left opens seldom ones, and those of other pages.")
                .left(WIDTHS, lists);
    }
}
