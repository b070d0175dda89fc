package org.benchmetre.farm.irrigation.hydraulics;

import static org.benchmetre.budget.Formulas.number;
import static org.benchmetre.budget.Formulas.one;
import static org.benchmetre.farm.input.TradeUnits.ONE;

import org.benchmetre.budget.Formula;
import org.benchmetre.budget.Line;

/**
 * Equal outlets along one lateral, and how the friction of full flow is spread over them. From outlet to outlet the flow falls by
 * one outlet; the loss of a metre grows with flow to the power m. Exact for equal outlets.
 *
 * <pre>
 * hf    = J (s (N F - h) + c N F)                  from inlet to last outlet
 * hf(n) = hf - J (s + c) n F(n) (n/N)^m            from inlet to the outlet that has n beyond it
 * n*    = N (i / (J (1 + c/s)))^(1/m)              outlets beyond the point where a fall gains what friction takes
 * x(n)  = s (N - n - h)                            from inlet to that outlet
 * N  outlets on the lateral, above 0          s  spacing of outlets, m
 * J  loss of a metre at the inlet's flow, m/m  F  multiple-outlet factor of the exponent m, {@link OutletFactor}
 * h  0.5 where the first outlet stands half a spacing from the inlet, else 0
 * c  length of pipe that loses as much as one connection, m
 * i  fall of the bench for each metre
 * </pre>
 *
 * The half spacing: Jensen and Fratini, Agricultural Engineering 38:247, 1957, from memory. Averaged over the outlets, hf takes F of
 * the next higher exponent, since the sum over outlets of what lies upstream of each is a sum of powers again.
 *
 * @param count N, a whole number
 * @param step s
 * @param connection c
 * @param shortfall h
 */
record EqualOutlets(Line count, Formula step, Formula connection, Formula shortfall) {

    /** Where the formula of the loss comes from. */
    static final String SOURCE = "J (s (N F - h) + c N F); half spacing: Jensen and Fratini 1957, from memory";

    /** Length of pipe that loses as much at the inlet's flow, m. */
    Formula equivalentLength(Formula factor) {
        Formula whole = count.times(factor);
        return step.times(whole.minus(shortfall)).plus(connection.times(whole));
    }

    /** Loss from an outlet to the last, m: what lies beyond it. */
    Formula lossBeyond(Formula beyond, Formula factor, Formula gradient, Formula exponent) {
        Formula left = beyond.times(factor).times(beyond.over(count).power(exponent));
        return gradient.times(step.plus(connection)).times(left);
    }

    /** How many outlets lie beyond the point where a fall of the bench gains as much as friction takes; not rounded. */
    Formula beyondTurningPoint(Formula fall, Formula gradient, Formula exponent) {
        Formula share = fall.over(gradient.times(one().plus(connection.over(step))));
        return count.times(share.power(one().over(exponent)));
    }

    /** How far from the inlet the outlet stands that has so many beyond it, m. */
    Formula distanceBefore(Formula beyond) {
        return step.times(count.minus(beyond).minus(shortfall));
    }

    /** From the inlet to the last outlet, m. */
    Formula length() {
        return step.times(count.minus(shortfall));
    }

    /** From the inlet to the outlets on average, m. */
    Formula averageDistance() {
        return step.times(count.plus(one()).over(number(2, ONE)).minus(shortfall));
    }
}
