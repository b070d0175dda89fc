package org.benchmetre.farm.lending;

import static org.benchmetre.budget.Formulas.least;
import static org.benchmetre.budget.Formulas.lesser;
import static org.benchmetre.budget.Formulas.lookup;
import static org.benchmetre.budget.Formulas.none;
import static org.benchmetre.budget.Formulas.number;
import static org.benchmetre.budget.Formulas.previous;
import static org.benchmetre.budget.Formulas.text;
import static org.benchmetre.budget.Formulas.when;
import static org.benchmetre.farm.input.TradeUnits.ONE;

import java.util.List;
import org.benchmetre.budget.BudgetBuilder;
import org.benchmetre.budget.Element;
import org.benchmetre.budget.Formula;
import org.benchmetre.budget.Kind;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.ScheduleBuilder;
import org.benchmetre.budget.unit.Unit;
import org.benchmetre.farm.finance.CashFlow;
import org.benchmetre.farm.finance.PlanMonths;
import org.benchmetre.farm.input.FarmEntries;
import org.benchmetre.farm.input.Months;
import org.benchmetre.farm.input.Sheets;

/**
 * Cash by month and by year, in money of the year: what the farm leaves less loans, the owner's draw and income tax, on top of the cash that
 * the start kept. No line of credit is drawn: where cash falls below zero, that is what one would have to bear.
 */
final class CashPosition {

    private static final Unit NOMINAL = Unit.MONEY_NOMINAL;
    private static final double NEAR = 1e-6;
    private static final String LAST =
            "what is bought again and income tax are paid in the last month of the year, the draw evenly: a choice of this project, no source";

    /** Marks the month with the least cash. */
    static final String MARK = "x";

    /** Number of each year. */
    final Line year;
    /** The owner's draw by year. */
    final Line draw;
    /** Bought again, by month. */
    final Line boughtInMonth;
    /** Draw by month. */
    final Line drawInMonth;
    /** Tax by month. */
    final Line taxInMonth;
    /** Cash of the month. */
    final Line netInMonth;
    /** Cash at the end of the month. */
    final Line inMonth;
    /** Cash of the year. */
    final Line net;
    /** Cash at the end of the year. */
    final Line cash;
    /** Cash when it is least, by month. */
    final Line lowest;
    /** The least of that and of the ends of all years. */
    final Line least;
    /** The month in which it is. */
    final Line lowestMonth;

    /**
     * What moves cash.
     *
     * @param month what the farm brings and takes by month
     * @param year the same by year
     * @param debt what loans take
     * @param tax income tax
     */
    record Moves(MonthOperations month, YearOperations year, DebtService debt, IncomeTax tax) {}

    CashPosition(BudgetBuilder b, FarmEntries entries, Moves moves, Line atStart) {
        MonthOperations m = moves.month();
        YearOperations y = moves.year();
        DebtService debt = moves.debt();
        CashFlow flow = y.flow;
        year = flow.plan.number;
        ScheduleBuilder e = b.schedule(Sheets.LENDING, "What the owner draws");
        ScheduleBuilder byMonth = b.schedule(Sheets.LENDING, "Cash by month");
        ScheduleBuilder byYear = b.schedule(Sheets.LENDING, "Cash by year, with loans");
        ScheduleBuilder single = b.schedule(Sheets.LENDING, "Where cash is least");
        Line asked = entries.add(
                e.entry("owner_draw", "Owner's draw", Unit.parse("money/a")).from(0, 1e9));
        draw = byYear.line(
                "year_draw",
                "Owner's draw",
                NOMINAL,
                y.afterStart(asked.times(number(1, Unit.parse("a"))).times(flow.growth.money)));
        boughtInMonth = byMonth.line(
                "month_bought",
                "Parts and plants bought again",
                NOMINAL,
                m.rows(month -> atYearEnd(month, y.parts, y).plus(atYearEnd(month, y.plants, y))),
                LAST);
        drawInMonth = byMonth.line(
                "month_draw", "Owner's draw", NOMINAL, m.ofYears(flow, draw).over(number(Months.IN_A_YEAR, ONE)), LAST);
        taxInMonth = byMonth.line(
                "month_tax", "Income tax", NOMINAL, m.rows(month -> atYearEnd(month, moves.tax().tax, y)), LAST);
        netInMonth = byMonth.line(
                "month_net",
                "Cash of the month",
                NOMINAL,
                m.left.minus(boughtInMonth)
                        .minus(debt.interestInMonth)
                        .minus(debt.principalInMonth)
                        .minus(drawInMonth)
                        .minus(taxInMonth));
        Line fixedInMonth = byMonth.line(
                "month_unmoved",
                "Cash of the month that changes to the plan do not move",
                NOMINAL,
                m.own.minus(m.running)
                        .minus(boughtInMonth)
                        .minus(debt.plannedInMonth)
                        .minus(debt.principalInMonth)
                        .minus(drawInMonth));
        Formula ofMonth = fixedInMonth.plus(m.earned).minus(debt.addedInMonth);
        inMonth = byMonth.declare("month_cash", "Cash at the end", NOMINAL, Kind.NUMBER, List.of(m.axis), "");
        Formula runs = previous(inMonth, atStart).plus(ofMonth);
        b.define(
                inMonth,
                m.rows(month ->
                        MonthOperations.endsYear(month) ? runs.minus(moves.tax().in(PlanMonths.yearOf(month))) : runs));
        Line fixed = byYear.line(
                "year_unmoved",
                "Cash of the year that changes to the plan do not move",
                NOMINAL,
                y.own.minus(y.running)
                        .minus(y.parts)
                        .minus(y.plants)
                        .minus(debt.duePlanned)
                        .minus(draw));
        Formula ofYear = y.afterStart(
                y.earned.plus(fixed).plus(y.paidLater).minus(debt.added).minus(moves.tax().due));
        byYear.line(
                "year_collected",
                "Paid by buyers",
                NOMINAL,
                y.sales.minus(y.receivable).plus(previous(y.receivable, none(NOMINAL))));
        byYear.line("year_bought", "Parts and plants bought again", NOMINAL, y.parts.plus(y.plants));
        net = byYear.line("year_net", "Cash of the year", NOMINAL, ofYear);
        cash = byYear.declare("year_cash", "Cash at the end", NOMINAL, Kind.NUMBER, List.of(y.axis), "");
        b.define(
                cash,
                when(
                        flow.plan.number.isPositive(),
                        previous(cash, none(NOMINAL)).plus(ofYear),
                        atStart));
        lowest = single.line("cash_low_point", "Least cash at the end of a month", NOMINAL, least(inMonth, m.axis));
        least = single.line(
                "cash_least",
                "Least cash at the end of a month of the first two years or of a later year",
                NOMINAL,
                lesser(lowest, least(cash, y.axis)));
        Line mark = byMonth.line(
                "month_cash_mark",
                "Least",
                ONE,
                when(inMonth.minus(lowest).exceeds(number(NEAR, NOMINAL)), text(""), text(MARK)),
                "the first of those alike within a millionth");
        byMonth.line(
                "month_cash_low",
                "Least",
                NOMINAL,
                when(mark.isFilled(), inMonth, none(NOMINAL)),
                "as a column of its own in the chart");
        lowestMonth =
                single.textLine("cash_low_month", "Month of the least cash", lookup(m.months.told, mark, text(MARK)));
    }

    private static Formula atYearEnd(int month, Line ofYear, YearOperations y) {
        return MonthOperations.endsYear(month) ? new Element(ofYear, y.axis, PlanMonths.yearOf(month)) : none(NOMINAL);
    }
}
