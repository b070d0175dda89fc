package org.benchmetre.farm.ownership;

import static org.benchmetre.budget.Formulas.none;
import static org.benchmetre.budget.Formulas.one;
import static org.benchmetre.budget.Formulas.text;
import static org.benchmetre.farm.input.TradeUnits.ONE;

import org.benchmetre.budget.Formula;

/**
 * One row of the enterprise budget: a quantity at a price. Unless said otherwise it is paid in cash and stays when the yield moves.
 *
 * @param key of the row
 * @param label what a reader sees, a text
 * @param counted how much of what
 * @param cash what of its money is paid in cash, or comes in
 * @param moves what of its money moves with yield, in proportion to fruit
 * @param bend what comes on top of that at low and high yield; null for nothing
 */
public record BudgetRow(String key, Formula label, Counted counted, Formula cash, Formula moves, YieldBends.Bend bend) {

    /**
     * How much of what.
     *
     * @param unit unit of the quantity, a text
     * @param quantity a plain number a year
     * @param amount money a year; 0 where the quantity is 0
     */
    record Counted(Formula unit, Formula quantity, Formula amount) {}

    /**
     * A quantity with its money.
     *
     * @param key of the row
     * @param label what a reader sees, a text
     * @param unit unit of the quantity, a text
     * @param quantity a year
     * @param amount money a year; 0 where the quantity is 0
     * @return the row
     */
    public static BudgetRow of(String key, Formula label, Formula unit, Formula quantity, Formula amount) {
        Counted counted = new Counted(unit, quantity.counting(ONE), amount);
        return new BudgetRow(key, label, counted, amount, none(amount.unit()), null);
    }

    /**
     * A quantity with its money, in words that never change.
     *
     * @param key of the row
     * @param label what a reader sees
     * @param unit unit of the quantity, in words
     * @param quantity a year
     * @param amount money a year; 0 where the quantity is 0
     * @return the row
     */
    public static BudgetRow of(String key, String label, String unit, Formula quantity, Formula amount) {
        return of(key, text(label), text(unit), quantity, amount);
    }

    /**
     * Money that no quantity stands behind: once a year.
     *
     * @param key of the row
     * @param label what a reader sees, a text
     * @param amount money a year
     * @return the row
     */
    public static BudgetRow lump(String key, Formula label, Formula amount) {
        return of(key, label, text("year"), one(), amount);
    }

    /**
     * The same row, of which not all is paid in cash.
     *
     * @param paid money a year
     * @return the row
     */
    public BudgetRow inCash(Formula paid) {
        return new BudgetRow(key, label, counted, paid, moves, bend);
    }

    /**
     * The same row, not paid in cash.
     *
     * @return the row
     */
    public BudgetRow noCash() {
        return inCash(none(counted.amount().unit()));
    }

    /**
     * The same row, of which some moves with yield.
     *
     * @param moving money a year, in proportion to fruit
     * @return the row
     */
    public BudgetRow withYield(Formula moving) {
        return new BudgetRow(key, label, counted, cash, moving, bend);
    }

    /**
     * The same row, all of which moves with yield.
     *
     * @return the row
     */
    public BudgetRow withYield() {
        return withYield(counted.amount());
    }

    /** The same row, all of which moves with yield, but not quite in proportion. */
    BudgetRow withYield(YieldBends.Bend more) {
        return new BudgetRow(key, label, counted, cash, counted.amount(), more);
    }

    BudgetRow named(String other) {
        return new BudgetRow(other, label, counted, cash, moves, bend);
    }
}
