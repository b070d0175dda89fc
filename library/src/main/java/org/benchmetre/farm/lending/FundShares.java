package org.benchmetre.farm.lending;

import static org.benchmetre.budget.Formulas.greatest;
import static org.benchmetre.budget.Formulas.none;
import static org.benchmetre.budget.Formulas.text;
import static org.benchmetre.budget.Formulas.when;

import org.benchmetre.budget.BudgetBuilder;
import org.benchmetre.budget.Formula;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.ScheduleBuilder;
import org.benchmetre.budget.unit.Unit;
import org.benchmetre.farm.input.Sheets;
import org.benchmetre.farm.input.Tables;
import org.benchmetre.farm.loans.Loans;

/** Each use and each source of funds as a share of all, and which use is the largest. */
final class FundShares {

    private static final Unit PERCENT = Unit.parse("%");

    /** Marks the largest use. */
    static final String LARGEST = "x";
    /** Marks the loan that balances. */
    static final String BALANCES = "balances";

    /** What the largest use takes. */
    final Line largest;
    /** Share of each use, %. */
    final Line ofUse;
    /** Marks it, along the uses. */
    final Line largestMark;
    /** Share of the owner. */
    final Line owner;
    /** Share of grants. */
    final Line grants;
    /** Share of all loans. */
    final Line loans;
    /** Which loan balances, as a word along the loans. */
    final Line balancing;

    FundShares(BudgetBuilder b, Loans entered, Funding funds) {
        ScheduleBuilder uses = b.shared(Sheets.LENDING, Tables.USES);
        ScheduleBuilder each = b.shared(Sheets.LOANS, Tables.LOANS_COUNTED);
        ScheduleBuilder single = b.schedule(Sheets.LENDING, "Shares of funds");
        ofUse = uses.line("start_use_share", "Share", PERCENT, of(funds, funds.amount));
        largest = single.line("use_largest", "Largest use", Unit.MONEY_NOMINAL, greatest(funds.amount, funds.axis));
        largestMark = uses.textLine(
                "start_use_mark", "Largest", when(largest.exceeds(funds.amount), text(""), text(LARGEST)));
        each.line("loan_share", "Share of funds", PERCENT, of(funds, funds.loanAmount));
        balancing = each.textLine(
                "loan_balances_told",
                "Source that balances",
                when(funds.isBalancing.isPositive(), text(BALANCES), text("")));
        owner = single.line("owner_share", "Owner's money, share", PERCENT, of(funds, funds.owner));
        grants = single.line("grants_share", "Grants, share", PERCENT, of(funds, funds.grants));
        loans = single.line("loans_share", "Loans, share", PERCENT, of(funds, funds.loansTotal));
    }

    private static Formula of(Funding funds, Formula money) {
        return when(funds.total.isPositive(), money.over(funds.total).in(PERCENT), none(PERCENT));
    }
}
