package org.benchmetre.page;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;

/**
 * How many decimals quantities and prices print with, so that quantity times price gives the value to its printed decimals: a reader who
 * multiplies what is printed finds what is printed.
 *
 * <pre>
 * q r &lt; u and p e &lt; u     u = half a unit of the value's last decimal
 * q  quantity     p  price     r, e  half a unit of the last decimal of the price and of the quantity
 * </pre>
 *
 * All quantities have the same number of decimals, the fewest with which the law can hold in each row; a price has those that its
 * quantity asks for. Where a product then lies so close to the middle between two values that it is printed as the other one, the price
 * gets another decimal. So the law holds for what is printed here; where entries change afterwards and the decimals stay, a product is
 * off by less than one unit of the value's last decimal while quantities and prices stay below twice what they were. Halves are rounded
 * away from zero, as spreadsheet programs print them. Plain arithmetic of rounding.
 *
 * @param quantity decimals of all quantities
 * @param prices decimals of each price
 */
public record PrintedDigits(int quantity, List<Integer> prices) {

    /** Digits beyond these are no longer kept exactly in a number. */
    private static final int MOST = 9;

    private static final double HALF = 0.5;

    /** Keeps the list as it is. */
    public PrintedDigits {
        prices = List.copyOf(prices);
    }

    /**
     * One row of a table.
     *
     * @param quantity how much
     * @param price for one of it
     * @param value quantity times price
     */
    public record Row(double quantity, double price, double value) {}

    /**
     * Finds the decimals.
     *
     * @param rows the rows of a table; values that are not finite ask for nothing
     * @param valueDecimals decimals that values print with
     * @param priceDecimals the fewest decimals of a price, such as those of the currency
     * @return the fewest decimals with which the law holds, up to nine
     */
    public static PrintedDigits of(List<Row> rows, int valueDecimals, int priceDecimals) {
        int quantity = 0;
        for (Row row : rows) {
            quantity = Math.max(quantity, decimals(row.quantity(), row.price(), 0, valueDecimals));
        }
        while (quantity < MOST && !all(rows, quantity, valueDecimals, priceDecimals)) {
            quantity++;
        }
        List<Integer> prices = new ArrayList<>();
        for (Row row : rows) {
            prices.add(price(row, quantity, valueDecimals, priceDecimals));
        }
        return new PrintedDigits(quantity, prices);
    }

    private static boolean all(List<Row> rows, int quantity, int valueDecimals, int priceDecimals) {
        return rows.stream()
                .allMatch(
                        row -> holds(row, quantity, price(row, quantity, valueDecimals, priceDecimals), valueDecimals));
    }

    /** Decimals of a price: those that its quantity asks for, and more while the product is printed as another value. */
    private static int price(Row row, int quantity, int valueDecimals, int least) {
        int enough = decimals(row.price(), row.quantity(), least, valueDecimals);
        for (int more = enough; more <= MOST; more++) {
            if (holds(row, quantity, more, valueDecimals)) {
                return more;
            }
        }
        return enough;
    }

    /** Decimals of a factor: half a unit of its last one, times the other factor, is less than half a unit of the value's. */
    private static int decimals(double factor, double other, int least, int valueDecimals) {
        int decimals = least;
        double half = HALF * Math.pow(10, -valueDecimals);
        while (decimals < MOST
                && Math.abs(other) * HALF * Math.pow(10, -decimals) >= half
                && !isExact(factor, decimals)) {
            decimals++;
        }
        return decimals;
    }

    private static boolean isExact(double factor, int decimals) {
        return !Double.isFinite(factor) || printed(factor, decimals).compareTo(BigDecimal.valueOf(factor)) == 0;
    }

    private static boolean holds(Row row, int quantity, int price, int value) {
        if (!Double.isFinite(row.quantity()) || !Double.isFinite(row.price()) || !Double.isFinite(row.value())) {
            return true;
        }
        BigDecimal product = printed(row.quantity(), quantity).multiply(printed(row.price(), price));
        return product.setScale(value, RoundingMode.HALF_UP).compareTo(printed(row.value(), value)) == 0;
    }

    /**
     * A number as it is printed.
     *
     * @param number finite
     * @param decimals how many
     * @return the number rounded, halves away from zero
     */
    public static BigDecimal printed(double number, int decimals) {
        return BigDecimal.valueOf(number).setScale(decimals, RoundingMode.HALF_UP);
    }
}
