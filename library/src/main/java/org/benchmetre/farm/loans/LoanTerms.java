package org.benchmetre.farm.loans;

import static org.benchmetre.budget.Formulas.and;
import static org.benchmetre.budget.Formulas.greater;
import static org.benchmetre.budget.Formulas.lesser;
import static org.benchmetre.budget.Formulas.none;
import static org.benchmetre.budget.Formulas.number;
import static org.benchmetre.budget.Formulas.one;
import static org.benchmetre.budget.Formulas.recovery;
import static org.benchmetre.budget.Formulas.when;
import static org.benchmetre.farm.input.TradeUnits.ONE;

import org.benchmetre.budget.BudgetBuilder;
import org.benchmetre.budget.Formula;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.ScheduleBuilder;
import org.benchmetre.budget.unit.Unit;
import org.benchmetre.farm.input.FarmTable;
import org.benchmetre.farm.input.Months;
import org.benchmetre.farm.input.Sheets;

/**
 * What follows from the terms of each loan alone: how many payments it has, when the first is due, and how large it is.
 *
 * <pre>
 * P = (A - B v) i / (1 - v),  v = (1 + i)^-n     equal payments, with i = 0 as (A - B) / n
 * p = (A - B) / n                                equal principal
 * A  amount     B  balloon     i  rate of a period     n  payments that pay back
 * </pre>
 *
 * Plain annuity arithmetic; American Agricultural Economics Association, Commodity Costs and Returns Estimation Handbook, 2000.
 */
public final class LoanTerms {

    /** Where payments come from, as a note of a line. */
    static final String ANNUITY =
            "plain annuity arithmetic; AAEA, Commodity Costs and Returns Estimation Handbook, 2000";

    /** Months of a year, for months in years and back. */
    static final Formula MONTHS = number(Months.IN_A_YEAR, Unit.parse("mo/a"));

    private static final Unit MONEY = Unit.MONEY_NOMINAL;
    private static final Unit YEAR = Unit.parse("a");
    private static final Unit MONTH = Unit.parse("mo");
    private static final Unit RATE = Unit.parse("nominal/a");
    private static final Unit A_YEAR = Unit.parse("1/a");

    /** Payments a year, 1/a. */
    public final Line aYear;
    /** Months from the start to the first payment, mo. */
    public final Line firstDue;
    /** Payments, 0 where there is no amount. */
    public final Line count;
    /** The first of them, which pay interest alone. */
    public final Line onlyInterest;
    /** Interest of the first payment, money_nominal. */
    public final Line firstInterest;
    /** Principal of the first payment where it pays any, money_nominal. */
    public final Line firstPrincipal;
    /** Each equal payment, or each equal principal, money_nominal. */
    public final Line level;
    /** One over the rate, a; 0 without one. */
    public final Line inverse;

    LoanTerms(BudgetBuilder b, Loans loans, Line amount, CentRounding cents) {
        ScheduleBuilder s = b.schedule(Sheets.LOANS, "Loans: payments and the first of them");
        aYear = s.line(
                "loan_payments_each_year",
                "Payments a year",
                A_YEAR,
                when(
                        loans.paymentsAYear.is("1"),
                        number(1, A_YEAR),
                        when(loans.paymentsAYear.is("4"), number(4, A_YEAR), number(FarmTable.USUAL_PAYMENTS, A_YEAR))),
                "as entered; monthly where nothing is: common practice, no source");
        firstDue = s.line(
                "loan_first_due",
                "First payment due, month",
                MONTH,
                when(loans.firstMonth.isPositive(), loans.firstMonth, MONTHS.over(aYear)),
                "as entered, else one period after the start; " + Months.COUNTING);
        Formula asked = loans.term.times(aYear);
        count = s.line(
                "loan_payment_count",
                "Payments",
                ONE,
                when(amount.isPositive(), lesser(asked.wholeDown(), number(loans.payments.size(), ONE)), none(ONE)),
                "term times payments a year, no more than the schedule has rows: plain counting");
        onlyInterest = s.line(
                "loan_interest_only_count",
                "Payments of interest alone",
                ONE,
                when(
                        count.isPositive(),
                        lesser(loans.interestOnly.times(aYear).over(MONTHS).wholeDown(), count.minus(one())),
                        none(ONE)),
                "those due within the months of interest alone; " + Months.COUNTING);
        Line balloon = s.line(
                "loan_balloon_paid",
                "Balloon, at most the amount",
                MONEY,
                when(loans.balloon.exceeds(amount), amount, loans.balloon));
        Formula rate = loans.rate.counting(A_YEAR);
        Formula back = count.minus(onlyInterest);
        Formula level = recovery(loans.rate.over(aYear).counting(RATE), back.counting(YEAR), amount, balloon)
                .counting(MONEY);
        Formula even = amount.minus(balloon).over(back);
        Line exact = s.line(
                "loan_level_exact",
                "Equal payment, or equal principal",
                MONEY,
                when(count.isPositive(), when(loans.kind.is(Loans.EQUAL_PRINCIPAL), even, level), none(MONEY)),
                ANNUITY);
        this.level = s.line("loan_level", "The same, as rounded", MONEY, cents.of(exact), CentRounding.SOURCE);
        firstInterest = s.line(
                "loan_first_interest",
                "Interest of the first payment",
                MONEY,
                when(count.isPositive(), cents.of(amount.times(rate).times(firstDue.over(MONTHS))), none(MONEY)),
                "simple interest from the start to the first payment; " + CentRounding.SOURCE);
        firstPrincipal = s.line(
                "loan_first_principal",
                "Principal of the first payment, unless it is interest alone",
                MONEY,
                when(
                        and(count.isPositive(), loans.kind.is(Loans.EQUAL_PRINCIPAL)),
                        this.level,
                        this.level.minus(cents.of(regular(amount, rate)))),
                "as if it were due one period after the start; interest of a longer or shorter first period is beside it: a "
                        + "choice of this project, no source");
        inverse = s.line(
                "loan_rate_inverse",
                "One over the rate",
                YEAR,
                when(loans.rate.isPositive(), one().over(rate), none(YEAR)));
        s.warning(
                "loan_room",
                "Room for payments",
                and(amount.isPositive(), asked.exceeds(count)),
                "The term is no whole number of payments, or has more of them than the schedule has rows, so that the last row pays all "
                        + "that is left: write the term in " + FarmTable.LOANS.file() + " and make the workbook anew.");
    }

    /** Interest of one period between payments. */
    Formula regular(Formula owed, Formula rate) {
        return owed.times(rate).over(aYear);
    }

    /** Payments that are due at the end of a month of the plan or before. */
    Formula madeBy(Formula month) {
        Formula due =
                month.minus(firstDue).times(aYear).over(MONTHS).wholeDown().plus(one());
        return lesser(greater(due, none(ONE)), count);
    }
}
