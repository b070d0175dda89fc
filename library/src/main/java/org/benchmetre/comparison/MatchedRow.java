package org.benchmetre.comparison;

import java.util.Collections;
import java.util.SortedMap;
import java.util.TreeMap;
import org.benchmetre.budget.CellRef;

/**
 * A receipt or cost that one or more scenarios have.
 *
 * @param key its key in the first scenario that has it, with a number behind it where another row has the same
 * @param label what a reader sees
 * @param section where it counts
 * @param cells where its money stands, by the scenario's place from 0; scenarios without such a row are left out
 */
record MatchedRow(String key, String label, BudgetSection section, SortedMap<Integer, CellRef> cells) {

    MatchedRow {
        cells = Collections.unmodifiableSortedMap(new TreeMap<>(cells));
    }
}
