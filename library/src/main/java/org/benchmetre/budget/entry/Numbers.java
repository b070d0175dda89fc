package org.benchmetre.budget.entry;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;

/** Numbers as text: a point, no grouping, every digit needed to read the same double back. */
public final class Numbers {

    private static final MathContext SHOWN = new MathContext(12, RoundingMode.HALF_EVEN);
    private static final int BRIEF = 4;

    private Numbers() {}

    /**
     * The shortest plain decimal that reads back as the same double.
     *
     * @param value a finite number
     * @return for example {@code 0.0254} or {@code 1200}
     */
    public static String plain(double value) {
        BigDecimal exact = new BigDecimal(Double.toString(value + 0.0));
        return exact.signum() == 0 ? "0" : exact.stripTrailingZeros().toPlainString();
    }

    /**
     * A number in a message: at most twelve significant digits, so that what arithmetic leaves in the last digits of a double is not
     * shown. Not for files and formulas, which keep every digit.
     *
     * @param value a finite number
     * @return for example {@code 4.8} for 4.800000000000001
     */
    public static String shown(double value) {
        BigDecimal exact = new BigDecimal(Double.toString(value + 0.0)).round(SHOWN);
        return exact.signum() == 0 ? "0" : exact.stripTrailingZeros().toPlainString();
    }

    /**
     * A number of at most four digits, for a message that names a bound in another unit than it was set in.
     *
     * @param value a finite number
     * @param rounding which way the fifth digit goes; what arithmetic leaves in the last digits of a double does not count
     * @return the number nearest to it
     */
    public static double brief(double value, RoundingMode rounding) {
        return new BigDecimal(Double.toString(value))
                .round(SHOWN)
                .round(new MathContext(BRIEF, rounding))
                .doubleValue();
    }
}
