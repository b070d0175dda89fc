package org.benchmetre.farm.profile;

import org.benchmetre.budget.entry.Plausible;
import org.benchmetre.budget.unit.Unit;

/**
 * What is documented of a single entry.
 *
 * @param low usual low, NaN when unknown
 * @param typical the default, a number or a word; may be empty
 * @param high usual high, NaN when unknown
 * @param unit the unit of the three as people write it; empty for the line's own
 * @param source where they come from
 */
public record Documented(double low, String typical, double high, String unit, String source) {

    /** A range without a default. */
    static Documented ofRange(ProfileRow row) {
        return new Documented(row.number("low"), "", row.number("high"), row.text("unit"), row.text("source"));
    }

    static Documented of(ProfileRow row) {
        return new Documented(
                row.number("low"), row.text("typical"), row.number("high"), row.text("unit"), row.text("source"));
    }

    /**
     * The range and default of a number.
     *
     * @param line unit of the line
     * @return in the line's unit
     * @throws IllegalStateException when the default is no number or lies outside its range
     */
    public Plausible in(Unit line) {
        Unit typed = unit.isEmpty() ? line : Unit.parse(unit);
        double usual = typical.isEmpty() ? Double.NaN : number();
        if (low > usual || usual > high) {
            throw new IllegalStateException(
                    "The documented default " + typical + " lies outside " + low + " to " + high + ".");
        }
        return new Plausible(
                typed.convertLevel(low, line), typed.convertLevel(usual, line), typed.convertLevel(high, line));
    }

    private double number() {
        try {
            return Double.parseDouble(typical);
        } catch (NumberFormatException e) {
            throw new IllegalStateException("The documented default '" + typical + "' is no number.", e);
        }
    }
}
