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
 * What wears out over the plan. A thing is bought again at the end of each year in which a life ends, before the plan does; what is
 * left of the last life when the plan ends is its residual value, in proportion, salvage included.
 *
 * <pre>
 * e = floor(y / n) - floor((y - 1) / n)     R = S + (C - S) max(b n - h, 0) / n  with b = floor((h - 1) / n) + 1
 * e  lives that end in year y, for 0 &lt; y &lt; h     n  life, a     h  years of the plan, a
 * b  times bought          C  cost, money          S  salvage, money    R  residual value, money
 * </pre>
 *
 * Convention of this project, common practice, no source.
 *
 * @param year number of the year, 0 at the start
 * @param horizon years of the plan
 */
record Wear(Line year, Line horizon) {

    private static final Unit YEAR = Unit.parse("a");
    private static final Unit ONE = Unit.ONE;

    /** Where {@link #ended} comes from, as a note of a line. */
    static final String AGAIN =
            "bought again in each year in which a life ends, before the plan does: common practice, no source";
    /** Where {@link #residual} comes from, as a note of a line. */
    static final String LEFT = "what is left of the last life, in proportion, and salvage: common practice, no source";

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
