package org.benchmetre.budget.entry;

import java.io.Serializable;

/**
 * The range an entry usually lies in, in the line's unit. A value outside is no fault but worth a word.
 *
 * @param low usual low, NaN when unknown
 * @param typical the documented default, NaN when there is none
 * @param high usual high, NaN when unknown
 */
public record Plausible(double low, double typical, double high) implements Serializable {

    /** Nothing known. */
    public static final Plausible UNKNOWN = new Plausible(Double.NaN, Double.NaN, Double.NaN);

    /** Refuses a range whose low lies above its high. */
    public Plausible {
        if (low > high) {
            throw new IllegalArgumentException(
                    "A plausible range runs from low to high, but found " + low + " to " + high + ".");
        }
    }

    /**
     * Whether a number lies outside the range.
     *
     * @param number in the line's unit
     * @return false when no range is known
     */
    public boolean isUnusual(double number) {
        return number < low || number > high;
    }
}
