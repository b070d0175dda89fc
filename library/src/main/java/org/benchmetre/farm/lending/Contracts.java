package org.benchmetre.farm.lending;

import static org.benchmetre.budget.Formulas.joined;
import static org.benchmetre.budget.Formulas.number;
import static org.benchmetre.budget.Formulas.shown;
import static org.benchmetre.budget.Formulas.text;
import static org.benchmetre.budget.Formulas.when;
import static org.benchmetre.farm.input.TradeUnits.ONE;

import org.benchmetre.budget.BudgetBuilder;
import org.benchmetre.budget.Formula;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.ScheduleBuilder;
import org.benchmetre.farm.input.FarmEntries;
import org.benchmetre.farm.input.Sheets;

/** How much of the fruit is sold under contract, and to whom. It moves no figure: prices are those of the channels. */
final class Contracts {

    private static final double HUNDRED = 100;

    Contracts(BudgetBuilder b, FarmEntries entries, ScheduleBuilder e, Line receipts) {
        Line share = entries.add(e.entry("contract_share", "Fruit under contract, share of sales", ONE)
                .from(0, 1));
        Line buyer = entries.add(e.textEntry("contract_with", "Under contract with"));
        ScheduleBuilder s = b.schedule(Sheets.SUBMISSION, "Sales under contract");
        Line money = s.line("contract_receipts", "Receipts under contract", receipts.unit(), receipts.times(share));
        Formula with =
                when(buyer.isFilled(), joined(text("with "), buyer), text("but the plan does not say with whom"));
        Formula some = joined(
                shown(share.times(number(HUNDRED, ONE)), 0),
                text(" % of sales, "),
                shown(money.counting(ONE), 0),
                text(" " + b.structure().currency() + " a year, are under contract "),
                with,
                text("."));
        s.line(
                "contract_sentence",
                "Sales under contract, in a sentence",
                ONE,
                when(share.isPositive(), some, text("No sales are under contract: ask who will buy the fruit.")),
                "in per cent");
    }
}
