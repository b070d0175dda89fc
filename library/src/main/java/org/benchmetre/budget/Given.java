package org.benchmetre.budget;

import java.io.Serializable;
import org.benchmetre.budget.unit.Unit;

/**
 * The value of one entry cell: as typed, in the unit it was typed in, and as the line takes it.
 *
 * @param filled false for a blank cell, which counts as 0 or as the empty text
 * @param number the number in the line's unit; 0 for a text
 * @param text the text; empty for a number
 * @param typed the number as typed
 * @param typedIn the unit it was typed in
 * @param source where the value comes from; may be empty
 * @param place file, row and column it was read from; empty for a default
 */
public record Given(boolean filled, double number, String text, double typed, Unit typedIn, String source, String place)
        implements Serializable {

    /** Refuses numbers that are not finite; turns minus zero into zero. */
    public Given {
        if (!Double.isFinite(number) || !Double.isFinite(typed)) {
            throw new IllegalArgumentException("An entry is a finite number, but found " + number + ".");
        }
        number = number + 0.0;
        typed = typed + 0.0;
    }

    /**
     * A number in the line's own unit.
     *
     * @param number finite
     * @param unit the line's unit
     * @return the value
     */
    public static Given number(double number, Unit unit) {
        return new Given(true, number, "", number, unit, "", "");
    }

    /**
     * A number typed in some unit of the line's dimension.
     *
     * @param typed finite
     * @param typedIn the unit it is typed in
     * @param lineUnit the unit of the line
     * @return the value
     * @throws org.benchmetre.budget.unit.UnitException when the dimensions differ
     */
    public static Given typed(double typed, Unit typedIn, Unit lineUnit) {
        return new Given(true, typedIn.convertLevel(typed, lineUnit), "", typed, typedIn, "", "");
    }

    /**
     * A text.
     *
     * @param text any text; an empty one is a blank cell
     * @return the value
     */
    public static Given text(String text) {
        return new Given(!text.isEmpty(), 0, text, 0, Unit.ONE, "", "");
    }

    /**
     * A blank cell.
     *
     * @param unit the line's unit
     * @return the value
     */
    public static Given blank(Unit unit) {
        return new Given(false, 0, "", 0, unit, "", "");
    }

    /**
     * The same value with its source.
     *
     * @param words where it comes from
     * @return the value
     */
    public Given from(String words) {
        return new Given(filled, number, text, typed, typedIn, words, place);
    }

    /**
     * The same value with the place it was read from.
     *
     * @param words file, row and column
     * @return the value
     */
    public Given at(String words) {
        return new Given(filled, number, text, typed, typedIn, source, words);
    }
}
