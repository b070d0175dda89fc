package org.benchmetre.farm.lending;

import static org.benchmetre.budget.Formulas.and;
import static org.benchmetre.budget.Formulas.greater;
import static org.benchmetre.budget.Formulas.none;
import static org.benchmetre.budget.Formulas.not;
import static org.benchmetre.budget.Formulas.number;
import static org.benchmetre.budget.Formulas.one;
import static org.benchmetre.budget.Formulas.sum;
import static org.benchmetre.budget.Formulas.sumProduct;
import static org.benchmetre.budget.Formulas.when;
import static org.benchmetre.farm.input.TradeUnits.ONE;

import org.benchmetre.budget.BudgetBuilder;
import org.benchmetre.budget.Formula;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.ScheduleBuilder;
import org.benchmetre.budget.unit.Unit;
import org.benchmetre.farm.input.Months;
import org.benchmetre.farm.input.Sheets;
import org.benchmetre.farm.input.Tables;
import org.benchmetre.farm.loans.Loans;

/**
 * The source that balances: the loan whose amount is left blank, or the owner's money where all loans have one. A loan that balances brings
 * what is missing and what it costs itself, its fee and its interest while the house is built, solved for once, so that nothing goes in
 * circles.
 */
final class Balancing {

    private static final Unit MONEY = Unit.MONEY_NOMINAL;
    private static final double HALF = 2;
    private static final String BUILDING =
            "drawn evenly while building, so that half of it bears interest: common practice, no source";

    /** What each loan brings, money of the start. */
    final Line amount;
    /** 1 for the loan that balances. */
    final Line isBalancing;
    /** How many do: 0 where the owner's money does. */
    final Line count;
    /** Fees of all loans. */
    final Line fees;
    /** Interest while building. */
    final Line building;

    Balancing(BudgetBuilder b, Loans loans, Line monthsOfBuilding, Formula usesBefore, Formula otherSources) {
        ScheduleBuilder s = b.shared(Sheets.LOANS, Tables.LOANS_COUNTED);
        ScheduleBuilder single = b.schedule(Sheets.LENDING, "The source that balances");
        Formula years = monthsOfBuilding.counting(ONE).over(number(HALF * Months.IN_A_YEAR, ONE));
        Line ofInterest = s.line(
                "loan_building_share",
                "Interest while building, for one of loan",
                ONE,
                loans.rate.counting(ONE).times(years),
                BUILDING);
        Line cost = s.line(
                "loan_cost_share", "Fee and interest while building, for one of loan", ONE, loans.fee.plus(ofInterest));
        isBalancing = s.line(
                "loan_balances",
                "Balances, 1 or 0",
                ONE,
                when(and(loans.key.isFilled(), not(loans.amount.isPositive())), one(), none(ONE)));
        count = single.line("balancing_loans", "Loans without an amount", ONE, sum(isBalancing, loans.axis));
        Line typed = single.line(
                "loans_typed",
                "What loans with an amount bring, less what they cost",
                MONEY,
                sum(loans.amount, loans.axis).minus(sumProduct(loans.amount, cost, loans.axis)));
        Line missing = single.line(
                "balancing_missing",
                "What other sources leave open",
                MONEY,
                usesBefore.minus(otherSources).minus(typed));
        Formula kept = one().minus(sumProduct(cost, isBalancing, loans.axis).over(greater(count, one())));
        Line brings = single.line(
                "balancing_amount",
                "What the loan without an amount brings",
                MONEY,
                when(count.isPositive(), greater(missing.over(kept), none(MONEY)), none(MONEY)),
                "what is missing over 1 less its own fee and interest while building: plain arithmetic");
        amount = s.line(
                "loan_amount_counted",
                "Amount counted",
                MONEY,
                when(isBalancing.isPositive(), brings.over(greater(count, one())), loans.amount));
        fees = single.line("loan_fees", "Fees of loans", MONEY, sumProduct(amount, loans.fee, loans.axis));
        building = single.line(
                "building_interest", "Interest while building", MONEY, sumProduct(amount, ofInterest, loans.axis));
    }
}
