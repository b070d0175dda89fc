package org.benchmetre.farm.lending;

import static org.benchmetre.budget.Formulas.none;
import static org.benchmetre.budget.Formulas.when;

import org.benchmetre.budget.BudgetBuilder;
import org.benchmetre.budget.Formula;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.ScheduleBuilder;
import org.benchmetre.budget.unit.Unit;
import org.benchmetre.farm.finance.CashFlow;
import org.benchmetre.farm.finance.CashStream;
import org.benchmetre.farm.finance.Fisher;
import org.benchmetre.farm.finance.Returns;
import org.benchmetre.farm.input.FarmEntries;
import org.benchmetre.farm.input.Sheets;

/**
 * What the plan is worth to its owner, after loans and tax, in money of each year: the owner's money goes in at the start; each year's cash
 * before the owner's draw comes out; the last one takes what a sale brings, what buyers owe and the cash that is left from the start, less
 * what is still owed. Discounted at the owner's own rate, beyond inflation as Fisher says.
 */
final class AfterFinance {

    private static final Unit NOMINAL = Unit.MONEY_NOMINAL;

    /** Returns to the owner. */
    final Returns returns;

    AfterFinance(
            BudgetBuilder b,
            FarmEntries entries,
            YearOperations y,
            Funding funds,
            DebtService debt,
            CashPosition cash) {
        CashFlow flow = y.flow;
        ScheduleBuilder answers =
                b.schedule(Sheets.LENDING, "What the plan is worth to its owner, after loans and tax");
        ScheduleBuilder s = b.schedule(Sheets.LENDING, "Cash to the owner by year");
        Line own = entries.add(answers.entry("owner_rate", "Owner's rate, real", Unit.parse("real/a"))
                .from(-0.2, 1));
        Line rate = answers.line(
                "owner_rate_nominal",
                "Owner's rate with inflation",
                Unit.parse("nominal/a"),
                Fisher.nominal(own, flow.growth.inflation),
                Fisher.SOURCE);
        Formula sale = flow.again.residual.minus(flow.again.takingOut).times(flow.growth.money);
        Line end = s.line(
                "owner_at_the_end",
                "Sale, buyers' debts and cash of the start, less loans",
                NOMINAL,
                when(
                        flow.plan.isLast.isPositive(),
                        sale.plus(y.receivable)
                                .plus(funds.workingCapital)
                                .minus(debt.debt)
                                .minus(debt.accrued),
                        none(NOMINAL)));
        Line net = s.line(
                "owner_cash",
                "Cash to the owner",
                NOMINAL,
                when(
                        flow.plan.number.isPositive(),
                        cash.net.plus(cash.draw).plus(end),
                        none(NOMINAL).minus(funds.owner)));
        returns = new Returns(
                b,
                answers,
                s,
                flow.rates,
                new CashStream("owner_", "to the owner", net, rate, flow.plan.horizon, flow.plan.number));
    }
}
