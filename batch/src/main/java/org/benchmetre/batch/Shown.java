package org.benchmetre.batch;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import org.benchmetre.budget.Kind;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.MinorUnit;
import org.benchmetre.budget.run.Figures;

/**
 * Numbers as a console shows them: four figures that count, at most two decimals from a hundred on, never an exponent or a needless
 * zero. From a hundred on money has at most the decimals of its currency.
 */
final class Shown {

    private static final int FIGURES = 4;
    private static final int DECIMALS = 2;
    private static final double MANY = 100;

    private Shown() {}

    /** A cell of any line: its number, its text, or why it has no number. */
    static String cell(Figures figures, Line line, int cell) {
        if (line.kind() == Kind.TEXT || figures.hasReason(line, cell)) {
            return figures.text(line, cell);
        }
        double value = figures.number(line, cell);
        return line.unit().hasMoney() ? money(value, figures.budget().currency()) : number(value);
    }

    static String number(double value) {
        return rounded(value, DECIMALS);
    }

    /** An amount or price in a currency. */
    static String money(double value, String currency) {
        return rounded(value, MinorUnit.decimals(currency));
    }

    private static String rounded(double value, int decimals) {
        if (value == 0) {
            return "0";
        }
        BigDecimal exact = new BigDecimal(value);
        BigDecimal rounded = Math.abs(value) >= MANY
                ? exact.setScale(decimals, RoundingMode.HALF_UP)
                : exact.round(new MathContext(FIGURES, RoundingMode.HALF_UP));
        return rounded.stripTrailingZeros().toPlainString();
    }
}
