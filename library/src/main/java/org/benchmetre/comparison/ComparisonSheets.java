package org.benchmetre.comparison;

import java.util.List;

/** The sheets of a comparison. */
final class ComparisonSheets {

    /** The answer, sections, rows, receipts by cause. */
    static final String COMPARISON = "Comparison (workings)";
    /** First cost, yearly cost, fruit, what is left, break-evens. */
    static final String RESULTS = "Results (workings)";
    /** How the largest differences are found, and the checks. */
    static final String WORKINGS = "Differences (workings)";
    /** What is taken over from the scenarios. */
    static final String SCENARIOS = "Scenarios";

    static final List<String> IN_ORDER = List.of(COMPARISON, RESULTS, WORKINGS, SCENARIOS);

    private ComparisonSheets() {}
}
