package org.benchmetre.farm.lending;

import org.benchmetre.budget.BudgetBuilder;
import org.benchmetre.budget.Element;
import org.benchmetre.budget.Formula;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.ScheduleBuilder;
import org.benchmetre.budget.unit.Unit;
import org.benchmetre.farm.finance.CashFlow;
import org.benchmetre.farm.input.Sheets;
import org.benchmetre.farm.loans.LoanSchedule;

/**
 * What loans take in each month and year of the plan. Where rates change, what is owed bears more or less interest while principal is paid
 * as planned.
 */
final class DebtService {

    private static final Unit NOMINAL = Unit.MONEY_NOMINAL;
    private static final String SHOCK =
            "with rates changed, interest on what is owed changes and principal is paid as planned: common practice, no source";

    /** What changed rates add to the interest of each month. */
    final Formula addedInMonth;
    /** Interest paid by month as planned. */
    final Formula plannedInMonth;
    /** What changed rates add to the interest of each year. */
    final Formula added;
    /** Interest paid by year as planned. */
    final Formula planned;
    /** Principal and interest of each year as planned. */
    final Line duePlanned;
    /** Interest paid by month. */
    final Line interestInMonth;
    /** Principal paid by month. */
    final Line principalInMonth;
    /** Interest paid by year. */
    final Line interest;
    /** Principal paid by year. */
    final Line principal;
    /** What is owed at the end of each year of the plan. */
    final Line debt;
    /** Of that, what is due within the next year. */
    final Line current;
    /** Interest that has run up since the last payment. */
    final Line accrued;

    DebtService(BudgetBuilder b, LoanSchedule loans, MonthOperations m, YearOperations y) {
        CashFlow flow = y.flow;
        ScheduleBuilder byMonth = b.schedule(Sheets.LENDING, "Loans by month");
        ScheduleBuilder byYear = b.schedule(Sheets.LENDING, "Loans by year of the plan");
        Line change = flow.shocks.interest;
        Formula inPlan = m.ofYears(flow, flow.plan.inPlan);
        plannedInMonth = loans.months.interest.times(inPlan);
        addedInMonth = more(loans.months.owed, change).times(inPlan);
        planned = loans.years.interest.times(flow.plan.inPlan);
        added = more(loans.years.owed, change).times(flow.plan.inPlan);
        interestInMonth =
                byMonth.line("debt_interest_in_month", "Interest", NOMINAL, plannedInMonth.plus(addedInMonth), SHOCK);
        principalInMonth =
                byMonth.line("debt_principal_in_month", "Principal", NOMINAL, loans.months.principal.times(inPlan));
        interest = byYear.line("debt_interest", "Interest", NOMINAL, planned.plus(added), SHOCK);
        principal = byYear.line("debt_principal", "Principal", NOMINAL, loans.years.principal.times(flow.plan.inPlan));
        duePlanned = byYear.line("debt_due_planned", "Due with rates as planned", NOMINAL, principal.plus(planned));
        debt = byYear.line("debt_owed", "Owed at the end", NOMINAL, loans.years.debt.times(flow.plan.inPlan));
        current = byYear.line(
                "debt_current",
                "Due within the next year",
                NOMINAL,
                y.rows(year -> nextYear(loans.years.debt, y, year)).times(flow.plan.inPlan),
                "what is owed now less what is owed a year later; all of it in the last year that is kept");
        accrued = byYear.line("debt_accrued", "Interest run up", NOMINAL, loans.years.accrued.times(flow.plan.inPlan));
    }

    private static Formula more(Line owed, Line change) {
        return owed.times(change).counting(NOMINAL);
    }

    private static Formula nextYear(Line debt, YearOperations y, int year) {
        Formula now = new Element(debt, y.axis, year);
        return year + 1 < y.axis.size() ? now.minus(new Element(debt, y.axis, year + 1)) : now;
    }
}
