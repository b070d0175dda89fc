package org.benchmetre.batch;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.Locale;

/** Numbers as a console shows them: four figures that count, two decimals from a hundred on, never an exponent. */
final class Shown {

    private static final int FIGURES = 4;
    private static final double MANY = 100;

    private Shown() {}

    static String number(double value) {
        if (value == 0) {
            return "0";
        }
        if (Math.abs(value) >= MANY) {
            return String.format(Locale.ROOT, "%.2f", value);
        }
        BigDecimal rounded = new BigDecimal(value).round(new MathContext(FIGURES, RoundingMode.HALF_UP));
        return rounded.stripTrailingZeros().toPlainString();
    }
}
