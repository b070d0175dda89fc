package org.benchmetre.farm.lending;

import static org.benchmetre.budget.Formulas.and;
import static org.benchmetre.budget.Formulas.none;
import static org.benchmetre.budget.Formulas.number;
import static org.benchmetre.budget.Formulas.previous;
import static org.benchmetre.budget.Formulas.sumWhere;
import static org.benchmetre.budget.Formulas.text;
import static org.benchmetre.budget.Formulas.when;
import static org.benchmetre.farm.input.TradeUnits.ONE;

import java.util.function.IntFunction;
import java.util.stream.IntStream;
import org.benchmetre.budget.Axis;
import org.benchmetre.budget.BudgetBuilder;
import org.benchmetre.budget.Element;
import org.benchmetre.budget.Formula;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.Rows;
import org.benchmetre.budget.ScheduleBuilder;
import org.benchmetre.budget.unit.Unit;
import org.benchmetre.farm.finance.CashFlow;
import org.benchmetre.farm.finance.PlanMonths;
import org.benchmetre.farm.input.Months;
import org.benchmetre.farm.input.Sheets;
import org.benchmetre.farm.loans.OwnFlows;

/** What the farm itself brings and takes in each year, in money of that year, before loans, draw and tax. */
final class YearOperations {

    private static final Unit NOMINAL = Unit.MONEY_NOMINAL;
    private static final Formula A_YEAR = number(1, Unit.parse("a"));

    /** The years. */
    final Axis axis;
    /** Fruit sold. */
    final Line sales;
    /** What buyers owe at the end of the year. */
    final Line receivable;
    /** What buyers paid for fruit of the year before, less what they owe at the end. */
    final Formula paidLater;
    /** Costs of selling. */
    final Line selling;
    /** Hired labour. */
    final Line labour;
    /** Heat and electricity. */
    final Line energy;
    /** Water, inputs, overhead, repairs, insurance, property tax. */
    final Line running;
    /** Parts and house bought again. */
    final Line parts;
    /** Plants bought again. */
    final Line plants;
    /** Of parts, what is used up within a year. */
    final Line usedUp;
    /** Cash of one's own. */
    final Line own;
    /** Fruit sold less selling, hired labour and energy. */
    final Line earned;
    /** What stands behind. */
    final CashFlow flow;

    YearOperations(BudgetBuilder b, CashFlow flow, MonthOperations m, SalesTerms terms, OwnFlows flows) {
        this.flow = flow;
        axis = flow.plan.axis;
        ScheduleBuilder s = b.schedule(Sheets.LENDING, "What the farm brings and takes by year, in money of the year");
        sales = nominal(s, "year_sales", "Fruit sold", flow.receipts);
        selling = nominal(s, "year_selling", "Selling", flow.selling);
        labour = nominal(s, "year_labour", "Hired labour", flow.labour);
        energy = nominal(s, "year_energy", "Heat and electricity", flow.energy);
        running =
                nominal(s, "year_running", "Inputs, water, overhead, repairs, insurance", flow.running.plus(flow.kept));
        parts = nominal(s, "year_parts", "Parts and house bought again", flow.again.parts);
        plants = nominal(s, "year_plants", "Plants bought again", flow.again.plants);
        usedUp = nominal(s, "year_used_up", "Of parts, used up within a year", flow.again.usedUp);
        earned = nominal(
                s,
                "year_earned",
                "Fruit sold less selling, labour and energy",
                flow.changes
                        .receipts(flow.planned.receipts())
                        .minus(flow.changes.selling(flow.planned.selling()))
                        .minus(flow.changes.labour(flow.planned.labour()))
                        .minus(flow.changes.energy(flow.planned.energy())));
        own = s.line(
                "year_own",
                "Cash of one's own",
                NOMINAL,
                rows(year -> ownOf(m, flows, year)).times(flow.plan.inPlan));
        Line open = b.schedule(Sheets.LENDING, "What buyers owe")
                .line(
                        "receivable_share",
                        "Share of a year's fruit that is not paid for at its end",
                        ONE,
                        when(
                                flow.full.harvest().receipts.isPositive(),
                                open(terms, back -> new Element(flow.months.inFull, m.axis, m.axis.size() - 1 - back))
                                        .over(flow.full.harvest().receipts.times(A_YEAR)),
                                none(ONE)),
                        "fruit of the last months that buyers pay for later: plain sum");
        Line planned = s.line(
                "year_receivable_planned",
                "Owed by buyers at the end before changes",
                NOMINAL,
                rows(year -> receivableAt(m, terms, open, year)));
        receivable = s.line("year_receivable", "Owed by buyers at the end", NOMINAL, flow.changes.receipts(planned));
        paidLater = flow.changes.receipts(previous(planned, none(NOMINAL)).minus(planned));
    }

    private Line nominal(ScheduleBuilder s, String id, String label, Formula real) {
        return s.line(id, label, NOMINAL, real.times(flow.growth.money));
    }

    Formula rows(IntFunction<Formula> each) {
        return new Rows(axis, IntStream.range(0, axis.size()).mapToObj(each).toList());
    }

    private static Formula ownOf(MonthOperations m, OwnFlows flows, int year) {
        if (year == 0) {
            return none(NOMINAL);
        }
        return year * Months.IN_A_YEAR <= PlanMonths.COUNT
                ? m.inYear(m.own, year)
                : sumWhere(flows.amount, m.ownTag, text(OwnFlows.YEAR + year), flows.axis);
    }

    /** Of fruit sold in some months up to the last one, each so many months back, what is paid for later. */
    private static Formula open(SalesTerms terms, IntFunction<Formula> sold) {
        Formula all = null;
        for (int back = 0; back < terms.longest(); back++) {
            Formula later = null;
            for (int after = back + 1; after <= terms.longest(); after++) {
                later = later == null ? terms.share(after) : later.plus(terms.share(after));
            }
            Formula part = sold.apply(back).times(later);
            all = all == null ? part : all.plus(part);
        }
        return all;
    }

    /** By its months in the first two years, in proportion to fruit in later ones. */
    private Formula receivableAt(MonthOperations m, SalesTerms terms, Line open, int year) {
        if (year == 0) {
            return none(NOMINAL);
        }
        int last = year * Months.IN_A_YEAR;
        return last > PlanMonths.COUNT
                ? new Element(flow.planned.receipts(), axis, year)
                        .times(new Element(flow.growth.money, axis, year))
                        .times(open)
                : open(terms, back -> m.plannedSales(last - back));
    }

    /** An amount in the years of the plan, nothing at the start. */
    Formula afterStart(Formula money) {
        return when(and(flow.plan.number.isPositive(), flow.plan.inPlan.isPositive()), money, none(NOMINAL));
    }
}
