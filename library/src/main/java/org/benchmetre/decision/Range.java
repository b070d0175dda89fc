package org.benchmetre.decision;

import java.util.Arrays;
import java.util.stream.IntStream;
import org.benchmetre.budget.FormulaException;
import org.benchmetre.budget.entry.Bounds;

/**
 * The values of an entry that are searched, both ends included, and how they are divided.
 *
 * @param low least value, in the line's unit
 * @param high greatest value
 * @param whole whether only whole numbers count
 */
record Range(double low, double high, boolean whole) {

    /** From this ratio of its ends on a range is divided in equal ratios instead of equal steps. */
    private static final double WIDE = 10;

    /** How far a bound that is not allowed itself is kept off, as a share of the range. */
    private static final double OFF_THE_BOUND = 1e-12;

    /** The part of a range that the hard bounds of an entry allow. */
    static Range within(Bounds bounds, double low, double high) {
        double most = Math.min(high, bounds.most());
        double least = Math.max(low, bounds.least());
        if (!bounds.leastIncluded() && least == bounds.least()) {
            least += Math.max(Math.ulp(least), bounds.whole() ? 0 : OFF_THE_BOUND * (most - least));
        }
        double from = bounds.whole() ? Math.ceil(least) : least;
        double to = bounds.whole() ? Math.floor(most) : most;
        if (!(from <= to) || Double.isInfinite(from) || Double.isInfinite(to)) {
            throw new FormulaException("There is nothing to search from " + low + " to " + high
                    + " for an entry that is " + bounds.words("") + ".");
        }
        return new Range(from, to, bounds.whole());
    }

    /** Points from end to end, rising, no two the same; every whole number where they are no more than the points wanted. */
    double[] grid(int points) {
        if (low == high) {
            return new double[] {low};
        }
        if (whole && high - low < points) {
            return IntStream.rangeClosed(0, (int) (high - low))
                    .mapToDouble(i -> low + i)
                    .toArray();
        }
        return IntStream.range(0, points)
                .mapToDouble(i -> at(i / (points - 1.0)))
                .map(value -> whole ? Math.rint(value) : value)
                .distinct()
                .toArray();
    }

    /** Points inside a part of the range, rising, without its ends. */
    double[] between(double from, double to, int points) {
        return Arrays.stream(new Range(from, to, whole).grid(points))
                .filter(value -> value > from && value < to)
                .toArray();
    }

    private double at(double share) {
        if (share == 0 || share == 1) {
            return share == 0 ? low : high;
        }
        boolean inRatios = low > 0 && high / low >= WIDE;
        double value = inRatios
                ? Math.exp(Math.log(low) + share * (Math.log(high) - Math.log(low)))
                : low + share * (high - low);
        return Math.min(high, Math.max(low, value));
    }

    /** Between two values: the whole number in the middle, or the double in the middle of all doubles between them. */
    double middle(double from, double to) {
        if (whole) {
            return Math.floor(from + (to - from) / 2);
        }
        long a = ordered(Double.doubleToRawLongBits(from));
        long b = ordered(Double.doubleToRawLongBits(to));
        return Double.longBitsToDouble(ordered((a & b) + ((a ^ b) >> 1)));
    }

    /** Bits of a double as a whole number that rises with it, and back. */
    private static long ordered(long bits) {
        return bits ^ ((bits >> 63) & Long.MAX_VALUE);
    }
}
