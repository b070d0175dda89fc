package org.benchmetre.farm.lending;

import static org.benchmetre.budget.Formulas.and;
import static org.benchmetre.budget.Formulas.countWhere;
import static org.benchmetre.budget.Formulas.joined;
import static org.benchmetre.budget.Formulas.one;
import static org.benchmetre.budget.Formulas.shown;
import static org.benchmetre.budget.Formulas.text;
import static org.benchmetre.budget.Formulas.when;
import static org.benchmetre.farm.input.TradeUnits.ONE;

import org.benchmetre.budget.Axis;
import org.benchmetre.budget.BudgetBuilder;
import org.benchmetre.budget.Formula;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.ScheduleBuilder;
import org.benchmetre.farm.input.Sheets;
import org.benchmetre.farm.loans.Uses;
import org.benchmetre.farm.takeoff.Materials;

/** Quotations that no longer held on the day on which the plan was submitted. Nothing is said where no day is entered. */
final class QuotationsOut {

    private static final String RAN_OUT =
            "Its quotation ran out before the plan was submitted: ask for a new one, or change submitted_on.";

    private final Line submittedOn;

    QuotationsOut(BudgetBuilder b, Line submittedOn, Materials parts, Uses uses) {
        this.submittedOn = submittedOn;
        Formula ofParts = out(b, "part", "Quotations of parts", parts.validUntil, parts.axis);
        Formula ofUses = out(b, "use", "Quotations of other uses", uses.validUntil, uses.axis);
        ScheduleBuilder s = b.schedule(Sheets.SUBMISSION, "Quotations that ran out");
        Line count = s.line("quotations_out", "Quotations that ran out", ONE, ofParts.plus(ofUses));
        s.textLine(
                "quotations_sentence",
                "Quotations that ran out, in a sentence",
                when(
                        count.isPositive(),
                        joined(
                                shown(count, 0),
                                when(count.exceeds(one()), text(" quotations"), text(" quotation")),
                                text(" ran out before the plan was submitted: ask for new ones.")),
                        text("")));
    }

    /** How many of a table did. */
    private Formula out(BudgetBuilder b, String id, String label, Line validUntil, Axis axis) {
        Formula isOut = and(submittedOn.isFilled(), and(validUntil.isFilled(), validUntil.isBefore(submittedOn)));
        Line state = b.schedule(Sheets.SUBMISSION, label).warning(id + "_quotation_out", label, isOut, RAN_OUT);
        return countWhere(state, text(RAN_OUT), axis);
    }
}
