package org.benchmetre.farm.lending;

import static org.benchmetre.budget.Formulas.joined;
import static org.benchmetre.budget.Formulas.or;
import static org.benchmetre.budget.Formulas.text;
import static org.benchmetre.budget.Formulas.when;

import java.util.LinkedHashMap;
import java.util.Map;
import org.benchmetre.budget.BudgetBuilder;
import org.benchmetre.budget.Formula;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.ScheduleBuilder;
import org.benchmetre.budget.entry.TextForm;
import org.benchmetre.farm.input.FarmEntries;
import org.benchmetre.farm.input.Sheets;

/**
 * A plan as it is handed to a lender: who prepared it for whom and when, the figures as they stood then, what to doubt, what is complete,
 * which sales are under contract, and which quotations no longer held. No date is ever taken from a clock.
 */
public final class Submission {

    /**
     * Figures of the year that a lender is told.
     *
     * @param receipts money/a
     * @param aboveTotal returns above total cost, money/a
     * @param overhead money/a
     */
    public record Year(Line receipts, Line aboveTotal, Line overhead) {}

    /**
     * Declares entries and lines.
     *
     * @param b where schedules are added
     * @param entries has all that may be doubted by now
     * @param lending funds, cash, repayment, returns
     * @param farm what was brought to it
     * @param year figures of the year
     */
    public Submission(BudgetBuilder b, FarmEntries entries, Lending lending, Lending.Farm farm, Year year) {
        ScheduleBuilder e = b.schedule(Sheets.SUBMISSION, "Handed to a lender");
        Line by = entries.add(e.textEntry("prepared_by", "Prepared by"));
        Line whom = entries.add(e.textEntry("prepared_for", "Prepared for"));
        Line on = entries.add(e.textEntry("submitted_on", "Submitted on").words(TextForm.DATE));
        new Contracts(b, entries, e, year.receipts());
        Formula who = joined(
                text("Prepared"),
                when(by.isFilled(), joined(text(" by "), by), text("")),
                when(whom.isFilled(), joined(text(" for "), whom), text("")),
                when(on.isFilled(), joined(text(", submitted on "), on), text("")),
                text("."));
        b.schedule(Sheets.SUBMISSION, "Handed to a lender, in words")
                .textLine(
                        "prepared_sentence",
                        "Who prepared it for whom, and when",
                        when(
                                or(by.isFilled(), or(whom.isFilled(), on.isFilled())),
                                who,
                                text("Enter who prepared this plan, for whom, and when.")));
        Line worth = farm.flow().returns.netPresentValue;
        new AsSubmitted(b, money(lending, farm, year), lending.repayment.lowest);
        new Challenge(b, entries, worth, lending.repayment.lowest);
        Expected expected =
                new Expected(b, lending, farm.uses(), farm.first().parts.materials(), year.overhead());
        new AskFor(b, lending, expected.missing);
        new QuotationsOut(b, on, farm.first().parts.materials(), farm.uses());
    }

    /** Figures of money that are kept, with what a reader calls them, in order. */
    private static Map<Line, String> money(Lending lending, Lending.Farm farm, Year year) {
        Map<Line, String> all = new LinkedHashMap<>();
        all.put(farm.first().total, "First cost");
        all.put(lending.funds.total, "Uses of funds");
        all.put(lending.funds.loansTotal, "Loans");
        all.put(lending.funds.owner, "Owner's money");
        all.put(lending.cash.lowest, "Least cash, first two years");
        all.put(farm.flow().returns.netPresentValue, "Net present value");
        all.put(lending.after.returns.netPresentValue, "Net present value to the owner");
        all.put(year.receipts(), "Receipts of a full year");
        all.put(year.aboveTotal(), "Returns above total cost");
        return all;
    }
}
