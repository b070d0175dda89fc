package org.benchmetre;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.Map;
import java.util.Objects;
import org.benchmetre.budget.unit.Unit;

/**
 * A figure with its unit, for people: money in whole cents, all else in six significant digits. {@link #value} has every digit.
 *
 * @param value the number, finite
 * @param unit its unit
 * @param currency ISO 4217 code of money in the unit
 */
public record Quantity(double value, Unit unit, String currency) {

    private static final MathContext SHOWN = new MathContext(6, RoundingMode.HALF_UP);
    private static final int CENTS = 2;

    /**
     * Checks that nothing is missing.
     *
     * @param value finite
     * @param unit its unit
     * @param currency ISO 4217 code
     * @throws IllegalArgumentException when the number is not finite
     */
    public Quantity {
        Objects.requireNonNull(unit, "unit");
        Objects.requireNonNull(currency, "currency");
        if (!Double.isFinite(value)) {
            throw new IllegalArgumentException("A quantity is a finite number; it was " + value + ".");
        }
    }

    /**
     * The same quantity in another unit.
     *
     * @param other a unit of the same dimension, such as {@code ft}
     * @return the quantity
     * @throws org.benchmetre.budget.unit.UnitException when the unit is none or of another dimension
     */
    public Quantity in(String other) {
        Unit target = Unit.parse(other, Map.of(currency, Unit.MONEY));
        return new Quantity(unit.convertLevel(value, target), target, currency);
    }

    /** The quantity as people write it, such as {@code 54.33 USD/m}. */
    @Override
    public String toString() {
        BigDecimal exact = BigDecimal.valueOf(value);
        BigDecimal rounded = unit.hasMoney()
                ? exact.setScale(CENTS, RoundingMode.HALF_UP)
                : exact.round(SHOWN).stripTrailingZeros();
        String shown = unit.display(currency);
        return rounded.toPlainString() + (shown.equals("1") ? "" : " " + shown);
    }
}
