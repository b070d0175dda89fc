package org.benchmetre.farm.lending;

import static org.benchmetre.budget.Formulas.joined;
import static org.benchmetre.budget.Formulas.none;
import static org.benchmetre.budget.Formulas.text;
import static org.benchmetre.budget.Formulas.when;

import org.benchmetre.budget.BudgetBuilder;
import org.benchmetre.budget.Formula;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.ScheduleBuilder;
import org.benchmetre.budget.unit.Unit;
import org.benchmetre.farm.input.MoneyWords;
import org.benchmetre.farm.input.Sheets;

/** What a lender asks for, gathered in one sentence: what other pages find lacking. */
final class AskFor {

    AskFor(BudgetBuilder b, Lending lending, Line missing) {
        MoneyWords money = new MoneyWords(b);
        Formula credit = none(Unit.MONEY_NOMINAL).minus(lending.cash.least);
        Line years = lending.yearsBelow;
        ScheduleBuilder s = b.schedule(Sheets.SUBMISSION, "What to ask for, in words");
        Line terms = s.textLine(
                "ask_terms",
                "What to ask for of loans",
                joined(
                        when(
                                lending.isAboveSecurity.isFilled(),
                                text("more security or more of the owner's money; "),
                                text("")),
                        when(
                                years.isPositive(),
                                text("a longer term or smaller loans, for lack of coverage; "),
                                text(""))));
        s.textLine(
                "ask_sentence",
                "What to ask for",
                joined(
                        text("Ask for: "),
                        terms,
                        when(
                                credit.isPositive(),
                                joined(text("a line of credit of "), money.whole(credit), text("; ")),
                                text("")),
                        when(missing.isPositive(), text("why things a lender expects are left out; "), text("")),
                        text("evidence for what is invented, as Challenge lists it.")));
    }
}
