package org.benchmetre.farm.irrigation;

import static org.benchmetre.budget.Formulas.number;
import static org.benchmetre.budget.Formulas.one;
import static org.benchmetre.farm.input.TradeUnits.ONE;

import org.benchmetre.budget.Formula;
import org.benchmetre.budget.Line;

/**
 * Friction of one lateral by one law, loss growing with flow to the power m. From outlet to outlet the flow falls by one outlet, so
 * that the loss over all of them is J (s (N F(N) - h) + c N F(N)): J the loss of a metre at the inlet's flow, s the spacing, F the
 * {@link OutletFactor}, h one half where the first outlet stands half a spacing from the inlet (Jensen and Fratini, Agricultural
 * Engineering 38:247, 1957, from memory), c the length of pipe that loses as much as one connection. Averaged over the outlets, F is that
 * of the next higher exponent, since the sum over outlets of what lies upstream of each is a sum of powers again. Exact for equal
 * outlets.
 *
 * @param exponent m: 1 laminar, 1.75 turbulent in smooth pipe
 * @param gradient metres of water a metre of pipe at the inlet's flow
 * @param outlets on the lateral, whole; above 0 wherever a result is used
 * @param step spacing of outlets
 * @param connection length of pipe that loses as much as one connection
 * @param shortfall share of a spacing that the first one is short of, 0 or 0.5
 */
record Regime(double exponent, Line gradient, Line outlets, Formula step, Formula connection, Formula shortfall) {

    /** Loss from the inlet to the last outlet, m. */
    Formula loss() {
        return gradient.times(equivalentLength(exponent));
    }

    /** Loss from the inlet to an outlet, averaged over all outlets, m. */
    Formula averageLoss() {
        return gradient.times(equivalentLength(exponent + 1));
    }

    private Formula equivalentLength(double power) {
        Formula whole = outlets.times(OutletFactor.of(power, outlets));
        return step.times(whole.minus(shortfall)).plus(connection.times(whole));
    }

    /** Loss from the inlet to the outlet that has so many beyond it, m. */
    Formula lossBefore(Line total, Formula beyond) {
        Formula left = beyond.times(OutletFactor.of(exponent, beyond))
                .times(beyond.over(outlets).power(number(exponent, ONE)));
        return total.minus(gradient.times(step.plus(connection)).times(left));
    }

    /** How many outlets lie beyond the point where a fall of the bench gains as much as friction takes; not rounded. */
    Formula beyondTurningPoint(Formula fall) {
        Formula share = fall.over(gradient.times(one().plus(connection.over(step))));
        return outlets.times(share.power(number(1 / exponent, ONE)));
    }
}
