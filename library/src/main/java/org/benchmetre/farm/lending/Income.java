package org.benchmetre.farm.lending;

import static org.benchmetre.budget.Formulas.none;
import static org.benchmetre.budget.Formulas.previous;

import org.benchmetre.budget.BudgetBuilder;
import org.benchmetre.budget.Formula;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.ScheduleBuilder;
import org.benchmetre.budget.unit.Unit;
import org.benchmetre.farm.input.Sheets;

/**
 * Accrual income of each year: fruit sold whether it is paid for or not, expense when it is used and not when it is bought, depreciation of
 * the books, interest as it runs up. Farm Financial Standards Council, Financial Guidelines for Agricultural Producers (form of the
 * statement). Cash of one's own is no income of the farm and pays no debt of it.
 */
final class Income {

    private static final Unit NOMINAL = Unit.MONEY_NOMINAL;

    /** Operating expense without interest and depreciation. */
    final Line expense;
    /** Interest of the year as it runs up. */
    final Line interest;
    /** Income before depreciation, interest and tax. */
    final Formula beforeDepreciation;
    /** Income that tax is on, before depreciation: interest taken off. */
    final Formula taxedBefore;
    /** Income before tax. */
    final Line beforeTax;

    Income(BudgetBuilder b, YearOperations y, BookValue book, DebtService debt) {
        ScheduleBuilder s = b.schedule(Sheets.LENDING, "Income by year");
        Formula used =
                y.plants.plus(y.usedUp).plus(before(book.inventory, y)).minus(book.inventory.times(y.flow.plan.inPlan));
        Line consumed = s.line("income_used", "Plants and supplies used", NOMINAL, y.afterStart(used));
        expense = s.line(
                "income_expense",
                "Operating expense",
                NOMINAL,
                y.selling.plus(y.labour).plus(y.energy).plus(y.running).plus(consumed));
        Line planned = s.line(
                "income_interest_planned",
                "Interest with rates as planned",
                NOMINAL,
                y.afterStart(debt.planned.plus(debt.accrued).minus(before(debt.accrued, y))));
        interest = s.line("income_interest", "Interest", NOMINAL, planned.plus(debt.added));
        Line besides = s.line(
                "income_besides",
                "Inputs, overhead and what is used, as a cost",
                NOMINAL,
                none(NOMINAL).minus(y.running).minus(consumed));
        beforeDepreciation = y.earned.plus(besides);
        taxedBefore = beforeDepreciation.minus(planned).minus(debt.added);
        beforeTax = s.line(
                "income_before_tax",
                "Net farm income before tax",
                NOMINAL,
                beforeDepreciation.minus(interest).minus(book.depreciation));
    }

    private static Formula before(Line line, YearOperations y) {
        return previous(line, none(line.unit())).times(y.flow.plan.inPlan);
    }
}
