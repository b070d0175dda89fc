package org.benchmetre.farm.loans;

import static org.benchmetre.budget.Formulas.number;
import static org.benchmetre.budget.Formulas.when;
import static org.benchmetre.farm.input.TradeUnits.ONE;

import java.util.List;
import org.benchmetre.budget.BudgetBuilder;
import org.benchmetre.budget.Formula;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.MinorUnit;
import org.benchmetre.budget.ScheduleBuilder;
import org.benchmetre.farm.input.FarmEntries;

/**
 * Whether interest and payments are kept to the last digit or taken to the nearest cent, or whatever the smallest part of the currency
 * is, half a part up.
 */
final class CentRounding {

    /** The rule, as lines that follow it give it. */
    static final String SOURCE =
            "kept unrounded, or to the nearest cent, or whatever the smallest part of the currency is, half up, with the "
                    + "last payment taking the rest: common practice, no source";

    private static final String UNROUNDED = "unrounded";
    private static final String EACH_PAYMENT = "each_payment";
    private static final double HALF = 0.5;
    private static final double TEN = 10;

    private final Line choice;
    private final double parts;

    CentRounding(BudgetBuilder b, FarmEntries entries, ScheduleBuilder s) {
        choice = entries.add(
                s.textEntry("loan_rounding", "Interest and payments rounded").oneOf(List.of(UNROUNDED, EACH_PAYMENT)));
        parts = Math.pow(TEN, MinorUnit.decimals(b.structure().currency()));
    }

    /** An amount of at least nothing as the plan rounds it. */
    Formula of(Formula money) {
        Formula coins = money.times(number(parts, ONE)).plus(number(HALF, money.unit()));
        return when(choice.is(EACH_PAYMENT), coins.wholeDown().over(number(parts, ONE)), money);
    }
}
