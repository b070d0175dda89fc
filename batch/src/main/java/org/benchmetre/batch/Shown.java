package org.benchmetre.batch;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;

/** Numbers as a console shows them: four figures that count, at most two decimals from a hundred on, never an exponent or a needless zero. */
final class Shown {

    private static final int FIGURES = 4;
    private static final int DECIMALS = 2;
    private static final double MANY = 100;

    private Shown() {}

    static String number(double value) {
        if (value == 0) {
            return "0";
        }
        BigDecimal exact = new BigDecimal(value);
        BigDecimal rounded = Math.abs(value) >= MANY
                ? exact.setScale(DECIMALS, RoundingMode.HALF_UP)
                : exact.round(new MathContext(FIGURES, RoundingMode.HALF_UP));
        return rounded.stripTrailingZeros().toPlainString();
    }
}
