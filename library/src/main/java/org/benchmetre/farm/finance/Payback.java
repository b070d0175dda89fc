package org.benchmetre.farm.finance;

import static org.benchmetre.budget.Formulas.and;
import static org.benchmetre.budget.Formulas.least;
import static org.benchmetre.budget.Formulas.none;
import static org.benchmetre.budget.Formulas.not;
import static org.benchmetre.budget.Formulas.number;
import static org.benchmetre.budget.Formulas.onlyWhen;
import static org.benchmetre.budget.Formulas.previous;
import static org.benchmetre.budget.Formulas.text;
import static org.benchmetre.budget.Formulas.when;

import org.benchmetre.budget.Formula;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.ScheduleBuilder;
import org.benchmetre.budget.unit.Unit;

/**
 * When cash so far comes back from below zero for the first time: a number of years, never, or nothing to pay back.
 *
 * @param answers where single lines are added
 * @param flow where the line by year is added
 * @param stream the cash
 * @param kind what identifiers begin with behind the prefix of the stream: empty, or {@code discounted_}
 */
record Payback(ScheduleBuilder answers, ScheduleBuilder flow, CashStream stream, String kind) {

    private static final Unit YEAR = Unit.parse("a");
    private static final double NEVER = 1000;

    /** Cash is discounted where identifiers say so; those of simple payback by year tell that they are cash. */
    private String byYearId() {
        return stream.id(kind.isEmpty() ? "cash_payback" : kind + "payback");
    }

    private String label(String words) {
        return stream.label(kind.isEmpty() ? words : words + " with interest");
    }

    /**
     * Adds the years until cash is paid back.
     *
     * @param soFar cash so far, along the years
     * @param ofYear what a year adds to it
     * @return an optional number of years
     */
    Line years(Line soFar, Formula ofYear) {
        Unit money = soFar.unit();
        Formula gap = none(money).minus(previous(soFar, none(money)));
        Formula crosses = and(gap.isPositive(), not(none(money).minus(soFar).isPositive()));
        Formula within =
                stream.year().minus(number(1, YEAR)).plus(gap.over(ofYear).counting(YEAR));
        Line paid = flow.line(
                byYearId(),
                label("Years until paid back") + "; 1000 in all other years",
                YEAR,
                when(crosses, within, number(NEVER, YEAR)),
                "the year before and the part of the year that fills the gap, cash taken as even over a year: common practice, no source");
        Line found = answers.line(
                stream.id(kind + "payback_found"),
                label("First year of paying back") + ", 1000 for none",
                YEAR,
                least(paid, stream.years()));
        Formula owes = none(money).minus(least(soFar, stream.years())).isPositive();
        return answers.line(
                stream.id(kind + "payback_years"),
                label("Years until cash is paid back"),
                YEAR,
                onlyWhen(
                        number(NEVER, YEAR).exceeds(found),
                        found,
                        when(owes, text("never"), text("nothing to pay back"))),
                "1000 stands for never");
    }
}
