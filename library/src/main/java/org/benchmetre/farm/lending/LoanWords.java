package org.benchmetre.farm.lending;

import static org.benchmetre.budget.Formulas.greatest;
import static org.benchmetre.budget.Formulas.joined;
import static org.benchmetre.budget.Formulas.none;
import static org.benchmetre.budget.Formulas.number;
import static org.benchmetre.budget.Formulas.one;
import static org.benchmetre.budget.Formulas.shown;
import static org.benchmetre.budget.Formulas.sumProduct;
import static org.benchmetre.budget.Formulas.text;
import static org.benchmetre.budget.Formulas.when;

import org.benchmetre.budget.BudgetBuilder;
import org.benchmetre.budget.Element;
import org.benchmetre.budget.Formula;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.ScheduleBuilder;
import org.benchmetre.budget.unit.Unit;
import org.benchmetre.farm.finance.CashFlow;
import org.benchmetre.farm.input.MoneyWords;
import org.benchmetre.farm.input.Months;
import org.benchmetre.farm.input.Sheets;
import org.benchmetre.farm.input.Tables;
import org.benchmetre.farm.loans.LoanSchedule;
import org.benchmetre.farm.loans.LoanTerms;
import org.benchmetre.farm.loans.Loans;

/** What loans take and when they are paid back, in sentences, and the full payment of each. Money is shown in whole units. */
final class LoanWords {

    private static final Unit NOMINAL = Unit.MONEY_NOMINAL;
    private static final Unit PERCENT = Unit.parse("%");
    private static final Unit A_YEAR = Unit.parse("%.nominal/a");
    private static final Unit ONE = Unit.ONE;

    private static final Formula MONTHS = number(Months.IN_A_YEAR, Unit.parse("mo/a"));

    private final MoneyWords money;

    /**
     * What is told of.
     *
     * @param funds what loans bring
     * @param repayment what falls due
     * @param debt what is owed at the end of each year
     * @param cash at the end of each year
     * @param flow the years
     */
    record Told(Funding funds, Repayment repayment, Line debt, Line cash, CashFlow flow) {}

    LoanWords(BudgetBuilder b, Loans loans, LoanSchedule schedule, Told told) {
        ScheduleBuilder s = b.schedule(Sheets.LENDING, "Loans, in words");
        money = new MoneyWords(b);
        Line last = rows(b, loans, schedule.terms, told.funds().loanAmount);
        Line lastOfAll = s.line("loans_last_year", "Last payment of all", ONE, greatest(last, loans.axis));
        Line most = s.line(
                "loans_year_most",
                "Most that loans take in a year",
                NOMINAL,
                greatest(told.repayment().payments, told.flow().plan.axis));
        Formula first = new Element(told.repayment().payments, told.flow().plan.axis, 1);
        Line inYears = s.textLine(
                "loans_years_told",
                "What loans take in words",
                joined(text(" take "), money.whole(first), text(" in year 1 and at most "), money.whole(most)));
        Formula borrows = told.funds().loansTotal.isPositive();
        s.textLine(
                "loans_told",
                "What is borrowed, and when it is paid back",
                when(
                        borrows,
                        joined(
                                text("Loans of "),
                                money.whole(told.funds().loansTotal),
                                inYears,
                                text(" in a year; the last payment falls in year "),
                                shown(lastOfAll, 0),
                                text(".")),
                        text("No loan is counted: the owner and grants pay for all.")));
        Line left = s.line(
                "loans_at_end",
                "Owed at the end of the plan",
                NOMINAL,
                sumProduct(told.debt(), told.flow().plan.isLast, told.flow().plan.axis));
        CashFlow flow = told.flow();
        Line sale = s.line(
                "sale_at_end",
                "What a sale brings at the end, less taking out",
                NOMINAL,
                sumProduct(flow.again.residual, flow.growth.money, flow.plan.axis)
                        .minus(sumProduct(flow.again.takingOut, flow.growth.money, flow.plan.axis)),
                "in the last year alone");
        Line cash = s.line(
                "cash_at_end",
                "Cash at the end of the plan",
                NOMINAL,
                sumProduct(told.cash(), flow.plan.isLast, flow.plan.axis));
        s.textLine(
                "loans_end_told",
                "What is owed at the end",
                when(
                        left.exceeds(number(1, NOMINAL)),
                        joined(
                                text("At the end of the plan "),
                                money.whole(left),
                                text(" are still owed; cash stands at "),
                                money.whole(cash),
                                text(" then, and selling what is left, less taking it out, comes to "),
                                money.whole(sale),
                                text(".")),
                        text("")));
    }

    /** The year of the last payment of each loan. */
    private static Line rows(BudgetBuilder b, Loans loans, LoanTerms terms, Line amount) {
        ScheduleBuilder each = b.shared(Sheets.LOANS, Tables.LOANS_COUNTED);
        Formula interest = amount.times(loans.rate.counting(Unit.parse("1/a"))).over(terms.aYear);
        each.line(
                "loan_full_payment",
                "First payment with principal",
                NOMINAL,
                when(loans.kind.is(Loans.EQUAL_PRINCIPAL), terms.level.plus(interest), terms.level),
                "each payment where they are equal; the largest but for a balloon where principal is: plain arithmetic");
        each.line("loan_rate_told", "Rate", A_YEAR, loans.rate.in(A_YEAR));
        each.line("loan_fee_told", "Fee", PERCENT, loans.fee.in(PERCENT));
        Formula after = terms.count.minus(one());
        return each.line(
                "loan_last_year",
                "Last payment in year",
                ONE,
                when(
                        terms.count.isPositive(),
                        terms.firstDue
                                .plus(MONTHS.over(terms.aYear).times(after))
                                .over(MONTHS)
                                .wholeUp()
                                .counting(ONE),
                        none(ONE)),
                "month 12 is the last one of year 1; " + Months.COUNTING);
    }
}
