package org.benchmetre.farm.operations;

import static org.benchmetre.budget.Formulas.greatest;
import static org.benchmetre.budget.Formulas.monthOf;
import static org.benchmetre.budget.Formulas.none;
import static org.benchmetre.budget.Formulas.sum;
import static org.benchmetre.budget.Formulas.sumProduct;
import static org.benchmetre.budget.Formulas.sumWhere;
import static org.benchmetre.budget.Formulas.text;
import static org.benchmetre.budget.Formulas.when;
import static org.benchmetre.budget.Formulas.yearOf;

import org.benchmetre.budget.Axis;
import org.benchmetre.budget.BudgetBuilder;
import org.benchmetre.budget.Formula;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.ScheduleBuilder;
import org.benchmetre.budget.unit.Unit;
import org.benchmetre.farm.input.FarmEntries;
import org.benchmetre.farm.input.Months;
import org.benchmetre.farm.input.Sheets;

/**
 * All work by month and in a year, hired and of the family, and the people it takes in the month with most of it. Plain sums;
 * people are hours over the hours one person works in a month, common practice, no source.
 */
public final class Labour {

    private static final Unit HOURS_A_MONTH = Unit.parse("h/mo");
    private static final Unit HOURS_A_YEAR = Unit.parse("h/a");
    private static final Unit MONEY_A_MONTH = Unit.parse("money/mo");
    private static final Unit MONEY_A_YEAR = Unit.parse("money/a");
    private static final Unit PERSON = Unit.parse("person");

    /** Hours in each month, h/mo. */
    public final Line hoursInMonth;
    /** Cost of work in each month, family work included, money/mo. */
    public final Line costInMonth;
    /** Inputs in each month, money/mo. */
    public final Line inputsInMonth;
    /** Hours a year, h/a. */
    public final Line hours;
    /** Cost of work a year, family work included, money/a. */
    public final Line cost;
    /** Cash for work a year, money/a. */
    public final Line cash;
    /** Inputs a year, money/a. */
    public final Line inputs;
    /** Work and inputs of the tasks that are counted by fruit, money/a: with what one more kg picked and packed costs, all that moves with it. */
    public final Line movesWithYield;

    private final Tasks tasks;
    private final TaskWork work;
    private final PickingWork fruit;

    /**
     * Declares entries and lines.
     *
     * @param b where schedules are added
     * @param entries gives entries their values
     * @param groups work of tasks, picking and packing, by group, which the year adds up
     * @param wages what hours cost
     * @param months the months
     * @param benchMetres all benches end to end
     */
    public Labour(
            BudgetBuilder b,
            FarmEntries entries,
            OperationGroups groups,
            Wages wages,
            Months months,
            Line benchMetres) {
        work = groups.work;
        fruit = groups.fruit;
        tasks = work.tasks;
        ScheduleBuilder m = b.schedule(Sheets.OPERATIONS, "Labour by month");
        ScheduleBuilder y = b.schedule(Sheets.OPERATIONS, "Labour in a year");
        hoursInMonth = m.line(
                "hours_in_month",
                "Labour hours",
                HOURS_A_MONTH,
                sum(work.monthHours, tasks.axis)
                        .plus(fruit.picking.monthHours())
                        .plus(fruit.packing.monthHours()));
        Line hired = m.line(
                "hired_hours",
                "Hours hired",
                HOURS_A_MONTH,
                ofClass(m, "general_hours", "Hours hired, general labour", Wages.GENERAL)
                        .plus(ofClass(m, "skilled_hours", "Hours hired, skilled labour", Wages.SKILLED)));
        Line family = ofClass(m, "family_hours", "Hours of the family", Wages.FAMILY);
        costInMonth = m.line(
                "labour_cost_in_month",
                "Labour cost, family labour included",
                MONEY_A_MONTH,
                costOf(work.wage, fruit.picking.wage(), fruit.packing.wage()));
        m.line(
                "labour_cash_in_month",
                "Labour paid in cash",
                MONEY_A_MONTH,
                costOf(work.cashWage, fruit.picking.cashWage(), fruit.packing.cashWage()));
        inputsInMonth = m.line(
                "inputs_cost_in_month",
                "Inputs",
                MONEY_A_MONTH,
                monthOf(sumProduct(work.inputs, work.monthShare, tasks.axis)));

        Axis all = groups.axis;
        hours = y.line("labour_hours_total", "Labour hours", HOURS_A_YEAR, sum(groups.hours, all));
        year(y, "hired_hours_total", "Hours hired", hired, months);
        Line ofFamily = year(y, "family_hours_total", "Hours of the family", family, months);
        cost = y.line("labour_cost_total", "Labour cost, family labour included", MONEY_A_YEAR, sum(groups.cost, all));
        cash = y.line("labour_cash_total", "Labour paid in cash", MONEY_A_YEAR, sum(groups.cash, all));
        y.line(
                "family_wage_total",
                "What family labour would earn, no cash",
                MONEY_A_YEAR,
                ofFamily.times(wages.family).in(MONEY_A_YEAR));
        inputs = y.line("inputs_cost_total", "Inputs", MONEY_A_YEAR, sum(groups.inputs, all));
        movesWithYield = y.line(
                "yield_tasks_cost",
                "Labour and inputs of tasks counted by fruit",
                MONEY_A_YEAR,
                countedByFruit(work.cost).plus(countedByFruit(work.inputs)),
                "moves with yield, as picking and packing do");
        perMetre(y, benchMetres);
        people(m, y, entries, months);
    }

