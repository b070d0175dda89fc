package org.benchmetre.budget;

import java.io.Serializable;
import java.util.Optional;
import org.benchmetre.budget.unit.Unit;

/**
 * The hard bounds of an entry, in the line's unit. What lies outside is refused; NaN always lies outside.
 *
 * @param least lower bound
 * @param leastIncluded whether the lower bound itself is allowed
 * @param most upper bound, allowed itself
 * @param whole whether only whole numbers are allowed
 */
public record Bounds(double least, boolean leastIncluded, double most, boolean whole) implements Serializable {

    /** Any finite number. */
    public static final Bounds ANY = new Bounds(Double.NEGATIVE_INFINITY, true, Double.POSITIVE_INFINITY, false);

    /**
     * What a number should have been, when it is not allowed.
     *
     * @param number in the line's unit
     * @param unit the line's unit, for the message
     * @return what was expected, or empty when the number is allowed
     */
    public Optional<String> refusal(double number, Unit unit) {
        boolean high = leastIncluded ? number >= least : number > least;
        if (high && number <= most && (!whole || number == Math.rint(number))) {
            return Optional.empty();
        }
        return Optional.of(words(unit));
    }

    /**
     * The bounds in words.
     *
     * @param unit the line's unit
     * @return for example {@code a whole number from 1 to 10000 in bench}
     */
    public String words(Unit unit) {
        String what = whole ? "a whole number" : "a number";
        String in = unit.equals(Unit.ONE) ? "" : " in " + unit;
        boolean below = least > Double.NEGATIVE_INFINITY;
        boolean above = most < Double.POSITIVE_INFINITY;
        if (below && above && leastIncluded) {
            return what + " from " + Numbers.shown(least) + " to " + Numbers.shown(most) + in;
        }
        String lower = below ? (leastIncluded ? " of at least " : " above ") + Numbers.shown(least) : "";
        String upper = above ? (below ? " and" : "") + " of at most " + Numbers.shown(most) : "";
        return what + lower + upper + in;
    }
}
