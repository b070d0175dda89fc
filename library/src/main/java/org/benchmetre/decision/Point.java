package org.benchmetre.decision;

/**
 * Both sides of a difference at one value of the entry.
 *
 * @param value of the entry
 * @param left the left side
 * @param right the right side
 */
record Point(double value, double left, double right) {

    /** A difference this small beside both sides is rounding: some thousand times the precision of a double. */
    private static final double ROUNDING = 1e-12;

    double difference() {
        return left - right;
    }

    boolean isFinite() {
        return Double.isFinite(left) && Double.isFinite(right);
    }

    double size() {
        return Math.max(Math.abs(left), Math.abs(right));
    }

    /** Whether the difference is nearer to zero here than at both neighbours, and of the same sign at all three. */
    boolean turnsBack(Point before, Point after) {
        boolean sameSign = lesser() != Lesser.NEITHER && lesser() == before.lesser() && lesser() == after.lesser();
        return sameSign
                && Math.abs(difference()) < Math.abs(before.difference())
                && Math.abs(difference()) < Math.abs(after.difference());
    }

    /** The lesser side; neither when they differ by rounding alone, which takes two sides to tell. */
    Lesser lesser() {
        double rounding = ROUNDING * Math.min(Math.abs(left), Math.abs(right));
        if (Math.abs(difference()) <= rounding) {
            return Lesser.NEITHER;
        }
        return difference() < 0 ? Lesser.LEFT : Lesser.RIGHT;
    }
}
