package org.benchmetre.farm.finance;

import static org.benchmetre.budget.Formulas.greater;
import static org.benchmetre.budget.Formulas.none;
import static org.benchmetre.budget.Formulas.one;
import static org.benchmetre.budget.Formulas.onlyWhen;
import static org.benchmetre.budget.Formulas.presentValue;
import static org.benchmetre.budget.Formulas.previous;
import static org.benchmetre.budget.Formulas.recovery;
import static org.benchmetre.budget.Formulas.text;
import static org.benchmetre.budget.Formulas.when;
import static org.benchmetre.farm.input.TradeUnits.ONE;

import java.util.List;
import org.benchmetre.budget.Axis;
import org.benchmetre.budget.BudgetBuilder;
import org.benchmetre.budget.Formula;
import org.benchmetre.budget.Kind;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.ScheduleBuilder;
import org.benchmetre.budget.unit.Unit;

/**
 * What a stream of yearly cash is worth: net present value, internal and modified rate of return, simple and discounted payback. Rates
 * are real on money of today and nominal on money of its year; 0.05 is 5 % a year.
 */
public final class Returns {

    private static final Unit YEAR = Unit.parse("a");
    private static final String DISCOUNTED =
            "flows over (1 + rate)^year, year 0 at once: Commodity Costs and Returns Estimation Handbook, 2000";

    /** Net present value, in the money of the stream. */
    public final Line netPresentValue;
    /** Internal rate of return, an optional rate of the stream's money; words where there is not just one. */
    public final Line rateOfReturn;
    /** All rates of return in words. It follows from a search, so that reading it runs all searches of a budget. */
    public final Line rateWords;
    /** Cash so far, along the years. */
    public final Line cumulative;
    /** Years until cash is paid back, an optional number, {@code a}; <i>never</i> where it is not. */
    public final Line paybackYears;
    /** Years until cash is paid back with interest at the rate that discounts it, an optional number, {@code a}. */
    public final Line discountedPaybackYears;

    private final ScheduleBuilder answers;
    private final CashStream stream;
    private final Unit money;
    private final Line comingIn;

    /**
     * Declares what a stream is worth.
     *
     * @param b where lines are defined
     * @param answers where single lines are added
     * @param flow where lines by year are added
     * @param shared the tables that streams share
     * @param stream the cash
     */
    public Returns(BudgetBuilder b, ScheduleBuilder answers, ScheduleBuilder flow, RateAxes shared, CashStream stream) {
        this.answers = answers;
        this.stream = stream;
        Line net = stream.net();
        money = net.unit();
        cumulative = soFar(b, flow, "cash_cumulative", "Cumulative cash", net, "");
        comingIn = flow.line(
                stream.id("cash_coming_in"),
                stream.label("Cash of the years that bring some in"),
                money,
                greater(net, none(money)));
        netPresentValue = answers.line(
                stream.id("net_present_value"),
                stream.tagged("Net present value"),
                money,
                presentValue(stream.rate(), net, stream.years()),
                DISCOUNTED);
        InternalRate internal = new InternalRate(b, answers, flow, shared, stream, comingIn);
        rateOfReturn = internal.rate;
        rateWords = internal.words;
        paybackYears = new Payback(answers, flow, stream, "").years(cumulative, net);
        Line discounted = soFar(
                b,
                flow,
                "discounted_cumulative",
                "Cumulative cash, discounted",
                net.over(growth(stream.rate(), stream.year())),
                DISCOUNTED);
        discountedPaybackYears = new Payback(answers, flow, stream, "discounted_")
                .years(discounted, discounted.minus(previous(discounted, none(money))));
    }

    private Line soFar(BudgetBuilder b, ScheduleBuilder flow, String id, String label, Formula ofYear, String note) {
        List<Axis> years = List.of(stream.years());
        Line sum = flow.declare(stream.id(id), stream.label(label), money, Kind.NUMBER, years, note);
        b.define(sum, previous(sum, none(money)).plus(ofYear));
        return sum;
    }

    /** What one of money grows to. */
    private static Formula growth(Formula rate, Formula years) {
        return one().plus(rate.counting(ONE)).power(years.counting(ONE));
    }

    /**
     * Adds the modified rate of return: the rate at which the present value of what goes out grows to what comes in, put by until the
     * end of the plan.
     *
     * <pre>
     * m = (F / P)^(1/n) - 1     F  what comes in, each year's with interest at the reinvestment rate up to year n, money
     *                           P  what goes out, discounted to the start at the finance rate, money
     *                           n  years of the plan, which is the year of the last cash
     * </pre>
     *
     * Lin, The modified internal rate of return and investment criterion, The Engineering Economist, 1976. Where nothing goes out there
     * is none; where nothing comes in it is -100 %.
     *
     * @param financeRate single rate of the stream's money, above -1
     * @param reinvestmentRate single rate of the stream's money, above -1
     * @return {@code modified_rate_of_return}, an optional rate
     */
    public Line modified(Line financeRate, Line reinvestmentRate) {
        Axis years = stream.years();
        Line out = answers.line(
                stream.id("modified_rate_out"),
                stream.label("What goes out, discounted at the finance rate"),
                money,
                presentValue(financeRate, comingIn, years).minus(presentValue(financeRate, stream.net(), years)),
                "cash of the years that bring some in less all cash; " + DISCOUNTED);
        Line in = answers.line(
                stream.id("modified_rate_in"),
                stream.label("What comes in, with interest at the reinvestment rate"),
                money,
                presentValue(reinvestmentRate, comingIn, years).times(growth(reinvestmentRate, stream.horizon())),
                "present value times (1 + rate)^years of the plan; " + DISCOUNTED);
        Formula grown = in.over(out).power(one().over(stream.horizon().counting(ONE)));
        Line rate = answers.line(
                stream.id("modified_rate_of_return"),
                stream.tagged("Modified rate of return"),
                stream.rate().unit(),
                onlyWhen(
                        out.isPositive(),
                        grown.minus(one()).counting(stream.rate().unit()),
                        "no rate: cash never goes out"),
                "(what comes in / what goes out)^(1/years) - 1: Lin, The Engineering Economist, 1976");
        answers.textLine(
                stream.id("modified_rate_words"),
                stream.tagged("Modified rate of return"),
                when(rate.hasNumber(), RateRoots.percent(rate.numberOr(none(rate.unit()))), text("none")));
        return rate;
    }

    /**
     * Adds the equivalent yearly cost: what each year of the plan would have to take for the costs of all years to be recovered with
     * interest at the rate that discounts the stream.
     *
     * @param costs cost of each year, above zero where it takes money, in the stream's money along its years
     * @param metres single length of bench, above zero
     * @return {@code equivalent_cost_per_metre}, money a year and metre
     */
    public Line equivalentCost(Line costs, Line metres) {
        Line worth = answers.line(
                stream.id("costs_present_value"),
                stream.tagged("Present value of all costs"),
                money,
                presentValue(stream.rate(), costs, stream.years()),
                DISCOUNTED);
        Line yearly = answers.line(
                stream.id("equivalent_cost"),
                stream.tagged("Equivalent yearly cost"),
                money.over(YEAR),
                recovery(stream.rate(), stream.horizon(), worth, none(money)),
                "capital recovery of the present value over the plan: Commodity Costs and Returns Estimation Handbook, 2000");
        return answers.line(
                stream.id("equivalent_cost_per_metre"),
                stream.tagged("Equivalent yearly cost of a metre of bench"),
                money.over(YEAR).over(metres.unit()),
                yearly.over(metres));
    }
}
