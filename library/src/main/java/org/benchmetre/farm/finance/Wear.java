package org.benchmetre.farm.finance;

import static org.benchmetre.budget.Formulas.and;
import static org.benchmetre.budget.Formulas.greater;
import static org.benchmetre.budget.Formulas.none;
import static org.benchmetre.budget.Formulas.number;
import static org.benchmetre.budget.Formulas.when;

import org.benchmetre.budget.Formula;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.unit.Unit;

/**
 * What wears out over the plan. A thing with a life of n years is bought again at the end of each year in which a life ends, before
 * the plan does; what is left of the last life when the plan ends is its residual value, in proportion, salvage included.
 * Convention of this project, common practice, no source.
 *
 * @param year number of the year, 0 at the start
 * @param horizon years of the plan
 */
record Wear(Line year, Line horizon) {

    private static final Unit YEAR = Unit.parse("a");
    private static final Unit ONE = Unit.ONE;

    /** How often a life ends within a year of the plan. */
    Formula ended(Line life) {
        Formula now = year.over(life).wholeDown();
        Formula before = year.minus(number(1, YEAR)).over(life).wholeDown();
        Formula within = and(year.isPositive(), horizon.exceeds(year));
        return when(within, now.minus(before), none(ONE));
    }

    /** Value at the end of the plan of a thing that cost so much and brings its salvage at the end of its life. */
    Formula residual(Line life, Formula cost, Formula salvage) {
        Formula bought = horizon.minus(number(1, YEAR)).over(life).wholeDown().plus(number(1, ONE));
        Formula left = greater(bought.times(life).minus(horizon), none(YEAR));
        return salvage.plus(cost.minus(salvage).times(left.over(life)));
    }
}
