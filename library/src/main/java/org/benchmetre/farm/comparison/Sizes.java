package org.benchmetre.farm.comparison;

import static org.benchmetre.budget.Formulas.greater;
import static org.benchmetre.budget.Formulas.none;
import static org.benchmetre.budget.Formulas.number;
import static org.benchmetre.farm.input.TradeUnits.ONE;

import org.benchmetre.budget.Formula;

/**
 * Amounts held against each other whatever their size: costs may be cents or thousands of millions. Two that differ by less than a
 * thousand-millionth of the larger are the same, which is far above rounding and far below any price.
 */
final class Sizes {

    /** The rule, as lines that follow it give it. */
    static final String SOURCE =
            "the same within a thousand-millionth of the larger: far above rounding, far below any price; our choice";

    private static final double SAME = 1e-9;

    private Sizes() {}

    /** Whether one amount is more than another. */
    static Formula isMore(Formula amount, Formula other) {
        return amount.minus(other).minus(tolerance(amount, other)).isPositive();
    }

    /** Whether an amount, of either sign, is anything beside another. */
    static Formula matters(Formula amount, Formula beside) {
        return of(amount).minus(beside.times(number(SAME, ONE))).isPositive();
    }

    /** Whether two amounts differ. */
    static Formula differ(Formula amount, Formula other) {
        Formula apart = greater(amount.minus(other), other.minus(amount));
        return apart.minus(tolerance(amount, other)).isPositive();
    }

    /** An amount without its sign. */
    static Formula of(Formula amount) {
        return greater(amount, none(amount.unit()).minus(amount));
    }

    private static Formula tolerance(Formula amount, Formula other) {
        return greater(of(amount), of(other)).times(number(SAME, ONE));
    }
}
