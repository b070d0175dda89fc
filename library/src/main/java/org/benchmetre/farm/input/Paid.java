package org.benchmetre.farm.input;

import static org.benchmetre.budget.Formulas.greater;
import static org.benchmetre.budget.Formulas.none;
import static org.benchmetre.budget.Formulas.number;
import static org.benchmetre.farm.input.TradeUnits.ONE;

import org.benchmetre.budget.BudgetBuilder;
import org.benchmetre.budget.Formula;
import org.benchmetre.budget.MinorUnit;

/** Money as it is paid: in whole cents, or whatever the smallest part of the currency is, rounded up. */
public final class Paid {

    /** The rule, as lines that follow it give it. */
    public static final String SOURCE =
            "paid in whole cents, or whatever the smallest part of the currency is, rounded up but for a thousandth of it: a choice of this project, "
                    + "no source";

    /** Part of a coin that counts as none, so that the rounding of a large amount is not paid for. */
    private static final double ROUNDING = 1e-3;

    private static final double TEN = 10;

    private final double parts;

    /**
     * Takes the currency of a budget.
     *
     * @param b the budget
     */
    public Paid(BudgetBuilder b) {
        parts = Math.pow(TEN, MinorUnit.decimals(b.structure().currency()));
    }

    /**
     * An amount as it is paid.
     *
     * @param money not negative
     * @return no less but for a thousandth of the smallest part, and more by less than that part
     */
    public Formula of(Formula money) {
        Formula coins = money.times(number(parts, ONE)).minus(number(ROUNDING, money.unit()));
        return greater(coins, none(money.unit())).wholeUp().over(number(parts, ONE));
    }
}
