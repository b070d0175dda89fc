package org.benchmetre.farm.lending;

import static org.benchmetre.budget.Formulas.and;
import static org.benchmetre.budget.Formulas.lookup;
import static org.benchmetre.budget.Formulas.none;
import static org.benchmetre.budget.Formulas.sumWhere;
import static org.benchmetre.budget.Formulas.when;

import org.benchmetre.budget.BudgetBuilder;
import org.benchmetre.budget.Formula;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.ScheduleBuilder;
import org.benchmetre.budget.unit.Unit;
import org.benchmetre.farm.input.Sheets;
import org.benchmetre.farm.input.Tables;
import org.benchmetre.farm.loans.Loans;
import org.benchmetre.farm.loans.SecurityKinds;

/** Each part as a lender sees it: what of it is counted as security, and whether it lasts as long as the loan that pays it. */
final class PartsPaid {

    PartsPaid(BudgetBuilder b, PartsByKind parts, SecurityKinds kinds, Loans loans, Line life) {
        ScheduleBuilder s = b.shared(Sheets.MATERIALS, Tables.PARTS_BOUGHT);
        Formula isBought = parts.paid.isPositive();
        s.line(
                "material_security",
                "Counted as security",
                Unit.MONEY,
                when(isBought, parts.paid.times(lookup(kinds.share, kinds.key, parts.kind)), none(Unit.MONEY)),
                "what is paid times the share of its kind of use");
        Line paidBy = parts.parts.paidBy;
        Line term = s.line(
                "material_loan_term",
                "Term of its loan",
                Unit.parse("a"),
                when(
                        and(isBought, paidBy.isFilled()),
                        sumWhere(loans.term, loans.key, paidBy, loans.axis),
                        none(Unit.parse("a"))));
        s.warning(
                "material_outlived",
                "Life against the loan",
                term.exceeds(life),
                "It lasts shorter than the loan that pays it.");
    }
}
