package org.benchmetre.farm.levers;

import org.benchmetre.budget.Formula;
import org.benchmetre.budget.Line;

/**
 * An entry that decides much.
 *
 * @param label what a reader calls it
 * @param entry a single entry
 * @param low the low end of its usual range, in its unit
 * @param high the high end
 */
record Lever(String label, Line entry, Formula low, Formula high) {

    /** Its name, by which one chooses it. */
    String name() {
        return entry.id();
    }
}
