package org.benchmetre.budget.entry;

import org.benchmetre.budget.unit.Unit;

/**
 * What somebody has typed for a cell, before it is looked at: a number with or without a unit behind it, or a word.
 *
 * @param text as typed
 * @param unit its unit where that was typed apart; empty where it may stand behind the number
 * @param bare the unit of a number without one
 * @param decimalComma whether the decimal mark is a comma
 */
public record Typed(String text, String unit, Unit bare, boolean decimalComma) {

    /**
     * A text with a decimal point.
     *
     * @param text as typed
     * @param bare the unit of a number without one behind it
     * @return what was typed
     */
    public static Typed of(String text, Unit bare) {
        return new Typed(text, "", bare, false);
    }

    /**
     * Whether nothing was typed.
     *
     * @return true when there are but spaces
     */
    public boolean isBlank() {
        return text.isBlank();
    }
}
