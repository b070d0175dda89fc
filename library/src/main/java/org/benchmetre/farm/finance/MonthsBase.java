package org.benchmetre.farm.finance;

import static org.benchmetre.budget.Formulas.and;
import static org.benchmetre.budget.Formulas.none;
import static org.benchmetre.budget.Formulas.not;
import static org.benchmetre.budget.Formulas.number;
import static org.benchmetre.budget.Formulas.one;
import static org.benchmetre.budget.Formulas.or;
import static org.benchmetre.budget.Formulas.previous;
import static org.benchmetre.budget.Formulas.shown;
import static org.benchmetre.budget.Formulas.sumWhere;
import static org.benchmetre.budget.Formulas.text;
import static org.benchmetre.budget.Formulas.when;
import static org.benchmetre.farm.input.TradeUnits.MONEY;
import static org.benchmetre.farm.input.TradeUnits.ONE;

import java.util.List;
import org.benchmetre.budget.BudgetBuilder;
import org.benchmetre.budget.Formula;
import org.benchmetre.budget.Kind;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.ScheduleBuilder;
import org.benchmetre.budget.unit.Unit;
import org.benchmetre.farm.crop.Harvest;
import org.benchmetre.farm.input.Months;
import org.benchmetre.farm.input.Sheets;

/**
 * What the first two years of the plan bring and take, month by month, at today's prices: the months of the calendar from the start on,
 * fruit from the first planting on, without that of the months by which the first harvest is late, less in years of learning, none in a year whose
 * crop is lost. Sums of the two years feed the cash of the years.
 */
public final class MonthsBase {

    private static final Unit A_MONTH = Unit.parse("mo");
    private static final Unit A_YEAR = Unit.parse("a");
    private static final String FRUIT =
            "where the first harvest is late, the fruit of so many of its months is lost and later fruit comes as planned: common practice, "
                    + "no source";

    /** Receipts before changes of price and fruit, money. */
    public final Line sold;
    /** Packs, freight, commission and other costs by the kg, money. */
    public final Line selling;
    /** Hired labour, money. */
    public final Line labour;
    /** Heat and electricity, money. */
    public final Line energy;
    /** Water, nutrient solution, inputs, irrigation maintenance, overhead, money. */
    public final Line running;
    /** Receipts of a full month of the calendar, once planted: neither late, lost nor learning, money. */
    public final Line inFull;
    /** The months. */
    public final PlanMonths months;

    private final ScheduleBuilder sums;
    private final Harvest harvest;
    private final Formula overhead;
    private final Line grown;

    /**
     * What goes by month of the calendar.
     *
     * @param labour paid in cash, money/mo
     * @param inputs of tasks, money/mo
     * @param water water, nutrient solution, drain, pumping, money/mo
     * @param energy heat and electricity, money/mo
     * @param care irrigation maintenance and replanting, money/a, even while something grows
     * @param overhead in cash, money/a, even from the start on
     */
    public record Flows(Line labour, Line inputs, Line water, Line energy, Line care, Formula overhead) {}

