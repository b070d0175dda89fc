package org.benchmetre.farm.lending;

import static org.benchmetre.budget.Formulas.sumWhere;
import static org.benchmetre.budget.Formulas.text;

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
import org.benchmetre.farm.finance.MonthsBase;
import org.benchmetre.farm.finance.PlanMonths;
import org.benchmetre.farm.input.Months;
import org.benchmetre.farm.input.Sheets;
import org.benchmetre.farm.loans.OwnFlows;

/** What the farm itself brings and takes in each of the first 24 months, in money of its year, before loans, draw and tax. */
final class MonthOperations {

    private static final Unit NOMINAL = Unit.MONEY_NOMINAL;
    private static final Unit INDEX = Unit.MONEY_NOMINAL.over(Unit.MONEY);

    /** The months. */
    final Axis axis;
    /** What buyers pay. */
    final Line collected;
    /** Costs of selling. */
    final Line selling;
    /** Hired labour. */
    final Line labour;
    /** Heat and electricity. */
    final Line energy;
    /** Water, inputs, overhead, repairs, insurance, property tax. */
    final Line running;
    /** Cash of one's own. */
    final Line own;
    /** What buyers pay less selling, labour and energy. */
    final Formula earned;
    /** What is left of all that before loans. */
    final Line left;
    /** A tag for each own flow: its month, or its year. */
    final Line ownTag;
    /** The months without money. */
    final PlanMonths months;

    private final MonthsBase base;
    private final Line prices;

    MonthOperations(BudgetBuilder b, CashFlow flow, SalesTerms terms, OwnFlows flows) {
        base = flow.months;
        months = base.months;
        axis = months.axis;
        ScheduleBuilder s = b.schedule(Sheets.LENDING, "What the farm brings and takes by month, in money of the year");
        Formula level = ofYears(flow, flow.growth.money).times(ofYears(flow, flow.plan.inPlan));
        prices = s.line(
                "month_price_index",
                "Fruit prices against today's",
                INDEX,
                level.times(ofYears(flow, flow.growth.prices)));
        Line costs = s.line(
                "month_cost_index", "Costs against today's", INDEX, level.times(ofYears(flow, flow.growth.costs)));
        Line planned = s.line(
                "month_collected_planned",
                "Paid by buyers before changes",
                NOMINAL,
                rows(month -> collected(terms, month)));
        Formula paid = flow.changes.receipts(planned);
        collected = s.line("month_collected", "Paid by buyers", NOMINAL, paid);
        Formula sold = flow.changes.selling(base.selling);
        Formula worked = flow.changes.labour(base.labour);
        Formula heated = flow.changes.energy(base.energy);
        selling = s.line("month_selling", "Selling", NOMINAL, sold.times(costs));
        labour = s.line("month_labour", "Hired labour", NOMINAL, worked.times(costs));
        energy = s.line("month_energy", "Heat and electricity", NOMINAL, heated.times(costs));
        running = s.line(
                "month_running",
                "Inputs, water, overhead, repairs, insurance",
                NOMINAL,
                base.running.plus(flow.keptInMonth).times(costs));
        ownTag = b.schedule(Sheets.LOANS, "When flows of one's own fall")
                .textLine("flow_tag", "Month or year of the flow", flows.tag());
        own = s.line(
                "month_own",
                "Cash of one's own",
                NOMINAL,
                rows(month -> ownOf(flows, month)).times(ofYears(flow, flow.plan.inPlan)));
        earned = paid.minus(sold.plus(worked).plus(heated).times(costs));
        left = s.line(
                "month_before_loans",
                "Left before loans",
                NOMINAL,
                earned.plus(own).minus(running));
    }

    /** What a line of the years has in the year of each month. */
    Formula ofYears(CashFlow flow, Line byYear) {
        return rows(month -> new Element(byYear, flow.plan.axis, PlanMonths.yearOf(month)));
    }

    Formula rows(IntFunction<Formula> each) {
        return new Rows(
                axis, IntStream.rangeClosed(1, axis.size()).mapToObj(each).toList());
    }

    /** Whether a month is the last of its year. */
    static boolean endsYear(int month) {
        return month % Months.IN_A_YEAR == 0;
    }

    private Formula collected(SalesTerms terms, int month) {
        Formula all = terms.share(0).times(plannedSales(month));
        for (int back = 1; back <= terms.longest() && back < month; back++) {
            all = all.plus(terms.share(back).times(plannedSales(month - back)));
        }
        return all;
    }

    /** Fruit sold in a month before changes, in money of the year. */
    Formula plannedSales(int month) {
        return new Element(base.sold, axis, month - 1).times(new Element(prices, axis, month - 1));
    }

    private Formula ownOf(OwnFlows flows, int month) {
        Formula inMonth = sumWhere(flows.amount, ownTag, text(OwnFlows.MONTH + month), flows.axis);
        Formula inYear = sumWhere(flows.amount, ownTag, text(OwnFlows.YEAR + PlanMonths.yearOf(month)), flows.axis);
        return endsYear(month) ? inMonth.plus(inYear) : inMonth;
    }

    /** What a line of the months has in a year of the plan. */
    Formula inYear(Line byMonth, int year) {
        return sumWhere(byMonth, months.yearTag, text(Integer.toString(year)), axis);
    }
}