    private Line ofClass(ScheduleBuilder m, String id, String label, String wageClass) {
        Formula ofTasks = sumWhere(work.monthHours, work.doneBy, text(wageClass), tasks.axis);
        Formula all = ofTasks.plus(hoursOf(wageClass, fruit.picking)).plus(hoursOf(wageClass, fruit.packing));
        return m.line(id, label, HOURS_A_MONTH, all);
    }

    private static Formula hoursOf(String wageClass, PickingWork.Work fruit) {
        return when(fruit.wageClass().is(wageClass), fruit.monthHours(), none(HOURS_A_MONTH));
    }

    private Formula costOf(Line ofTasks, Line ofPicking, Line ofPacking) {
        return sumProduct(work.monthHours, ofTasks, tasks.axis)
                .in(MONEY_A_MONTH)
                .plus(fruit.picking.monthHours().times(ofPicking).in(MONEY_A_MONTH))
                .plus(fruit.packing.monthHours().times(ofPacking).in(MONEY_A_MONTH));
    }

    private Formula countedByFruit(Line ofTasks) {
        return sumWhere(ofTasks, tasks.driver, text(TaskDrivers.YIELD), tasks.axis);
    }

    private static Line year(ScheduleBuilder y, String id, String label, Line byMonth, Months months) {
        return y.line(id, label, HOURS_A_YEAR, yearOf(byMonth, months.axis));
    }

    private void perMetre(ScheduleBuilder y, Line benchMetres) {
        Unit hoursAMetre = Unit.parse("h/(m a)");
        Unit moneyAMetre = Unit.parse("money/(m a)");
        y.line("labour_hours_per_metre", "Hours per metre of bench", hoursAMetre, hours.over(benchMetres));
        y.line("labour_cost_per_metre", "Labour cost per metre of bench", moneyAMetre, cost.over(benchMetres));
    }

    private void people(ScheduleBuilder m, ScheduleBuilder y, FarmEntries entries, Months months) {
        Line each = entries.add(
                y.entry("hours_per_person_month", "Hours one person works in a month", HOURS_A_MONTH.over(PERSON))
                        .above(0, 744));
        Line needed = m.line(
                "people_in_month",
                "People needed",
                PERSON,
                hoursInMonth.over(each),
                "hours over the hours of one person: common practice, no source");
        Line exact = y.line(
                "people_at_peak", "Peak labour, people in the busiest month", PERSON, greatest(needed, months.axis));
        y.line("people_at_peak_whole", "The same in whole people", PERSON, exact.wholeUp());
    }
}
