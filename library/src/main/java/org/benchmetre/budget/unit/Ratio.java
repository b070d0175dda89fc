package org.benchmetre.budget.unit;

import java.io.Serializable;
import java.math.BigDecimal;
import java.math.BigInteger;
import java.math.MathContext;

/**
 * An exact positive fraction in lowest terms. Unit factors are kept this way, so that an inch is exactly 254/10000 of a metre and
 * two ways of writing one unit compare equal.
 *
 * @param numerator above the line, at least 1
 * @param denominator below the line, at least 1
 */
public record Ratio(BigInteger numerator, BigInteger denominator) implements Serializable {

    /** One. */
    public static final Ratio ONE = new Ratio(BigInteger.ONE, BigInteger.ONE);

    /** Reduces the fraction to lowest terms; refuses what is not positive. */
    public Ratio {
        if (numerator.signum() <= 0 || denominator.signum() <= 0) {
            throw new IllegalArgumentException(
                    "A unit factor is positive, but found " + numerator + "/" + denominator + ".");
        }
        BigInteger divisor = numerator.gcd(denominator);
        numerator = numerator.divide(divisor);
        denominator = denominator.divide(divisor);
    }

    /**
     * The exact value of a decimal such as {@code 0.0254}.
     *
     * @param decimal a positive number with a decimal point
     * @return the fraction
     */
    public static Ratio of(String decimal) {
        BigDecimal value = new BigDecimal(decimal);
        BigInteger power = BigInteger.TEN.pow(Math.max(0, value.scale()));
        return new Ratio(value.multiply(new BigDecimal(power)).toBigIntegerExact(), power);
    }

    /**
     * Product.
     *
     * @param other the other factor
     * @return this times the other
     */
    public Ratio times(Ratio other) {
        return new Ratio(numerator.multiply(other.numerator), denominator.multiply(other.denominator));
    }

    /**
     * Quotient.
     *
     * @param other the divisor
     * @return this over the other
     */
    public Ratio over(Ratio other) {
        return new Ratio(numerator.multiply(other.denominator), denominator.multiply(other.numerator));
    }

    /**
     * Whole power.
     *
     * @param exponent any whole number
     * @return this to the exponent
     */
    public Ratio power(int exponent) {
        int size = Math.abs(exponent);
        Ratio raised = new Ratio(numerator.pow(size), denominator.pow(size));
        return exponent < 0 ? ONE.over(raised) : raised;
    }

    /**
     * The nearest double.
     *
     * @return the fraction as a double
     */
    public double toDouble() {
        return new BigDecimal(numerator)
                .divide(new BigDecimal(denominator), MathContext.DECIMAL128)
                .doubleValue();
    }

    @Override
    public String toString() {
        return denominator.equals(BigInteger.ONE) ? numerator.toString() : numerator + "/" + denominator;
    }
}