    /**
     * Declares the lines.
     *
     * @param b where schedules are added
     * @param months the months of the plan
     * @param shocks what may go wrong
     * @param harvest receipts and selling, by month
     * @param flows what else goes by month
     * @param sellingByMonth costs of selling, money/mo
     */
    public MonthsBase(
            BudgetBuilder b, PlanMonths months, Shocks shocks, Harvest harvest, Flows flows, Line sellingByMonth) {
        this.months = months;
        this.harvest = harvest;
        overhead = flows.overhead();
        ScheduleBuilder t = months.table();
        sums = b.schedule(Sheets.CASH_FLOW, "The first two years, at today's prices");
        grown = t.line(
                "plan_month_grown", "Planted, 1 or 0", ONE, when(months.number.exceeds(months.wait), one(), none(ONE)));
        Line first = t.line(
                "plan_month_first",
                "In the first crop year, 1 or 0",
                ONE,
                when(months.number.exceeds(months.wait.plus(PlanMonths.year())), none(ONE), one()),
                Months.COUNTING);
        Line ramp = t.line(
                "plan_month_ramp",
                "Share of a full year's fruit",
                ONE,
                when(first.isPositive(), harvest.firstYear, harvest.secondYear),
                "as entered for the years of learning");
        inFull = t.line(
                "plan_month_in_full",
                "Receipts of a full month",
                MONEY,
                ofMonth(months.turned(harvest.receiptsByMonth)).times(grown));
        Line picking = t.declare(
                "plan_month_picking",
                "Months since the first harvest began",
                ONE,
                Kind.NUMBER,
                List.of(months.axis),
                "counted from 1 on, from the first month with fruit");
        Formula before = previous(picking, none(ONE));
        b.define(picking, when(or(before.isPositive(), inFull.isPositive()), before.plus(one()), none(ONE)));
        Formula isLate = and(first.isPositive(), not(picking.exceeds(shocks.late.counting(ONE))));
        Formula bears = not(or(isLate, months.yearTag.is(shown(shocks.lost, 0))));
        sold = t.line("plan_month_sold", "Receipts", MONEY, when(bears, inFull.times(ramp), none(MONEY)), FRUIT);
        selling = t.line(
                "plan_month_selling",
                "Packs, freight, commission, other costs by the kg",
                MONEY,
                when(bears, ofMonth(months.turned(sellingByMonth)).times(grown).times(ramp), none(MONEY)),
                FRUIT);
        labour = whileGrown("plan_month_labour", "Hired labour", months.turned(flows.labour));
        energy = whileGrown("plan_month_energy", "Heat and electricity", months.turned(flows.energy));
        Formula growing =
                months.turned(flows.inputs).plus(months.turned(flows.water)).plus(even(flows.care));
        running = t.line(
                "plan_month_running",
                "Water, nutrient solution, inputs, irrigation maintenance, overhead",
                MONEY,
                ofMonth(growing).times(grown).plus(ofMonth(even(flows.overhead))),
                "what has no month is spread evenly over the twelve: a choice of this project, no source");
    }

    private Line whileGrown(String id, String label, Formula byMonth) {
        return months.table().line(id, label, MONEY, ofMonth(byMonth).times(grown));
    }

    private static Formula ofMonth(Formula aMonth) {
        return aMonth.times(number(1, A_MONTH));
    }

    private static Formula even(Formula ofYear) {
        return ofYear.over(number(Months.IN_A_YEAR, ONE)).counting(Unit.parse("money/mo"));
    }

    /**
     * A year's amount: of the first two years by their months, of later ones in full.
     *
     * @param id identifier of the two sums, to which their year is added
     * @param byMonth amounts by month of the plan
     * @param full amount of a full year, money/a
     * @param year number of each year
     * @return money, in years after the start
     */
    Formula ofYear(String id, Line byMonth, Formula full, Line year) {
        Line first = sums.line(id + "_first_year", byMonth.label() + ", first year", MONEY, in(byMonth, "1"));
        Line second = sums.line(id + "_second_year", byMonth.label() + ", second year", MONEY, in(byMonth, "2"));
        return when(
                year.exceeds(number(2, A_YEAR)),
                full.times(number(1, A_YEAR)),
                when(year.exceeds(number(1, A_YEAR)), second, first));
    }

    /**
     * What the months of the first year have.
     *
     * @param byMonth a line of the months
     * @return their sum
     */
    public Formula firstYear(Line byMonth) {
        return in(byMonth, "1");
    }

    /**
     * What the third year has of a full year's fruit: where cash begins before the first planting, its first months still belong to the second crop
     * year, which may be one of learning.
     */
    Line thirdYear(ScheduleBuilder s) {
        Formula ofSecondCrop = in(inFull, "2").minus(in(inFull, "1"));
        Formula receipts = harvest.receipts.times(number(1, A_YEAR));
        Formula lacks = one().minus(harvest.secondYear).times(ofSecondCrop);
        return s.line(
                "third_year_share",
                "Share of a full year's fruit in the third year",
                ONE,
                when(receipts.isPositive(), one().minus(lacks.over(receipts)), one()),
                "months before that of planting are of the crop year before: plain counting");
    }

    /**
     * Overhead of the months before the first planting, which no crop carries.
     *
     * @return money
     */
    public Formula idle() {
        return ofMonth(even(overhead)).times(months.wait);
    }

    private Formula in(Line byMonth, String year) {
        return sumWhere(byMonth, months.yearTag, text(year), months.axis);
    }
}
