package org.benchmetre.decision;

/**
 * Two values of the entry between which the difference changes its sign.
 *
 * @param low the point below
 * @param high the point above
 * @param scale the larger of the two differences when the bracket was found
 * @param closed whether it cannot be made narrower
 */
record Bracket(Point low, Point high, double scale, boolean closed) {

    /** The sides are the same when they differ by no more than this share of the larger, or of the difference in the scan. */
    static final double SAME = 1e-10;

    static Bracket of(Point low, Point high) {
        double scale = Math.max(Math.abs(low.difference()), Math.abs(high.difference()));
        return new Bracket(low, high, scale, false);
    }

    /** The half in which the sign changes; closed when there is nothing between, or nothing finite. */
    Bracket narrowed(Point middle) {
        boolean between = middle.value() > low.value() && middle.value() < high.value();
        if (!between || !middle.isFinite()) {
            return new Bracket(low, high, scale, true);
        }
        if (middle.difference() == 0) {
            return new Bracket(middle, middle, scale, true);
        }
        return middle.difference() < 0 == low.difference() < 0
                ? new Bracket(middle, high, scale, false)
                : new Bracket(low, middle, scale, false);
    }

    /** What the bracket holds, with the sides that are the lesser around it. */
    Crossing crossing(Lesser below, Lesser above) {
        Point near = Math.abs(low.difference()) <= Math.abs(high.difference()) ? low : high;
        boolean same = Math.abs(near.difference()) <= SAME * Math.max(near.size(), scale);
        return same
                ? new Crossing.Root(near.value() + 0.0, near.left(), near.right(), below, above)
                : new Crossing.Jump(low.value() + 0.0, high.value() + 0.0, below, above);
    }
}
