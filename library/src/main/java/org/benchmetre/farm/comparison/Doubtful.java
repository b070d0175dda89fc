package org.benchmetre.farm.comparison;

import org.benchmetre.budget.Formula;
import org.benchmetre.budget.entry.Bounds;
import org.benchmetre.decision.Sought;

/**
 * An entry whose value is in doubt and may decide between irrigation systems.
 *
 * @param key of its row
 * @param words what a reader sees of it
 * @param values its value and its ranges
 * @param meeting how one finds the value at which two ways cost the same
 */
record Doubtful(String key, Words words, Values values, Meeting meeting) {

    /**
     * What a reader sees of an entry; all texts are empty while it is not in use.
     *
     * @param label what it is, a text
     * @param unit its unit, a text
     * @param address its cell as one types it, a text: {@code line} or {@code line[key]}
     */
    record Words(Formula label, Formula unit, Formula address) {}

    /**
     * An entry's value and ranges, as plain numbers.
     *
     * @param current its value
     * @param low low end of the plausible range; 0 for none
     * @param high high end of the plausible range; 0 for none
     * @param bounds hard bounds
     */
    record Values(Formula current, Formula low, Formula high, Bounds bounds) {}

    /** How one finds the value at which two ways cost the same. */
    sealed interface Meeting permits Straight, Searched {}

    /**
     * Cost is a straight line in the entry.
     *
     * @param slope yearly cost per metre of each way for one unit of the entry, what is the same for all ways left out
     */
    record Straight(Formula slope) implements Meeting {}

    /**
     * Cost is no straight line in the entry: a search finds the value.
     *
     * @param entry the cell that is varied
     */
    record Searched(Sought entry) implements Meeting {}
}
