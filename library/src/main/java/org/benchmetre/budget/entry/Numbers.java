package org.benchmetre.budget.entry;

import java.math.BigDecimal;

/** Numbers as text: a point, no grouping, every digit needed to read the same double back. */
public final class Numbers {

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
}
