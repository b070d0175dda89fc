package org.benchmetre.farm.input;

import static org.benchmetre.budget.Formulas.joined;
import static org.benchmetre.budget.Formulas.shown;
import static org.benchmetre.budget.Formulas.text;

import org.benchmetre.budget.BudgetBuilder;
import org.benchmetre.budget.Formula;
import org.benchmetre.budget.MinorUnit;

/** Amounts of money within a sentence, with the currency of the plan behind them. */
public final class MoneyWords {

    private final Formula currency;
    private final int coins;

    /**
     * Takes the currency of a budget.
     *
     * @param b the budget
     */
    public MoneyWords(BudgetBuilder b) {
        currency = text(" " + b.structure().currency());
        coins = MinorUnit.decimals(b.structure().currency());
    }

    /**
     * An amount in whole units.
     *
     * @param amount a number
     * @return a text such as {@code 1,234 USD}
     */
    public Formula whole(Formula amount) {
        return joined(shown(amount, 0), currency);
    }

    /**
     * An amount with its coins.
     *
     * @param amount a number
     * @return a text such as {@code 1,234.50 USD}
     */
    public Formula paid(Formula amount) {
        return joined(shown(amount, coins), currency);
    }
}
