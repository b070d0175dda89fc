package org.benchmetre.farm.irrigation.hydraulics;

import static org.benchmetre.budget.Formulas.number;
import static org.benchmetre.budget.Formulas.one;
import static org.benchmetre.budget.Formulas.when;
import static org.benchmetre.farm.input.TradeUnits.ONE;

import org.benchmetre.budget.Formula;

/**
 * The multiple-outlet factor: friction of a line whose flow leaves through N equal outlets, as a share of the friction it would
 * have if all of it ran to the end. The factor is the sum of (i/N)^m over i = 1..N, divided by N, with m the exponent of flow in
 * the friction law (Christiansen, California Agricultural Experiment Station Bulletin 670, 1942).
 *
 * <p>A spreadsheet cell cannot sum over a number of outlets that varies, so the sum is written in closed form: exactly for m = 1
 * and m = 2, otherwise by the Euler-Maclaurin summation formula with its constant, which is Riemann's zeta function at -m. The
 * factor is exactly 1 for one outlet and within 1e-7 of the sum for any other number.
 */
final class OutletFactor {

    /** Where the factor comes from. */
    static final String SOURCE =
            "sum of (i/N)^m over N outlets, divided by N: Christiansen 1942, in closed form by Euler and Maclaurin";

    private static final int SUMMED = 12;
    private static final double TWELVE_DECIMALS = 1e12;

    private OutletFactor() {}

    /**
     * The factor.
     *
     * @param exponent m, from 1 to 3
     * @param outlets a whole number, 1 or more; the factor of none is 1
     * @return the factor, a plain number
     */
    static Formula of(double exponent, Formula outlets) {
        if (!(exponent >= 1 && exponent <= 3)) {
            throw new IllegalArgumentException("The exponent of a friction law is 1 to 3, but found " + exponent + ".");
        }
        Formula many;
        if (exponent == 1) {
            many = outlets.plus(one()).over(plain(2).times(outlets));
        } else if (exponent == 2) {
            many = outlets.plus(one())
                    .times(plain(2).times(outlets).plus(one()))
                    .over(plain(6).times(outlets).times(outlets));
        } else {
            many = series(exponent, outlets);
        }
        return when(outlets.exceeds(one()), many, one());
    }

    private static Formula series(double m, Formula outlets) {
        return plain(1 / (m + 1))
                .plus(term(0.5, -1, outlets))
                .plus(term(second(m), -2, outlets))
                .plus(term(fourth(m), -4, outlets))
                .plus(term(sixth(m), -6, outlets))
                .plus(term(constant(m), -(m + 1), outlets));
    }

    private static Formula term(double coefficient, double power, Formula outlets) {
        return plain(coefficient).times(outlets.power(plain(power)));
    }

    /**
     * Zeta at -m, to about twelve decimals: what the series, taken one term further, leaves of a sum of {@value #SUMMED} powers. The
     * term after that is under 1e-12 there.
     */
    static double constant(double m) {
        double sum = 0;
        for (int i = 1; i <= SUMMED; i++) {
            sum += StrictMath.pow(i, m);
        }
        double n = SUMMED;
        double series = StrictMath.pow(n, m + 1) / (m + 1)
                + StrictMath.pow(n, m) / 2
                + second(m) * StrictMath.pow(n, m - 1)
                + fourth(m) * StrictMath.pow(n, m - 3)
                + sixth(m) * StrictMath.pow(n, m - 5)
                - sixth(m) * (m - 5) * (m - 6) / 40 * StrictMath.pow(n, m - 7);
        return Math.rint((sum - series) * TWELVE_DECIMALS) / TWELVE_DECIMALS;
    }

    private static double second(double m) {
        return m / 12;
    }

    private static double fourth(double m) {
        return -m * (m - 1) * (m - 2) / 720;
    }

    private static double sixth(double m) {
        return m * (m - 1) * (m - 2) * (m - 3) * (m - 4) / 30_240;
    }

    private static Formula plain(double value) {
        return number(value, ONE);
    }
}
