package org.benchmetre.farm.loans;

import static org.benchmetre.budget.Formulas.lookup;
import static org.benchmetre.budget.Formulas.one;
import static org.benchmetre.budget.Formulas.previous;
import static org.benchmetre.budget.Formulas.shown;
import static org.benchmetre.budget.Formulas.sum;
import static org.benchmetre.budget.Formulas.sumWhere;
import static org.benchmetre.budget.Formulas.when;
import static org.benchmetre.farm.input.TradeUnits.ONE;

import java.util.List;
import org.benchmetre.budget.BudgetBuilder;
import org.benchmetre.budget.Formula;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.ScheduleBuilder;
import org.benchmetre.budget.unit.Unit;
import org.benchmetre.farm.input.Months;
import org.benchmetre.farm.input.Sheets;

/** What falls due on loans in each year of the plan, and what is owed at its end. Year 0 is the start; year 1 ends with month 12. */
public final class LoanYears {

    private static final Unit MONEY = Unit.MONEY_NOMINAL;

    /** Interest, money_nominal, by loan and year. */
    public final Line interestByLoan;
    /** What is owed at the end, money_nominal, by loan and year. */
    public final Line debtByLoan;
    /** Interest since the last payment, not due yet at the end, money_nominal, by loan and year. */
    public final Line accruedByLoan;
    /** Interest of all loans, money_nominal, by year. */
    public final Line interest;
    /** Principal of all loans, money_nominal, by year. */
    public final Line principal;
    /** What is owed at the end on all loans, money_nominal, by year. */
    public final Line debt;
    /** Interest not due yet at the end on all loans, money_nominal, by year. */
    public final Line accrued;
    /** What was owed times how long, of the interest due, money_nominal a, by year. */
    public final Line owed;

    /**
     * How loans are paid back.
     *
     * @param terms what follows from the terms of each
     * @param rows each payment of each
     */
    record Paid(LoanTerms terms, LoanRows rows) {}

    LoanYears(BudgetBuilder b, Loans loans, Line amount, Paid paid, Line yearNumber) {
        LoanTerms terms = paid.terms();
        LoanRows rows = paid.rows();
        LoanTable s = new LoanTable(
                b,
                b.schedule(Sheets.LOANS, "Loans by year"),
                List.of(loans.axis, yearNumber.axes().get(0)));
        interestByLoan = s.money(
                "loan_interest_of_year",
                "Interest",
                sumWhere(rows.interest, rows.dueYear, LoanRows.yearName(yearNumber), loans.payments),
                "");
        Line made = s.line(
                "loan_payments_made",
                "Payments made by the end",
                ONE,
                terms.madeBy(yearNumber.times(LoanTerms.MONTHS)),
                "counted from the first payment on; " + Months.COUNTING);
        debtByLoan = s.money(
                "loan_debt_at_year_end",
                "Owed at the end",
                when(made.isPositive(), lookup(rows.balance, rows.key, shown(made, 0)), amount),
                "");
        Formula last = terms.firstDue.plus(LoanTerms.MONTHS.over(terms.aYear).times(made.minus(one())));
        Formula since = when(made.isPositive(), yearNumber.minus(last.over(LoanTerms.MONTHS)), yearNumber);
        accruedByLoan = s.money(
                "loan_accrued_interest",
                "Interest not due yet",
                debtByLoan.times(loans.rate.counting(Unit.parse("1/a"))).times(since),
                "simple interest since the last payment on what is owed; " + Months.COUNTING);
        ScheduleBuilder all = b.schedule(Sheets.LOANS, "All loans by year");
        interest = all.line("interest_of_year", "Interest", MONEY, sum(interestByLoan, loans.axis));
        debt = all.line("debt_at_year_end", "Owed at the end", MONEY, sum(debtByLoan, loans.axis));
        principal = all.line(
                "principal_of_year",
                "Principal",
                MONEY,
                previous(debt, sum(amount, loans.axis)).minus(debt));
        accrued = all.line("accrued_interest", "Interest not due yet", MONEY, sum(accruedByLoan, loans.axis));
        owed = LoanSchedule.owed(all, "owed_in_year", interestByLoan, loans, terms);
    }
}
