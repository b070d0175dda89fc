package org.benchmetre;

import java.nio.file.Path;
import org.benchmetre.budget.run.Figures;

/**
 * One of the scenarios that are held against each other.
 *
 * @param name the folder's own name, with a number behind it when an earlier scenario has the same
 * @param folder the folder as it was named
 * @param plan the scenario as read
 */
public record Compared(String name, Path folder, Plan plan) {

    /**
     * The values of its lines.
     *
     * @return figures that are all finite
     */
    public Figures figures() {
        return plan.figures();
    }
}
