package org.benchmetre.farm.finance;

import static org.benchmetre.budget.Formulas.and;
import static org.benchmetre.budget.Formulas.none;
import static org.benchmetre.budget.Formulas.not;
import static org.benchmetre.budget.Formulas.number;
import static org.benchmetre.budget.Formulas.one;
import static org.benchmetre.budget.Formulas.onlyWhen;
import static org.benchmetre.budget.Formulas.previous;
import static org.benchmetre.budget.Formulas.rateOfReturn;
import static org.benchmetre.budget.Formulas.sum;
import static org.benchmetre.budget.Formulas.text;
import static org.benchmetre.budget.Formulas.when;
import static org.benchmetre.farm.input.TradeUnits.ONE;

import java.util.List;
import org.benchmetre.budget.Axis;
import org.benchmetre.budget.BudgetBuilder;
import org.benchmetre.budget.Element;
import org.benchmetre.budget.Formula;
import org.benchmetre.budget.Kind;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.ScheduleBuilder;
import org.benchmetre.budget.unit.Unit;

/**
 * The internal rate of return, a live figure where cash goes out first and changes sign once, since there is one rate then at most; all
 * rates, found by a search, where it changes sign more often. Descartes' rule of signs.
 */
final class InternalRate {

    private final CashStream stream;

    /** Sign of the last cash that is not zero, along the years. */
    private final Line sign;

    /** Times the cash changes sign. */
    private final Line changes;

    /** The single rate, or why there is none. */
    final Line rate;

    /** All rates in words. */
    final Line words;

    /**
     * Declares the rate and what it is found from.
     *
     * @param b where the line of signs is defined
     * @param answers where single lines are added
     * @param flow where lines by year are added
     * @param shared the tables that streams share
     * @param stream the cash
     * @param comingIn what of it comes in
     */
    InternalRate(
            BudgetBuilder b,
            ScheduleBuilder answers,
            ScheduleBuilder flow,
            RateAxes shared,
            CashStream stream,
            Line comingIn) {
        this.stream = stream;
        Line net = stream.net();
        Axis years = stream.years();
        Unit unit = stream.rate().unit();
        sign = flow.declare(
                stream.id("cash_sign"),
                stream.label("Sign of the last cash that is not zero"),
                ONE,
                Kind.NUMBER,
                List.of(years),
                "1 or -1; 0 until there is cash");
        Formula before = previous(sign, none(ONE));
        Formula falls = none(net.unit()).minus(net).isPositive();
        b.define(sign, when(net.isPositive(), number(1, ONE), when(falls, number(-1, ONE), before)));
        Line turns = flow.line(
                stream.id("cash_turns"),
                stream.label("Sign changes"),
                ONE,
                when(none(ONE).minus(before.times(sign)).isPositive(), number(1, ONE), none(ONE)));
        SearchStart start = new SearchStart(shared, stream);
        Line guess = answers.line(
                stream.id("irr_guess"),
                stream.label("Where the search for the rate of return begins"),
                unit,
                start.highestThatPays());
        changes = answers.line(
                stream.id("irr_sign_changes"), stream.label("Times the cash changes sign"), ONE, sum(turns, years));
        Line reason = answers.textLine(
                stream.id("irr_reason"), stream.label("Where there is no single rate of return, why"), reason());
        Formula single = and(changes.isPositive(), not(isSeveral()), endsAbove());
        rate = answers.line(
                stream.id("internal_rate_of_return"),
                stream.tagged("Internal rate of return"),
                unit,
                onlyWhen(and(single, start.paysAtAll()), rateOfReturn(net, years, guess), reason),
                "the rate at which the present value is 0; there is one where the cash changes sign once");
        RateRoots roots = new RateRoots(answers, shared, stream, comingIn, start);
        Formula told = RateRoots.percent(rate.numberOr(none(unit)));
        answers.textLine(
                stream.id("rate_of_return_words"),
                stream.tagged("Rate of return"),
                when(rate.hasNumber(), told, when(isSeveral(), text("see all rates"), reason)));
        words = answers.textLine(
                stream.id("rates_of_return"),
                stream.tagged("Rates of return"),
                when(rate.hasNumber(), told, when(isSeveral(), roots.several, reason)));
    }

    private Formula isSeveral() {
        return changes.exceeds(number(1, ONE));
    }

    /** The last cash comes in: where the sign changes once, the first goes out. */
    private Formula endsAbove() {
        return signAtEnd().isPositive();
    }

    private Formula signAtEnd() {
        Axis years = stream.years();
        return new Element(sign, years, years.size() - 1);
    }

    private Formula reason() {
        Formula once =
                when(endsAbove(), text("no rate above -99 %"), text("no return: cash comes in before it goes out"));
        return when(isSeveral(), text("no single rate"), when(changes.isPositive(), once, never()));
    }

    private Formula never() {
        Formula noneIn = when(
                signAtEnd().plus(one()).isPositive(),
                text("no rate: there is no cash"),
                text("no rate: cash never comes in"));
        return when(endsAbove(), text("no rate: cash never goes out"), noneIn);
    }
}
