package org.benchmetre.farm.whole;

import static org.benchmetre.budget.Formulas.greater;
import static org.benchmetre.budget.Formulas.joined;
import static org.benchmetre.budget.Formulas.none;
import static org.benchmetre.budget.Formulas.shown;
import static org.benchmetre.budget.Formulas.text;
import static org.benchmetre.budget.Formulas.when;

import org.benchmetre.budget.BudgetBuilder;
import org.benchmetre.budget.Formula;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.MinorUnit;
import org.benchmetre.budget.ScheduleBuilder;
import org.benchmetre.budget.unit.Unit;
import org.benchmetre.farm.input.Sheets;

/** What a metre costs and returns, below which price and yield nothing is left, and who takes the money, in sentences. */
public final class AnswerSentences {

    private static final Unit PER_METRE = Unit.parse("money/(m a)");
    private static final Unit PER_KG = Unit.parse("money/kg");
    private static final Unit PER_POUND = Unit.parse("money/lb");
    private static final Unit GRAMS = Unit.parse("g/(plant crop)");

    private final String currency;
    private final int decimals;
    private final Accounts accounts;
    private final LeftOut leftOut;

    /**
     * Where nothing is left.
     *
     * @param price of fruit, money/kg; none without fruit
     * @param yield fruit per plant and crop, g; none where no yield covers the costs
     */
    public record Evens(Line price, Line yield) {}

    /**
     * Declares the lines.
     *
     * @param b where a schedule is added
     * @param firstCost first cost of a metre of bench, money/m
     * @param accounts the accounts of a year
     * @param leftOut what the costs leave out
     * @param evens where nothing is left
     * @param money where the money of a metre goes
     */
    public AnswerSentences(
            BudgetBuilder b, Line firstCost, Accounts accounts, LeftOut leftOut, Evens evens, MoneyOfAMetre money) {
        this.accounts = accounts;
        this.leftOut = leftOut;
        currency = b.structure().currency();
        decimals = MinorUnit.decimals(currency);
        ScheduleBuilder s = b.schedule(Sheets.SUMMARY, "The answer in sentences");
        Line cost = s.textLine("answer_cost", "What a metre costs", cost(firstCost));
        Line outcome = s.textLine("answer_outcome", "What is left", outcome());
        s.textLine("answer_cost_and_return", "Cost and return", costAndReturn(cost, outcome));
        s.textLine("answer_break_even", "Break-even", breakEven(s, evens));
        Line receipts = s.textLine("money_receipts", "What a metre brings in", ofReceipts());
        s.textLine("money_sentence", "Where the money of a metre goes", whoTakesIt(receipts, money, outcome));
    }

    private Formula amount(Formula number) {
        return shown(number, decimals);
    }

    private Formula cost(Line firstCost) {
        return joined(
                text("A metre of bench costs "),
                amount(firstCost),
                text(" " + currency + " to build and "),
                amount(accounts.costs()),
                text(" a year to own and run."));
    }

    private Formula outcome() {
        Formula left = accounts.returns();
        Formula nothing = none(PER_METRE);
        return when(
                nothing.exceeds(left),
                joined(amount(nothing.minus(left)), text(" is missing")),
                joined(amount(greater(left, nothing)), text(" is left")));
    }

    private Formula costAndReturn(Line cost, Line outcome) {
        Formula receipts = accounts.receipts();
        Formula above = when(
                none(PER_METRE).exceeds(accounts.returns()),
                text("."),
                leftOut.either(" above the costs that are listed.", " above total cost."));
        return joined(
                cost,
                text(" It brings in "),
                when(receipts.isPositive(), amount(receipts), text("nothing")),
                text(", so "),
                outcome,
                above);
    }

    private Formula breakEven(ScheduleBuilder s, Evens evens) {
        Line price = s.line(
                "answer_price_of_fruit",
                "Break-even price, 0 for none",
                PER_KG,
                evens.price().numberOr(none(PER_KG)));
        Line prices = s.textLine(
                "answer_break_even_price",
                "Break-even price",
                joined(
                        text("Nothing is left below "),
                        amount(price),
                        text(" " + currency + "/kg ("),
                        amount(price.in(PER_POUND)),
                        text(" " + currency + "/lb)")));
        Line yield = s.textLine(
                "answer_break_even_yield",
                "Break-even yield",
                when(
                        evens.yield().hasNumber(),
                        joined(
                                text(", or below "),
                                shown(evens.yield().numberOr(none(GRAMS)), 0),
                                text(" g a plant and crop.")),
                        text(". No yield covers the costs at the prices entered: a further kg leaves nothing.")));
        return when(
                evens.price().hasNumber(),
                joined(prices, yield),
                text("There is no fruit to sell, so no price covers the costs."));
    }

    private Formula ofReceipts() {
        Formula receipts = accounts.receipts();
        return when(
                receipts.isPositive(),
                joined(text("Of "), amount(receipts), text(" " + currency + " a metre, ")),
                text("Nothing comes in; in " + currency + " a metre, "));
    }

    private Formula whoTakesIt(Line receipts, MoneyOfAMetre money, Line outcome) {
        Formula labour = money.ofMetre(MoneyOfAMetre.HARVEST_LABOUR).plus(money.ofMetre(MoneyOfAMetre.OTHER_LABOUR));
        return joined(
                receipts,
                text("labour takes "),
                amount(labour),
                text(", heat and power "),
                amount(money.ofMetre(MoneyOfAMetre.HEAT_AND_POWER)),
                text("; "),
                outcome,
                text("."));
    }
}
