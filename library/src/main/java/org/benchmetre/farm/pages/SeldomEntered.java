package org.benchmetre.farm.pages;

import java.util.Set;
import java.util.stream.Collectors;
import org.benchmetre.budget.Budget;
import org.benchmetre.budget.Entry;
import org.benchmetre.budget.Line;
import org.benchmetre.farm.input.TradeUnits;

/**
 * Entries that may be left alone: those with a documented value that is neither invented nor waits to be filled in. While nobody has typed
 * over it, their rows are folded away on <em>Entries</em>.
 */
final class SeldomEntered {

    /** What the source of a documented value says that is a gap. */
    private static final String TO_FILL_IN = "until you fill it in";

    private SeldomEntered() {}

    static Set<Line> of(Budget budget) {
        return budget.lines().stream()
                .filter(line ->
                        budget.entry(line).filter(SeldomEntered::mayStand).isPresent())
                .collect(Collectors.toSet());
    }

    private static boolean mayStand(Entry entry) {
        String source = entry.source();
        return !source.isEmpty() && !source.contains(TO_FILL_IN) && !source.startsWith(TradeUnits.INVENTED);
    }
}
