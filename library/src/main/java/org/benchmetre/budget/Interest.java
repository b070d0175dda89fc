package org.benchmetre.budget;

/** Arithmetic of interest, kept exact where rates are small. */
public final class Interest {

    private static final double NO_RATE = 1e-7;

    private Interest() {}

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
}
