package org.benchmetre.farm.lending;

import static org.benchmetre.budget.Formulas.and;
import static org.benchmetre.budget.Formulas.greater;
import static org.benchmetre.budget.Formulas.joined;
import static org.benchmetre.budget.Formulas.lookup;
import static org.benchmetre.budget.Formulas.none;
import static org.benchmetre.budget.Formulas.not;
import static org.benchmetre.budget.Formulas.number;
import static org.benchmetre.budget.Formulas.one;
import static org.benchmetre.budget.Formulas.onlyWhen;
import static org.benchmetre.budget.Formulas.shown;
import static org.benchmetre.budget.Formulas.text;
import static org.benchmetre.budget.Formulas.when;

import org.benchmetre.budget.BudgetBuilder;
import org.benchmetre.budget.Formula;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.ScheduleBuilder;
import org.benchmetre.budget.unit.Unit;
import org.benchmetre.farm.input.FarmEntries;
import org.benchmetre.farm.input.MoneyWords;
import org.benchmetre.farm.input.Sheets;
import org.benchmetre.farm.loans.Loans;

/** How much the start takes, who pays and what secures it, in sentences. Money is shown in whole units. */
final class LendingWords {

    /** That loans are above what security carries; empty where they are not. */
    final Line limitTold;

    private static final Unit NOMINAL = Unit.MONEY_NOMINAL;
    private static final Unit ONE = Unit.ONE;
    private static final Unit PERCENT = Unit.parse("%");
    private static final Formula NOTHING = text("");
    private static final double ALL = 100;

    private final ScheduleBuilder s;
    private final MoneyWords money;
    private final Funding funds;
    private final FundShares shares;

    LendingWords(BudgetBuilder b, FarmEntries entries, Loans loans, Funding funds, Security security) {
        ScheduleBuilder limit = b.schedule(Sheets.LENDING, "What a lender asks for as security");
        s = b.schedule(Sheets.LENDING, "Funds and loans, in words");
        money = new MoneyWords(b);
        this.funds = funds;
        shares = new FundShares(b, loans, funds);
        Formula largest = lookup(funds.label, shares.largestMark, text(FundShares.LARGEST));
        s.textLine(
                "funds_uses_told",
                "What the start takes",
                joined(
                        text("The start takes "),
                        money.whole(funds.total),
                        text(". The largest use: "),
                        largest,
                        text(", "),
                        shown(lookup(shares.ofUse, shares.largestMark, text(FundShares.LARGEST)), 0),
                        text(" % of it.")));
        Line unused = sources(loans);
        limitTold = security(entries, limit, security);
        warnings(unused);
    }

    private Line sources(Loans loans) {
        Line owner = s.textLine(
                "funds_owner_told",
                "What the owner brings",
                joined(
                        text("The owner brings "),
                        money.whole(greater(funds.owner, none(NOMINAL))),
                        share(greater(shares.owner, none(PERCENT)))));
        Line others = s.textLine(
                "funds_others_told",
                "What others bring",
                joined(also("grants", funds.grants, shares.grants), also("loans", funds.loansTotal, shares.loans)));
        Formula which = lookup(loans.label, shares.balancing, text(FundShares.BALANCES));
        Line rest = s.textLine(
                "funds_rest_told",
                "Who brings what is missing",
                when(
                        funds.balancing.isPositive(),
                        joined(text(" "), which, text(" brings what is missing.")),
                        when(
                                number(ALL, PERCENT).exceeds(shares.owner),
                                text(" The owner brings what is missing."),
                                NOTHING)));
        Formula over = none(NOMINAL).minus(funds.owner);
        s.textLine(
                "funds_sources_told",
                "Who pays",
                when(
                        over.isPositive(),
                        joined(
                                text("Loans and grants bring "),
                                money.whole(over),
                                text(" more than the start takes: lower one of them.")),
                        joined(owner, others, text("."), rest)));
        Formula differs = funds.ownerEntered.minus(funds.owner);
        Line unneeded = s.textLine(
                "funds_owner_unneeded",
                "Owner's money that is not needed",
                when(
                        and(funds.balancing.isPositive(), differs.wholeDown().isPositive()),
                        joined(
                                text("Of the "),
                                money.whole(funds.ownerEntered),
                                text(" entered for the owner "),
                                money.whole(differs),
                                text(" are not needed, and the loan without an amount brings nothing.")),
                        NOTHING));
        Line unused = s.textLine(
                "funds_owner_unused",
                "What was entered for the owner",
                when(
                        and(
                                funds.ownerEntered.isPositive(),
                                not(funds.balancing.isPositive()),
                                greater(differs, none(NOMINAL).minus(differs))
                                        .wholeDown()
                                        .isPositive()),
                        joined(
                                text("Every loan has an amount, so that the "),
                                money.whole(funds.ownerEntered),
                                text(" entered for the owner are not used; leave one amount blank to use them.")),
                        NOTHING));
        return s.textLine("funds_owner_caution", "What is wrong with the owner's money", joined(unused, unneeded));
    }

    private Line security(FarmEntries entries, ScheduleBuilder limit, Security security) {
        Line most = entries.add(limit.entry("loan_to_value_limit", "Loans, at most, as a share of security", ONE)
                .from(0, 10));
        Line ratio = s.line(
                "loans_to_value",
                "All loans against all security",
                PERCENT,
                onlyWhen(
                        security.total.isPositive(),
                        funds.loansTotal.over(security.total).in(PERCENT),
                        "no security"));
        Formula counted = ratio.numberOr(none(PERCENT));
        Formula borrows = funds.loansTotal.isPositive();
        Line told = s.textLine(
                "funds_ratio_told",
                "Loans against security, in words",
                when(
                        security.total.isPositive(),
                        joined(text(": loans are "), shown(counted, 0), text(" % of it.")),
                        text(".")));
        s.textLine(
                "funds_security_told",
                "What secures loans",
                when(
                        borrows,
                        joined(
                                text("A lender would count "),
                                money.whole(security.total),
                                text(" as security for loans of "),
                                money.whole(funds.loansTotal),
                                told),
                        NOTHING));
        return s.textLine(
                "funds_limit_told",
                "Loans against the limit",
                when(
                        and(borrows, funds.loansTotal.exceeds(security.total.times(most))),
                        joined(
                                text("That is more than the "),
                                percent(most),
                                text(
                                        " % a lender may ask for: bring more money of one's own, or offer more security.")),
                        NOTHING));
    }

    private void warnings(Line unused) {
        Formula over = none(NOMINAL).minus(funds.owner);
        Line exceed = s.warning(
                "funds_exceed",
                "Sources against uses",
                over.wholeDown().isPositive(),
                joined(text("Sources exceed uses by "), money.whole(over), text(": lower a loan or a grant.")));
        Line blank = s.warning(
                "funds_two_blank",
                "Loans without an amount",
                funds.balancing.exceeds(one()),
                joined(
                        shown(funds.balancing, 0),
                        text(" loans have no amount and share what is missing: leave only one of them blank.")));
        s.textLine(
                "funds_cautions",
                "What is wrong with sources",
                joined(exceed, when(exceed.isFilled(), text(" "), NOTHING), blank, unused));
    }

    private Formula also(String who, Formula amount, Formula share) {
        return when(amount.isPositive(), joined(text(", " + who + " "), money.whole(amount), share(share)), NOTHING);
    }

    private Formula share(Formula share) {
        return joined(text(" ("), shown(share, 0), text(" %)"));
    }

    private static Formula percent(Formula share) {
        return shown(share.in(PERCENT), 0);
    }
}
