package org.benchmetre.page;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import org.benchmetre.budget.unit.Unit;

/**
 * How the numbers of one column, or of one row of criteria, are shown: all of them alike. The rule, chosen by this project without a
 * source, by the unit and the size of the values as written:
 *
 * <ul>
 *   <li>amounts of money, of the whole farm and of a year, month or crop: whole money; where all are below 10, the currency's decimals
 *   <li>money for a unit: the currency's decimals; 4 where all are below 0.10, 6 where all are below 0.001; a currency without decimals,
 *       such as the yen, keeps 2 where all are below 10
 *   <li>all else: none where all are whole numbers; else three significant figures of the typical value, the middle one in
 *       size, of two the smaller, and at most six of the largest
 *   <li>what is typed in, by {@link #exact}: as many as the longest needs
 * </ul>
 *
 * <p>On a page of what is paid, amounts keep the currency's decimals whatever their size, so that a sum is the sum of what is printed.
 *
 * <p>Zero counts nowhere, and is shown as a dash; nor do numbers that are not finite. It is not a format of any program: whoever draws
 * makes one of the three answers.
 *
 * @param count digits behind the point, 0 or more
 * @param thousands whether thousands are parted by commas
 */
public record Decimals(int count, boolean thousands) {

    /** What stands in place of zero. */
    public static final String DASH = "–";

    /** Money of the whole farm, by the time it is paid in. */
    private static final List<Unit> AMOUNTS = Stream.of("money", "money_nominal")
            .flatMap(money -> Stream.of(money, money + "/a", money + "/mo", money + "/crop"))
            .map(Unit::parse)
            .toList();

    private static final int SIGNIFICANT = 3;
    private static final int MOST_SIGNIFICANT = 6;
    private static final int MOST_TYPED = 8;
    private static final int PLAIN = 2;
    private static final double FEW = 10;

    /**
     * Decimals of the numbers of one column in one unit.
     *
     * @param unit of all of them
     * @param values as written; any may be zero, and what is not finite is left out
     * @param currencyDecimals of the plan's currency, see {@link org.benchmetre.budget.MinorUnit}
     * @return the same for every number of the column
     */
    public static Decimals of(Unit unit, double[] values, int currencyDecimals) {
        double[] sizes = sizes(values);
        double largest = sizes.length == 0 ? 0 : sizes[sizes.length - 1];
        if (AMOUNTS.contains(unit)) {
            return new Decimals(largest < FEW && largest > 0 ? currencyDecimals : 0, true);
        }
        int count = unit.hasMoney() ? ofPrices(largest, currencyDecimals) : ofQuantities(sizes);
        return new Decimals(count, !unit.isPure());
    }

    /**
     * Decimals of the numbers of one column of what is paid.
     *
     * @param unit of all of them
     * @param values as written
     * @param currencyDecimals of the plan's currency
     * @return as {@link #of}, but amounts of money to the coin
     */
    public static Decimals ofPayments(Unit unit, double[] values, int currencyDecimals) {
        return AMOUNTS.contains(unit) ? new Decimals(currencyDecimals, true) : of(unit, values, currencyDecimals);
    }

    /**
     * Decimals of a column of typed numbers, none of which is to lose a digit, up to the eighth behind the point.
     *
     * @param unit of all of them
     * @param typed as typed
     * @return the same for all of them
     */
    public static Decimals exact(Unit unit, double[] typed) {
        int count = Arrays.stream(sizes(typed)).mapToInt(Decimals::needed).max().orElse(0);
        return new Decimals(Math.min(count, MOST_TYPED), !unit.isPure());
    }

    /**
     * A number as a reader sees it, a dash for zero.
     *
     * @param number finite
     * @return for example {@code 1,234.50} or {@code -0.12}; never a minus before nothing but zeros
     */
    public String shown(double number) {
        return number == 0 ? DASH : written(number);
    }

    /**
     * The same with zero as a number, as it is typed.
     *
     * @param number finite
     * @return for example {@code 0}
     */
    public String written(double number) {
        BigDecimal exact = new BigDecimal(Double.toString(number));
        BigDecimal rounded = exact.setScale(count, RoundingMode.HALF_UP);
        String digits = rounded.abs().toPlainString();
        String sign = rounded.signum() < 0 ? "-" : "";
        return sign + (thousands ? parted(digits) : digits);
    }

    private static int ofPrices(double largest, int currencyDecimals) {
        if (largest > 0 && largest < 0.10) {
            return largest < 0.001 ? 6 : 4;
        }
        return currencyDecimals == 0 && largest > 0 && largest < FEW ? PLAIN : currencyDecimals;
    }

    /** Decimals of three significant figures of the middle size. */
    private static int ofQuantities(double[] sizes) {
        if (Arrays.stream(sizes).allMatch(size -> size == Math.rint(size))) {
            return 0;
        }
        int typical = SIGNIFICANT - digitsBefore(sizes[(sizes.length - 1) / 2]);
        int most = MOST_SIGNIFICANT - digitsBefore(sizes[sizes.length - 1]);
        return Math.max(0, Math.min(typical, most));
    }

    /** Digits before the point, below 1 for each zero behind it: 2 for 12.3, 0 for 0.5, -1 for 0.05. */
    private static int digitsBefore(double size) {
        return 1 + (int) Math.floor(Math.log10(size));
    }

    /** Digits behind the point that a number needs to be read back. */
    private static int needed(double size) {
        return Math.max(
                0,
                new BigDecimal(Double.toString(size))
                        .round(new MathContext(12, RoundingMode.HALF_EVEN))
                        .stripTrailingZeros()
                        .scale());
    }

    /** Finite sizes but for zero, the smallest first. */
    private static double[] sizes(double[] values) {
        return Arrays.stream(values)
                .map(Math::abs)
                .filter(size -> size > 0 && size < Double.POSITIVE_INFINITY)
                .sorted()
                .toArray();
    }

    /** Digits with a comma before every third that stands before the point. */
    private static String parted(String digits) {
        int point = digits.indexOf('.') < 0 ? digits.length() : digits.indexOf('.');
        StringBuilder parted = new StringBuilder(digits);
        for (int at = point - 3; at > 0; at -= 3) {
            parted.insert(at, ',');
        }
        return parted.toString();
    }
}
