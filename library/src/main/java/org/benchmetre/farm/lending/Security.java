package org.benchmetre.farm.lending;

import static org.benchmetre.budget.Formulas.none;
import static org.benchmetre.budget.Formulas.onlyWhen;
import static org.benchmetre.budget.Formulas.sum;
import static org.benchmetre.budget.Formulas.sumWhere;
import static org.benchmetre.budget.Formulas.text;
import static org.benchmetre.budget.Formulas.when;
import static org.benchmetre.farm.input.TradeUnits.MONEY;

import java.util.List;
import org.benchmetre.budget.BudgetBuilder;
import org.benchmetre.budget.Formula;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.Rows;
import org.benchmetre.budget.ScheduleBuilder;
import org.benchmetre.budget.unit.Unit;
import org.benchmetre.farm.input.FundKind;
import org.benchmetre.farm.input.Sheets;
import org.benchmetre.farm.input.Tables;
import org.benchmetre.farm.loans.Loans;
import org.benchmetre.farm.loans.SecurityKinds;
import org.benchmetre.farm.loans.Uses;

/** What was paid by kind of use, what a lender would count of it, and each loan against what stands behind it. */
final class Security {

    private static final Unit NOMINAL = Unit.MONEY_NOMINAL;

    private static final Unit PERCENT = Unit.parse("%");

    /** What was paid by kind, installing and contingency with what plants grow in. */
    final Line paid;
    /** What a lender would count, by kind. */
    final Line counted;
    /** All of that. */
    final Line total;

    Security(BudgetBuilder b, SecurityKinds kinds, Loans loans, Funding funds, Funding.Start start) {
        ScheduleBuilder s = b.schedule(Sheets.LENDING, "Paid and counted as security, by kind of use");
        ScheduleBuilder u = b.schedule(Sheets.LENDING, "Security of uses beside parts");
        Uses uses = start.uses();
        Line ofUse = u.line(
                "use_security_value",
                "Counted as security",
                MONEY,
                uses.amount.times(uses.countedShare(kinds.key, kinds.share)));
        PartsByKind parts = start.parts();
        Formula house = parts.paidFor(FundKind.HOUSE).plus(start.house());
        Formula installing = start.startUp().labour.plus(start.startUp().lumps).minus(start.house());
        Line bought = s.line(
                "kind_bought",
                "Paid for parts, plants and cash",
                MONEY,
                rows(
                        kinds,
                        none(MONEY),
                        house,
                        parts.paidFor(FundKind.EQUIPMENT),
                        parts.paidFor(FundKind.GROWING),
                        start.startUp().plants,
                        funds.workingCapital.counting(MONEY),
                        none(MONEY)));
        paid = s.line(
                "kind_paid",
                "Paid",
                NOMINAL,
                bought.plus(sumWhere(uses.amount, uses.kind, kinds.key, uses.axis))
                        .plus(rows(
                                kinds,
                                none(MONEY),
                                none(MONEY),
                                none(MONEY),
                                installing,
                                none(MONEY),
                                none(MONEY),
                                none(MONEY)))
                        .counting(NOMINAL));
        counted = s.line(
                "kind_security",
                "Counted as security",
                NOMINAL,
                bought.times(kinds.share)
                        .plus(sumWhere(ofUse, uses.kind, kinds.key, uses.axis))
                        .counting(NOMINAL));
        s.line("security_share_told", "Share counted", PERCENT, kinds.share.in(PERCENT));
        total = b.schedule(Sheets.LENDING, "Security in total")
                .line("security_total", "Counted as security", NOMINAL, sum(counted, kinds.axis));
        Line behind = b.schedule(Sheets.LENDING, "Security of each loan, by kind")
                .line(
                        "loan_kind_security",
                        "Counted as security",
                        NOMINAL,
                        when(loans.security.hasKey(kinds.key), counted, none(NOMINAL)));
        ScheduleBuilder l = b.shared(Sheets.LOANS, Tables.LOANS_COUNTED);
        Line value = l.line("loan_security_value", "Security behind it", NOMINAL, sum(behind, kinds.axis));
        l.line(
                "loan_to_value",
                "Loan to security",
                PERCENT,
                onlyWhen(
                        value.isPositive(),
                        funds.loanAmount.over(value).in(PERCENT),
                        when(loans.key.isFilled(), text("none named"), text(""))),
                "what secures several loans stands behind each of them in full");
    }

    private static Formula rows(SecurityKinds kinds, Formula... each) {
        return new Rows(kinds.axis, List.of(each));
    }
}
