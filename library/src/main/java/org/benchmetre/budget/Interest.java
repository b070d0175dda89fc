package org.benchmetre.budget;

import org.benchmetre.budget.unit.Unit;

/** Arithmetic of interest, kept exact where rates are small. */
final class Interest {

    private static final double NO_RATE = 1e-7;

    private Interest() {}

    /** Rates carry the tag of their money: real on money of today, nominal on money of its year. */
    static Unit rateOn(Unit money) {
        return Unit.parse(money.isNominal() ? "nominal/a" : "real/a");
    }

    /**
     * Capital recovery with salvage.
     *
     * @param rate a year, above -1; under a ten-millionth in size it counts as zero and the result is straight line
     * @param life in years, above zero; a fraction is taken as it is
     * @param cost what it costs at the start
     * @param salvage what it brings at the end
     * @return the yearly amount
     */
    public static double recovery(double rate, double life, double cost, double salvage) {
        if (Math.abs(rate) < NO_RATE) {
            return (cost - salvage) / life;
        }
        double discount = -Math.expm1(-life * Math.log1p(rate));
        return (cost * rate - salvage * rate * (1 - discount)) / discount;
    }

    /**
     * The rate at which flows have no present value, by bisection on the discount factor 1/(1+rate).
     *
     * @param flows the first at once, the others a year apart; they change sign once
     * @return the rate, above -1; NaN when none is found below a discount factor of a million
     */
    public static double rateOfReturn(double[] flows) {
        double low = 0;
        double high = 1;
        double start = presentValue(flows, 0);
        while (presentValue(flows, high) * start > 0) {
            low = high;
            high *= 2;
            if (high > 1e6) {
                return Double.NaN;
            }
        }
        for (int step = 0; step < 200 && low < high; step++) {
            double middle = 0.5 * (low + high);
            if (middle == low || middle == high) {
                break;
            }
            if (presentValue(flows, middle) * start > 0) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return 1 / high - 1;
    }

    private static double presentValue(double[] flows, double factor) {
        double value = 0;
        for (int year = flows.length - 1; year >= 0; year--) {
            value = value * factor + flows[year];
        }
        return value;
    }
}
