package org.benchmetre.farm.finance;

import static org.benchmetre.budget.Formulas.and;
import static org.benchmetre.budget.Formulas.greater;
import static org.benchmetre.budget.Formulas.joined;
import static org.benchmetre.budget.Formulas.none;
import static org.benchmetre.budget.Formulas.not;
import static org.benchmetre.budget.Formulas.number;
import static org.benchmetre.budget.Formulas.one;
import static org.benchmetre.budget.Formulas.or;
import static org.benchmetre.budget.Formulas.presentValue;
import static org.benchmetre.budget.Formulas.shown;
import static org.benchmetre.budget.Formulas.sum;
import static org.benchmetre.budget.Formulas.text;
import static org.benchmetre.budget.Formulas.when;
import static org.benchmetre.farm.input.TradeUnits.ONE;

import org.benchmetre.budget.Axis;
import org.benchmetre.budget.Element;
import org.benchmetre.budget.Formula;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.ScheduleBuilder;
import org.benchmetre.budget.unit.Unit;
import org.benchmetre.decision.RatesOfReturn;

/**
 * All rates at which a stream of cash is worth nothing. Cash that changes sign more than once may have several, which no formula
 * gives: they are searched when a workbook is written. Live lines beside them tell when entries have changed since.
 */
final class RateRoots {

    /** A present value of this share of what comes in is no longer nothing. */
    private static final double SHARE = 1e-6;

    private static final String SEARCHED =
            "searched when the workbook is written, between " + RateAxes.LIMITS + ": all roots of the present value";

    private final Axis roots;
    private final Line count;
    private final Line words;

    /** The rates in words, for cash that changes sign more than once; says so where entries have changed since. */
    final Line several;

    /**
     * Declares the search and what stands beside it.
     *
     * @param answers where single lines are added
     * @param shared the rows
     * @param stream whose rates are sought
     * @param comingIn what of the stream comes in, along its years
     * @param trials present values at the trial rates
     */
    RateRoots(ScheduleBuilder answers, RateAxes shared, CashStream stream, Line comingIn, SearchStart trials) {
        roots = shared.roots;
        Unit money = stream.net().unit();
        Unit rate = stream.rate().unit();
        ScheduleBuilder s = shared.found;
        RatesOfReturn search = new RatesOfReturn(stream.net(), RateAxes.LOWEST, RateAxes.HIGHEST, roots.size());
        Line root =
                s.solved(stream.id("rate_root"), stream.label("Rate of return found"), rate, SEARCHED, search, roots);
        Line taken = s.line(
                stream.id("rate_root_taken"),
                stream.label("The rate, 0 where there is none"),
                rate,
                root.numberOr(none(rate)));
        Formula value = presentValue(taken, stream.net(), stream.years());
        Formula size = presentValue(taken, comingIn, stream.years()).times(number(SHARE, ONE));
        Formula off = greater(value, none(money).minus(value)).minus(size).isPositive();
        Line moved = s.line(
                stream.id("rate_root_moved"),
                stream.label("Entries have changed since, 1 or 0"),
                ONE,
                when(and(root.hasNumber(), off), one(), none(ONE)),
                "the present value is then more than a millionth of what comes in: a choice of this project, no source");
        s.line(
                stream.id("rate_root_value"),
                stream.label("Present value at that rate, 0 while it holds"),
                money,
                when(moved.isPositive(), value, none(money)),
                "flows over (1 + rate)^year");
        words = s.textLine(
                stream.id("rate_root_words"),
                stream.label("The rate in words"),
                when(root.hasNumber(), percent(taken), text("")));
        count = answers.solvedNumber(
                stream.id("rate_root_count"),
                stream.label("How many rates of return there are"),
                ONE,
                SEARCHED,
                new RatesOfReturn.Count(search));
        Formula hidden = and(not(count.isPositive()), trials.paysSomewhere());
        Line stale = answers.line(
                stream.id("rate_root_stale"),
                stream.label("Rates as filled no longer hold, 1 or 0"),
                ONE,
                when(or(sum(moved, roots).isPositive(), hidden), one(), none(ONE)));
        several = answers.textLine(
                stream.id("rates_several"),
                stream.label("Several rates of return"),
                when(
                        stale.isPositive(),
                        text("several rates may hold; entries have changed since they were searched"),
                        counted(answers, stream)));
    }

    private Line counted(ScheduleBuilder s, CashStream stream) {
        Line listed = s.line(
                stream.id("rates_listed"),
                stream.label("Rates of return found, in a row"),
                ONE,
                when(
                        isOver(2),
                        joined(word(0), text(", "), word(1), text(" and "), word(2)),
                        when(isOver(1), joined(word(0), text(" and "), word(1)), word(0))),
                "at most three are told");
        Formula more = joined(shown(count, 0), text(" rates, the lowest "));
        Formula few = when(isOver(2), text("three rates: "), when(isOver(1), text("two rates: "), text("")));
        Line howMany = s.line(
                stream.id("rates_told"),
                stream.label("How many rates of return"),
                ONE,
                when(isOver(roots.size()), more, few),
                "at most three are told");
        return s.line(
                stream.id("rates_counted"),
                stream.label("Rates of return as filled"),
                ONE,
                when(count.isPositive(), joined(howMany, listed), text("no rate between " + RateAxes.LIMITS)),
                "at most three are told");
    }

    private Formula isOver(int number) {
        return count.exceeds(number(number, ONE));
    }

    private Formula word(int root) {
        return new Element(words, roots, root);
    }

    /** A rate as people read it, such as 12.3 %. */
    static Formula percent(Formula rate) {
        return joined(shown(rate.in(rate.unit().times(Unit.parse("%"))), 1), text(" %"));
    }
}
