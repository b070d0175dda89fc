package org.benchmetre.farm.lending;

import static org.benchmetre.budget.Formulas.greater;
import static org.benchmetre.budget.Formulas.none;

import org.benchmetre.budget.BudgetBuilder;
import org.benchmetre.budget.Formula;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.ScheduleBuilder;
import org.benchmetre.budget.unit.Unit;
import org.benchmetre.farm.input.Sheets;

/**
 * What is owned and owed at the end of each year, the start among them. Cash below zero counts as a line of credit that is owed. Equity is
 * the rest; that it moves by income and draw alone is tested and shown.
 */
final class BalanceSheet {

    private static final Unit NOMINAL = Unit.MONEY_NOMINAL;

    /** Cash, buyers' debts, crop. */
    final Line currentAssets;
    /** All that is owned. */
    final Line assets;
    /** Credit, run-up interest, what is due within a year. */
    final Line currentDebts;
    /** All that is owed. */
    final Line debts;
    /** The rest. */
    final Line equity;
    /** Cash that is there. */
    final Line cash;
    /** Cash that is short. */
    final Line credit;
    /** What is owed beyond the next year. */
    final Line later;

    BalanceSheet(BudgetBuilder b, YearOperations y, BookValue book, DebtService debt, CashPosition position) {
        ScheduleBuilder s = b.schedule(Sheets.LENDING, "Balance sheet at the end of each year");
        Formula inPlan = y.flow.plan.inPlan;
        cash = s.line(
                "balance_cash",
                "Cash",
                NOMINAL,
                greater(position.cash, none(NOMINAL)).times(inPlan));
        credit = s.line(
                "balance_credit",
                "Cash short: line of credit",
                NOMINAL,
                greater(none(NOMINAL).minus(position.cash), none(NOMINAL)).times(inPlan));
        currentAssets = s.line(
                "balance_current_assets",
                "Current assets",
                NOMINAL,
                cash.plus(y.receivable).plus(book.inventory));
        assets = s.line("balance_assets", "Assets", NOMINAL, currentAssets.plus(book.book));
        currentDebts = s.line(
                "balance_current_debts",
                "Current debts",
                NOMINAL,
                credit.plus(debt.accrued).plus(debt.current));
        later = s.line("balance_later", "Loans, due later", NOMINAL, debt.debt.minus(debt.current));
        debts = s.line("balance_debts", "Debts", NOMINAL, currentDebts.plus(later));
        equity = s.line("balance_equity", "Equity", NOMINAL, assets.minus(debts));
    }
}
