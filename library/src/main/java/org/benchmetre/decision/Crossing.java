package org.benchmetre.decision;

/** One place where a difference is zero or jumps across zero. Values are in the unit of the entry's line. */
public sealed interface Crossing extends Answer {

    /**
     * The side that is the lesser just below.
     *
     * @return unknown at the lower end of the range
     */
    Lesser lesserBelow();

    /**
     * The side that is the lesser just above.
     *
     * @return unknown at the upper end of the range
     */
    Lesser lesserAbove();

    /**
     * The least value of the entry from which the side above, or neither, is the lesser.
     *
     * @return in the unit of the entry's line
     */
    double first();

    /**
     * The sides are the same at one value. At a value where they only touch, the same side is the lesser below and above.
     *
     * @param value of the entry
     * @param left the left side at this value
     * @param right the right side at this value, 0 when there is one cell alone
     * @param lesserBelow the lesser side below
     * @param lesserAbove the lesser side above
     */
    record Root(double value, double left, double right, Lesser lesserBelow, Lesser lesserAbove) implements Crossing {

        @Override
        public double first() {
            return value;
        }
    }

    /**
     * The difference jumps across zero between two values: neighbouring whole numbers, neighbouring numbers in double precision,
     * or finite ones on either side of a gap where a side is no finite number.
     *
     * @param below last value of the entry before the jump
     * @param above first value after it
     * @param lesserBelow the lesser side below
     * @param lesserAbove the lesser side above
     */
    record Jump(double below, double above, Lesser lesserBelow, Lesser lesserAbove) implements Crossing {

        @Override
        public double first() {
            return above;
        }
    }

    /**
     * The sides are the same over a stretch, at least between two points of the grid.
     *
     * @param from first point of the grid where they are the same
     * @param to last point of the grid where they are
     * @param lesserBelow the lesser side below
     * @param lesserAbove the lesser side above
     */
    record Tie(double from, double to, Lesser lesserBelow, Lesser lesserAbove) implements Crossing {

        @Override
        public double first() {
            return from;
        }
    }
}
