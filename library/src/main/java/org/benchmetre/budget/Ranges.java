package org.benchmetre.budget;

import java.io.Serializable;
import java.util.LinkedHashMap;
import java.util.Map;
import org.benchmetre.budget.entry.Given;
import org.benchmetre.budget.entry.Plausible;
import org.benchmetre.budget.entry.Usual;

/**
 * Usual ranges of entries, cell by cell. The scenario's own range of a cell goes first, then the ends that entries beside it hold, then
 * what is documented of its row, last what is documented of the entry. Each end that entries leave blank is the documented one.
 *
 * @param ends entries that hold the ends
 * @param documented what follows from other entries of the row
 */
record Ranges(LinkedHashMap<Line, Ends> ends, LinkedHashMap<Line, UsualRange> documented) implements Serializable {

    private static final String OWN = "the scenario's own range";

    static Ranges of(Map<Line, Ends> ends, Map<Line, UsualRange> documented) {
        return new Ranges(new LinkedHashMap<>(ends), new LinkedHashMap<>(documented));
    }

    Usual of(Budget budget, Line line, int cell) {
        Plausible own = budget.given(line).get(cell).range();
        if (!own.equals(Plausible.UNKNOWN)) {
            return new Usual(own, "", OWN);
        }
        Usual usual = documented(budget, line, cell);
        Ends beside = ends.get(line);
        if (beside == null) {
            return usual;
        }
        Given low = budget.given(beside.low()).get(cell);
        Given high = budget.given(beside.high()).get(cell);
        if (!low.filled() && !high.filled()) {
            return usual;
        }
        double least = low.filled() ? low.number() : usual.range().low();
        double most = high.filled() ? high.number() : usual.range().high();
        boolean isDocumented =
                least == usual.range().low() && most == usual.range().high();
        return least > most || isDocumented
                ? usual
                : new Usual(new Plausible(least, usual.range().typical(), most), "", OWN);
    }

    private Usual documented(Budget budget, Line line, int cell) {
        UsualRange range = documented.get(line);
        return range == null ? budget.entry(line).orElseThrow().usual() : range.of(cell, budget::given);
    }
}
