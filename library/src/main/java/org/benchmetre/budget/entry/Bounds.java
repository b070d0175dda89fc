package org.benchmetre.budget.entry;

import java.io.Serializable;
import java.math.RoundingMode;
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
     * Whether a number is allowed.
     *
     * @param number in the line's unit
     * @return false for NaN and the infinities
     */
    public boolean takes(double number) {
        boolean high = leastIncluded ? number >= least : number > least;
        boolean form = Double.isFinite(number) && (!whole || number == Math.rint(number));
        return high && number <= most && form;
    }

    /**
     * The bounds for a reader who types in another unit: at most four digits, rounded to the inside, so that what is named is allowed.
     *
     * @param from the unit of these bounds
     * @param to a unit of its dimension
     * @return these where it is the same unit
     */
    public Bounds in(Unit from, Unit to) {
        return from.equals(to) && from.zero() == to.zero()
                ? this
                : new Bounds(
                        converted(least, from, to, RoundingMode.CEILING),
                        leastIncluded,
                        converted(most, from, to, RoundingMode.FLOOR),
                        whole);
    }

    private static double converted(double bound, Unit from, Unit to, RoundingMode inwards) {
        return Double.isInfinite(bound) ? bound : Numbers.brief(from.convertLevel(bound, to), inwards);
    }

    /**
     * The bounds in words.
     *
     * @param unit the line's unit as people write it; empty for a plain number
     * @return for example {@code a number from 0 to 5 m}
     */
    public String words(String unit) {
        String what = whole ? "a whole number" : "a number";
        boolean below = least > Double.NEGATIVE_INFINITY;
        boolean above = most < Double.POSITIVE_INFINITY;
        String in = unit.isEmpty() ? "" : (below || above ? " " : " in ") + unit;
        if (below && above && leastIncluded) {
            return what + " from " + Numbers.shown(least) + " to " + Numbers.shown(most) + in;
        }
        String lower = below ? (leastIncluded ? " of at least " : " above ") + Numbers.shown(least) : "";
        String upper = above ? (below ? " and" : "") + " of at most " + Numbers.shown(most) : "";
        return what + lower + upper + in;
    }
}
