package org.benchmetre.comparison;

import org.benchmetre.budget.run.Figures;

/**
 * One of the scenarios that are held against each other.
 *
 * @param name what a reader knows it by, another for each scenario
 * @param figures the values of its lines, all of them finite
 */
public record Compared(String name, Figures figures) {

    /** The currency of its money. */
    String currency() {
        return figures.budget().currency();
    }
}
