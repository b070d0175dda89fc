package org.benchmetre.budget;

import java.io.Serializable;

/**
 * What a search found for one cell of a solved line: a number in the line's unit, or a few words that say why there is none.
 *
 * @param number finite, or a NaN where there are words in its place
 * @param reason a few words, as shown in the cell; empty beside a number, and for a spare row that shows nothing
 */
public record Solved(double number, String reason) implements Serializable {

    /** Refuses what is neither, such as infinity; turns minus zero into zero. */
    public Solved {
        if (Double.isInfinite(number) || !Double.isNaN(number) && !reason.isEmpty()) {
            throw new FormulaException(
                    "A search finds a finite number or a reason, but found " + number + " and '" + reason + "'.");
        }
        number = number + 0.0;
    }

    /**
     * A number that was found.
     *
     * @param number finite, in the line's unit
     * @return the value
     * @throws FormulaException when the number is not finite
     */
    public static Solved number(double number) {
        if (!Double.isFinite(number)) {
            throw new FormulaException("A search finds a finite number or a reason, but found " + number + ".");
        }
        return new Solved(number, "");
    }

    /**
     * No number.
     *
     * @param reason a few words, such as <i>none in range</i>
     * @return the value
     */
    public static Solved none(String reason) {
        return new Solved(Double.NaN, reason);
    }

    /**
     * Whether there is a number.
     *
     * @return false when there are words in its place
     */
    public boolean hasNumber() {
        return !Double.isNaN(number);
    }
}
