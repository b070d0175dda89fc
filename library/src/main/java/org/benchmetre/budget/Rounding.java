package org.benchmetre.budget;

/**
 * Whole numbers from quotients, as the spreadsheet programs find them: rounded to six decimals first, half away from zero, so that
 * 0.3/0.1 is three and not two. Numbers of a billion and more are taken as they are: their sixth decimal is already lost.
 */
public final class Rounding {

    private static final double MILLION = 1e6;
    private static final double LARGE = 1e9;

    private Rounding() {}

    /**
     * {@code ROUNDUP(ROUND(x,6),0)}: away from zero.
     *
     * @param x any number
     * @return the whole number
     */
    public static double wholeUp(double x) {
        double rounded = sixDecimals(Math.abs(x));
        return Math.copySign(Math.ceil(rounded), x) + 0.0;
    }

    /**
     * {@code INT(ROUND(x,6))}: towards minus infinity.
     *
     * @param x any number
     * @return the whole number
     */
    public static double wholeDown(double x) {
        return Math.floor(Math.copySign(sixDecimals(Math.abs(x)), x)) + 0.0;
    }

    /**
     * {@code ROUND(x-y,6)>0}.
     *
     * @param x any number
     * @param y any number
     * @return true when x is more than y by half a millionth or more
     */
    public static boolean exceeds(double x, double y) {
        double difference = x - y;
        return difference > 0 && sixDecimals(difference) > 0;
    }

    private static double sixDecimals(double size) {
        return size < LARGE ? Math.floor(size * MILLION + 0.5) / MILLION : size;
    }
}
