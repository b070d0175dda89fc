package org.benchmetre.scenario;

import org.benchmetre.budget.Numbers;

/**
 * The range in which a number makes sense. Only finite numbers lie in any range; NaN lies in none.
 *
 * @param least lower end; negative infinity for none
 * @param leastIncluded whether the lower end itself is allowed
 * @param most upper end; infinity for none
 * @param mostIncluded whether the upper end itself is allowed
 */
public record Bounds(double least, boolean leastIncluded, double most, boolean mostIncluded) {

    /**
     * Checks the ends.
     *
     * @param least lower end
     * @param leastIncluded whether it is allowed itself
     * @param most upper end
     * @param mostIncluded whether it is allowed itself
     * @throws IllegalArgumentException when an end is NaN or the lower one is above the upper one
     */
    public Bounds {
        if (!(least <= most)) {
            throw new IllegalArgumentException("The lower end of a range must not be above its upper end; they were "
                    + least + " and " + most + ".");
        }
    }

    /**
     * Every finite number.
     *
     * @return a range without ends
     */
    public static Bounds any() {
        return new Bounds(Double.NEGATIVE_INFINITY, false, Double.POSITIVE_INFINITY, false);
    }

    /**
     * Every finite number that is not below the given one.
     *
     * @param least lower end, allowed itself
     * @return the range
     */
    public static Bounds atLeast(double least) {
        return new Bounds(least, true, Double.POSITIVE_INFINITY, false);
    }

    /**
     * Every finite number above the given one.
     *
     * @param least lower end, not allowed itself
     * @return the range
     */
    public static Bounds above(double least) {
        return new Bounds(least, false, Double.POSITIVE_INFINITY, false);
    }

    /**
     * Every number between two, both allowed themselves.
     *
     * @param least lower end
     * @param most upper end
     * @return the range
     */
    public static Bounds between(double least, double most) {
        return new Bounds(least, true, most, true);
    }

    /**
     * Whether a number lies in the range.
     *
     * @param value any number
     * @return false for NaN and the infinities
     */
    public boolean contains(double value) {
        boolean highEnough = leastIncluded ? value >= least : value > least;
        boolean lowEnough = mostIncluded ? value <= most : value < most;
        return highEnough && lowEnough && Math.abs(value) < Double.POSITIVE_INFINITY;
    }

    /**
     * The range in words.
     *
     * @return for example {@code at least 0}, {@code above 0}, {@code from 0 to 1}, {@code above 0 and at most 1};
     *     empty when there are no ends
     */
    public String words() {
        boolean low = least > Double.NEGATIVE_INFINITY;
        boolean high = most < Double.POSITIVE_INFINITY;
        if (low && high && leastIncluded && mostIncluded) {
            return "from " + Numbers.shown(least) + " to " + Numbers.shown(most);
        }
        String lowWords = low ? (leastIncluded ? "at least " : "above ") + Numbers.shown(least) : "";
        String highWords = high ? (mostIncluded ? "at most " : "below ") + Numbers.shown(most) : "";
        return lowWords + (low && high ? " and " : "") + highWords;
    }

    /** A noun with the range behind it: {@code a number of at least 0}. */
    String of(String noun) {
        String words = words();
        if (words.isEmpty()) {
            return noun;
        }
        return noun + (words.startsWith("at ") ? " of " : " ") + words;
    }
}
