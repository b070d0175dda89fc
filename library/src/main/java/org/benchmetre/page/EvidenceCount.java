package org.benchmetre.page;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.benchmetre.budget.Budget;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.entry.Given;

/** Counts the values in use by the kind of source they carry. */
public final class EvidenceCount {

    private EvidenceCount() {}

    /**
     * Counts.
     *
     * @param budget whose entries are counted
     * @return kinds of source with at least one value
     */
    public static Map<String, Integer> of(Budget budget) {
        Map<String, Integer> counts = new LinkedHashMap<>();
        for (Line line : budget.lines()) {
            if (budget.entry(line).isPresent()) {
                List<Given> givens = budget.given(line);
                givens.stream()
                        .filter(Given::filled)
                        .forEach(given -> counts.merge(kind(given.source()), 1, Integer::sum));
            }
        }
        return counts;
    }

    private static String kind(String source) {
        if (source.isEmpty()) {
            return "Without a source";
        }
        if (source.contains("invented")) {
            return "Invented for the demo";
        }
        return source.contains("no source") ? "Common practice, no source" : "Published or quoted";
    }
}
