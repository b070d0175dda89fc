package org.benchmetre.farm.ownership;

import static org.benchmetre.budget.Formulas.and;
import static org.benchmetre.budget.Formulas.joined;
import static org.benchmetre.budget.Formulas.none;
import static org.benchmetre.budget.Formulas.number;
import static org.benchmetre.budget.Formulas.shown;
import static org.benchmetre.budget.Formulas.text;
import static org.benchmetre.budget.Formulas.when;
import static org.benchmetre.farm.input.TradeUnits.ONE;

import org.benchmetre.budget.BudgetBuilder;
import org.benchmetre.budget.Formula;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.MinorUnit;
import org.benchmetre.budget.ScheduleBuilder;
import org.benchmetre.budget.unit.Unit;
import org.benchmetre.farm.input.Sheets;

/** What the enterprise budget says in words: the year, low and high yield, break-evens, and how to cite it. */
public final class BudgetSentences {

    private static final Unit YEARLY = Unit.parse("money/a");
    private static final Unit PER_POUND = Unit.parse("money/lb");
    private static final Unit POUNDS = Unit.parse("lb/(plant crop)");
    private static final String METHOD =
            "Method: enterprise budget with capital recovery at a real rate (AAEA, Commodity Costs and Returns Estimation Handbook, 2000).";

    private static final String DECIMALS =
            "decimals of money: ISO 4217; of the rest: a choice of this project, no source";

    private final ScheduleBuilder s;
    private final String currency;
    private final int decimals;
    private final Line costWords;

    /**
     * What to cite.
     *
     * @param title of the plan
     * @param year of its prices, a whole number
     * @param version of the program
     */
    public record Cited(String title, Line year, String version) {}

    /**
     * Declares the sentences.
     *
     * @param b where a schedule is added
     * @param budget the budget that is told
     * @param yields low and high yield
     * @param costWords what costs are called: listed or total
     * @param cited what to cite
     */
    public BudgetSentences(BudgetBuilder b, EnterpriseBudget budget, YieldRange yields, Line costWords, Cited cited) {
        this.costWords = costWords;
        s = b.schedule(Sheets.BUDGET, "The budget in words");
        currency = b.structure().currency();
        decimals = MinorUnit.decimals(currency);
        answer(budget);
        yields(budget, yields);
        breakEven("budget_break_even", "Break-even over costs as listed", budget.evensOfAll);
        breakEven("budget_break_even_operating", "Break-even over operating costs", budget.evensOfOperating);
        cite(cited);
    }

    private void answer(EnterpriseBudget budget) {
        Line above = budget.aboveTotal;
        Line left = words(
                "budget_left",
                "What is left",
                when(
                        none(YEARLY).exceeds(above),
                        joined(
                                shown(none(YEARLY).minus(above), 0),
                                text(" " + currency + " is missing, "),
                                shown(none(budget.abovePerMetre.unit()).minus(budget.abovePerMetre), decimals)),
                        joined(
                                shown(above, 0),
                                text(" " + currency + " is left, "),
                                shown(budget.abovePerMetre, decimals))));
        s.textLine(
                "budget_answer",
                "What a year brings and costs",
                joined(
                        text("A year brings in "),
                        shown(budget.receipts, 0),
                        text(" " + currency + " against "),
                        costWords,
                        text(" of "),
                        shown(budget.total, 0),
                        text(" " + currency + ": "),
                        left,
                        text(" " + currency + " a metre of bench.")));
    }

    private void yields(EnterpriseBudget budget, YieldRange y) {
        Line low = atYield("budget_low_left", "Low yield", y.planned.times(y.lowShare), budget.aboveAtLow);
        Line high = atYield("budget_high_left", "high yield", y.planned.times(y.highShare), budget.aboveAtHigh);
        s.textLine(
                "budget_yields",
                "Low and high yield",
                when(
                        and(y.entered.isPositive(), y.low.isPositive(), y.high.isPositive()),
                        joined(low, text(" above "), costWords, text("; "), high, text(".")),
                        text("Low and high yield stand as entered, since the yield or its usual range is not known.")));
    }

    private Line atYield(String id, String which, Formula fruit, Formula above) {
        return s.textLine(
                id,
                which,
                joined(
                        text(which + ", "),
                        shown(fruit, 0),
                        text(" g a plant and crop, leaves "),
                        shown(above, 0),
                        text(" " + currency)));
    }

    private void breakEven(String id, String label, EnterpriseBudget.Evens evens) {
        Line price = words(
                id + "_by_price", label + ", price", when(evens.price().hasNumber(), price(evens.price()), text("")));
        Line fruit = words(
                id + "_by_yield",
                label + ", fruit",
                when(
                        evens.fruit().hasNumber(),
                        fruit(evens.fruit()),
                        text("no yield, as a further kg leaves nothing")));
        s.textLine(
                id,
                label,
                when(
                        evens.price().hasNumber(),
                        joined(text(label + ": "), price, text("; or "), fruit, text(".")),
                        text(label + ": none, since there is no fruit.")));
    }

    private Line words(String id, String label, Formula words) {
        return s.line(id, label, ONE, words, DECIMALS);
    }

    private Formula price(Line line) {
        Formula price = line.numberOr(none(line.unit()));
        return joined(
                shown(price, decimals),
                text(" " + currency + "/kg ("),
                shown(price.in(PER_POUND), decimals),
                text(" " + currency + "/lb)"));
    }

    private Formula fruit(Line line) {
        Formula fruit = line.numberOr(none(line.unit()));
        return joined(shown(fruit, 0), text(" g ("), shown(fruit.in(POUNDS), 2), text(" lb) a plant and crop"));
    }

    private void cite(Cited cited) {
        Line title = s.textLine("budget_cited", "Title of the plan", text("Cite as: " + cited.title()));
        Line year = year(cited.year());
        s.textLine("plan_heading", "Heading of the pages", joined(text("Prices of "), year, text(", in " + currency)));
        Line method = s.textLine("budget_method", "Method of the budget", text(METHOD));
        s.textLine(
                "budget_citation",
                "How to cite the budget",
                joined(title, text(", prices of "), year, text(", Benchmetre " + cited.version() + ". "), method));
    }

    /** The four figures of a year, which have no comma between them. */
    private Line year(Line year) {
        Formula hundreds = year.over(number(100, ONE)).wholeDown();
        Formula tens = year.over(number(10, ONE)).wholeDown();
        return s.line(
                "plan_year_written",
                "Year of the plan, written",
                ONE,
                joined(
                        shown(hundreds, 0),
                        shown(tens.minus(hundreds.times(number(10, ONE))), 0),
                        shown(year.minus(tens.times(number(10, ONE))), 0)),
                "the figures of a whole number one after the other: plain arithmetic, no source");
    }
}
