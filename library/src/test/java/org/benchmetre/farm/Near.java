package org.benchmetre.farm;

import static org.assertj.core.api.Assertions.fail;

import java.util.stream.DoubleStream;

/** Whether figures agree to a share of the largest amount in them; what is not a number never does. */
public final class Near {

    /** Of the largest amount. */
    private static final double RELATIVE = 1e-9;

    private Near() {}

    /** The amounts add to their total. */
    public static void adds(double total, String what, double... amounts) {
        double largest = DoubleStream.of(amounts).map(Math::abs).max().orElseThrow();
        near(DoubleStream.of(amounts).sum(), total, largest, what);
    }

    /** Both are the same, near the size of what they are made of; a size of 0 wants them equal. */
    public static void near(double found, double expected, double size, String what) {
        if (!(Math.abs(found - expected) <= RELATIVE * size)) {
            fail("%s: found %s, expected %s", what, found, expected);
        }
    }
}
