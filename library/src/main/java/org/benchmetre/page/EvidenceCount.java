package org.benchmetre.page;

import java.util.Collections;
import java.util.EnumMap;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import org.benchmetre.budget.Budget;
import org.benchmetre.budget.Entry;
import org.benchmetre.budget.Kind;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.entry.EvidenceKind;
import org.benchmetre.budget.entry.Given;
import org.benchmetre.budget.entry.Origin;

/**
 * How many of the numbers entered come from which kind of source. Counted are filled cells in filled rows, every number of a row by the
 * source of the row; a default of zero that claims no evidence, such as <i>0 until you fill it in</i>, is no entry in use.
 *
 * @param byKind numbers by kind, the kinds in the order of {@link EvidenceKind}; kinds that do not occur have 0
 */
public record EvidenceCount(SortedMap<EvidenceKind, Integer> byKind) {

    /** Keeps the map as it is. */
    public EvidenceCount {
        byKind = Collections.unmodifiableSortedMap(new TreeMap<>(byKind));
    }

    /**
     * Counts the entries of a budget.
     *
     * @param budget as entered
     * @return every kind with its number
     */
    public static EvidenceCount of(Budget budget) {
        Map<EvidenceKind, Integer> counted = new EnumMap<>(EvidenceKind.class);
        for (EvidenceKind kind : EvidenceKind.values()) {
            counted.put(kind, 0);
        }
        for (Line line : budget.lines()) {
            if (line.kind() == Kind.NUMBER) {
                budget.entry(line).ifPresent(entry -> count(counted, budget, line, entry));
            }
        }
        return new EvidenceCount(new TreeMap<>(counted));
    }

    /**
     * All numbers together.
     *
     * @return the sum over the kinds
     */
    public int all() {
        return byKind.values().stream().mapToInt(Integer::intValue).sum();
    }

    private static void count(Map<EvidenceKind, Integer> counted, Budget budget, Line line, Entry entry) {
        int cell = 0;
        for (Given given : budget.given(line)) {
            EvidenceKind kind = entry.evidence(given);
            boolean isNothing = given.number() == 0
                    && given.origin().equals(Origin.DEFAULT)
                    && (kind == EvidenceKind.OTHER || kind == EvidenceKind.UNSAID);
            if (given.filled() && !line.isSpare(cell) && !isNothing) {
                counted.merge(kind, 1, Integer::sum);
            }
            cell++;
        }
    }
}
