package org.benchmetre.farm.irrigation.water;

import static org.benchmetre.budget.Formulas.greater;
import static org.benchmetre.budget.Formulas.number;
import static org.benchmetre.budget.Formulas.one;
import static org.benchmetre.budget.Formulas.when;
import static org.benchmetre.farm.input.TradeUnits.ONE;

import org.benchmetre.budget.Formula;
import org.benchmetre.budget.Line;
import org.benchmetre.farm.irrigation.hydraulics.Ways;

/**
 * Water given over water kept, at any uniformity: the larger of what drain and uneven outlets ask for, or both multiplied, over the
 * share that the substrate catches. {@link GrossWater} has the formula and its sources.
 *
 * @param ways irrigation systems
 * @param forDrain water given over water kept, for the drain
 * @param rule {@code larger} or {@code both}
 * @param caught share caught by the substrate, by way
 */
record Allowance(Ways ways, Line forDrain, Line rule, Line caught) {

    /** Uniformity below which the allowance grows no more, %; a warning says so. */
    private static final double LEAST_UNIFORMITY = 20;

    /** A uniformity in % as it is counted, a share. */
    static Formula counted(Line uniformity) {
        return greater(uniformity, number(LEAST_UNIFORMITY, uniformity.unit())).in(ONE);
    }

    /** Water given over water kept at a uniformity as counted; 0 in empty rows. */
    Formula factor(Line counted) {
        Formula forUneven = when(counted.isPositive(), one().over(counted), one());
        Formula missed = when(caught.isPositive(), one().over(caught), one());
        return ways.whereFilled(when(rule.is(DrainShare.BOTH), forDrain.times(forUneven), greater(forDrain, forUneven))
                .times(missed));
    }
}
