package org.benchmetre.farm.finance;

import static org.benchmetre.budget.Formulas.greater;
import static org.benchmetre.budget.Formulas.none;
import static org.benchmetre.budget.Formulas.number;
import static org.benchmetre.budget.Formulas.one;
import static org.benchmetre.budget.Formulas.when;

import org.benchmetre.budget.Formula;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.unit.Unit;

/**
 * What wears out over the plan. What lasts is bought again at the end of each year in which a life ends, before the plan does; what is
 * used up within a year is bought as often as it is used up, the first time with the start. The residual value at the end of the plan
 * is what a sale would bring: a share of what is left of the last life, in proportion, and salvage.
 *
 * <pre>
 * e = floor(y / n) - floor((y - 1) / n)  for n above 1     R = S + a (C - S) max(b n - h, 0) / n
 * e = 1 / n, less 1 in year h            for n up to 1         with b = floor((h - 1) / n) + 1
 * e  times bought again in year y, for 0 &lt; y &lt; h     n  life, a     h  years of the plan, a
 * b  times bought     C  cost, money     S  salvage, money     a  share that a sale would bring     R  residual value, money
 * </pre>
 *
 * Convention of this project, common practice, no source.
 */
final class Wear {

    private static final Unit YEAR = Unit.parse("a");
    private static final Formula A_YEAR = number(1, YEAR);

    /** Where {@link #ended} comes from, as a note of a line. */
    static final String AGAIN =
            "bought again in each year in which a life ends, before the plan does; what lives a year or less as often "
                    + "as it is used up, the first time at the start: common practice, no source";
    /** Where {@link #residual} comes from, as a note of a line. */
    static final String LEFT =
            "what a sale would bring: salvage, and a share of what is left of the last life, in proportion; nothing of that unless a share "
                    + "is entered: a choice of this project, no source";

    private final PlanYears plan;

    Wear(PlanYears plan) {
        this.plan = plan;
    }

    /** How often a thing is bought again in a year of the plan. */
    Formula ended(Line life) {
        Formula now = plan.number.over(life).wholeDown();
        Formula before = plan.number.minus(A_YEAR).over(life).wholeDown();
        Formula usedUp = plan.goesOn.plus(plan.isLast).times(A_YEAR).over(life).minus(plan.isLast);
        return when(life.exceeds(A_YEAR), plan.goesOn.times(now.minus(before)), usedUp);
    }

    /** Money in the last year alone. */
    Formula atTheEnd(Formula money) {
        return plan.isLast.times(money);
    }

    /** What a sale would bring at the end of the plan of what is left of a cost less salvage. */
    Formula residual(Line life, Formula cost, Line resale) {
        Formula bought = plan.horizon.minus(A_YEAR).over(life).wholeDown().plus(one());
        Formula left = greater(bought.times(life).minus(plan.horizon), none(YEAR));
        return resale.times(cost).times(left.over(life));
    }
}
