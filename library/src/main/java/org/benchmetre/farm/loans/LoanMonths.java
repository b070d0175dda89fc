package org.benchmetre.farm.loans;

import static org.benchmetre.budget.Formulas.lookup;
import static org.benchmetre.budget.Formulas.none;
import static org.benchmetre.budget.Formulas.previous;
import static org.benchmetre.budget.Formulas.shown;
import static org.benchmetre.budget.Formulas.sum;
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

/** What falls due on loans in each month of the plan. */
public final class LoanMonths {

    private static final Unit MONEY = Unit.MONEY_NOMINAL;

    /** Interest, money_nominal, by loan and month. */
    public final Line interestByLoan;
    /** Principal, money_nominal, by loan and month. */
    public final Line principalByLoan;
    /** Interest of all loans, money_nominal, by month. */
    public final Line interest;
    /** Principal of all loans, money_nominal, by month. */
    public final Line principal;
    /** What was owed times how long, of the interest due, money_nominal a, by month. */
    public final Line owed;

    LoanMonths(BudgetBuilder b, Loans loans, LoanTerms terms, LoanRows rows, Line monthNumber) {
        LoanTable s = new LoanTable(
                b,
                b.schedule(Sheets.LOANS, "Loans by month"),
                List.of(loans.axis, monthNumber.axes().get(0)));
        Line made = s.line(
                "loan_payments_by_month",
                "Payments made by the end",
                ONE,
                terms.madeBy(monthNumber.counting(Unit.parse("mo"))),
                "counted from the first payment on; " + Months.COUNTING);
        interestByLoan = due(s, "loan_interest_in_month", "Interest", rows.interest, rows.key, made);
        principalByLoan = due(s, "loan_principal_in_month", "Principal", rows.principal, rows.key, made);
        ScheduleBuilder all = b.schedule(Sheets.LOANS, "All loans by month");
        interest = all.line("interest_in_month", "Interest", MONEY, sum(interestByLoan, loans.axis));
        principal = all.line("principal_in_month", "Principal", MONEY, sum(principalByLoan, loans.axis));
        owed = LoanSchedule.owed(all, "owed_in_month", interestByLoan, loans, terms);
    }

    /** There are never two payments in a month. */
    private static Line due(LoanTable s, String id, String label, Line payments, Line keys, Line made) {
        Formula isDue = made.minus(previous(made, none(ONE))).isPositive();
        return s.money(id, label, when(isDue, lookup(payments, keys, shown(made, 0)), none(MONEY)), "");
    }
}
