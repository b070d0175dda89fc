package org.benchmetre.farm.irrigation.hydraulics;

import static org.benchmetre.budget.Formulas.greater;
import static org.benchmetre.budget.Formulas.none;
import static org.benchmetre.budget.Formulas.not;
import static org.benchmetre.budget.Formulas.number;
import static org.benchmetre.budget.Formulas.one;
import static org.benchmetre.budget.Formulas.text;
import static org.benchmetre.budget.Formulas.when;
import static org.benchmetre.farm.input.TradeUnits.ONE;

import org.benchmetre.budget.Formula;
import org.benchmetre.budget.unit.Unit;

/**
 * How evenly a line waters: design emission uniformity (Keller and Karmeli, Transactions of the ASAE, 1974; ASAE EP405).
 *
 * <pre>
 * EU = 100 (1 - 1.27 cv / sqrt(n)) q(min) / q
 * EU  emission uniformity, %          cv  maker's coefficient of variation, 0 to 0.5
 * n   outlets in reach of a plant, at least one where plants share an outlet
 * q(min), q  lowest and average flow of an outlet
 * </pre>
 *
 * Nothing is even where a plant has no outlet: then it is 0.
 */
final class Evenness {

    static final Unit PERCENT = Unit.parse("%");

    /** Where the formula of emission uniformity comes from. */
    static final String SOURCE = "100 (1 - 1.27 cv / sqrt(n)) q(min) / q: Keller and Karmeli 1974, ASAE EP405";

    private static final double LOWEST_QUARTER = 1.27;

    private Evenness() {}

    /**
     * Evenness of outlets as made: 1 - 1.27 cv / sqrt(n).
     *
     * @param variation cv, 0 to 0.5
     * @param inReach n, a plain number
     * @return a plain number; 0 where no outlet is in reach
     */
    static Formula asMade(Formula variation, Formula inReach) {
        Formula shared = greater(inReach, one()).power(number(0.5, ONE));
        Formula maker = one().minus(number(LOWEST_QUARTER, ONE).times(variation).over(shared));
        return when(inReach.isPositive(), maker, none(ONE));
    }

    /**
     * Design emission uniformity of a lateral.
     *
     * @param asMade evenness of outlets as made
     * @param lateral the lateral
     * @param pressure pressure along it, with the lowest flow
     * @param outlets its outlets, with their average flow
     * @return in %; 0 where there are no outlets
     */
    static Formula emissionUniformity(Formula asMade, Lateral lateral, LateralPressure pressure, Outlets outlets) {
        return lateral.whereAny(
                PERCENT,
                () -> asMade.times(pressure.lowestFlow.over(outlets.flow)).in(PERCENT));
    }

    /**
     * Variation of pressure that goes with a variation of flow, both as 1 - lowest/highest: 1 - (1 - v)^(1/x).
     *
     * @param flowVariation plain, 0 to under 1
     * @param exponent of pressure, above 0; guard it
     * @return a plain number
     */
    static Formula pressureVariation(Formula flowVariation, Formula exponent) {
        return one().minus(one().minus(flowVariation).power(one().over(exponent)));
    }

    /**
     * The class of an emission uniformity: 90 % and above excellent, 80 good, 70 fair, below poor. The bands of Merriam and Keller
     * 1978 and ASAE EP458, from memory.
     *
     * @param uniformity in %
     * @return a text
     */
    static Formula uniformityClass(Formula uniformity) {
        return when(
                reaches(uniformity, 90),
                text("excellent"),
                when(reaches(uniformity, 80), text("good"), when(reaches(uniformity, 70), text("fair"), text("poor"))));
    }

    private static Formula reaches(Formula uniformity, double percent) {
        return not(number(percent, PERCENT).exceeds(uniformity));
    }

    /**
     * The class of a maker's coefficient of variation of outlets that wet a strip, by ASAE EP405.1 table 1, from memory. A value on a
     * limit is of the worse class.
     *
     * @param variation the coefficient
     * @return a text
     */
    static Formula lineClass(Formula variation) {
        return under(variation, 0.10, "good", under(variation, 0.20, "average", text("marginal to unacceptable")));
    }

    /**
     * The same of outlets that stand apart.
     *
     * @param variation the coefficient
     * @return a text
     */
    static Formula pointClass(Formula variation) {
        Formula poor = under(variation, 0.15, "poor", text("unacceptable"));
        Formula marginal = under(variation, 0.11, "marginal", poor);
        return under(variation, 0.05, "excellent", under(variation, 0.07, "average", marginal));
    }

    private static Formula under(Formula variation, double limit, String is, Formula otherwise) {
        return when(number(limit, ONE).exceeds(variation), text(is), otherwise);
    }
}
