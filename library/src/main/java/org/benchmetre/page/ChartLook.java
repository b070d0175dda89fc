package org.benchmetre.page;

import java.util.Optional;
import org.benchmetre.budget.Line;

/**
 * How a picture stands on its page.
 *
 * @param rows height in rows of the page
 * @param alternative what somebody hears who cannot see it
 * @param largestFirst a line along the categories whose size decides the order, as written; then a table of the same order that has
 *     the values as columns stands on the page. Empty for the order of the axis
 */
public record ChartLook(int rows, String alternative, Optional<Line> largestFirst) {

    /**
     * A picture in the order of its axis.
     *
     * @param rows height in rows of the page
     * @param alternative what somebody hears who cannot see it
     * @return the look
     */
    public static ChartLook of(int rows, String alternative) {
        return new ChartLook(rows, alternative, Optional.empty());
    }
}
