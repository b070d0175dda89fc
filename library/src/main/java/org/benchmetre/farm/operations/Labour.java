package org.benchmetre.farm.operations;

import static org.benchmetre.budget.Formulas.monthOf;
import static org.benchmetre.budget.Formulas.none;
import static org.benchmetre.budget.Formulas.sumProduct;
import static org.benchmetre.budget.Formulas.sumWhere;
import static org.benchmetre.budget.Formulas.text;
import static org.benchmetre.budget.Formulas.when;
import static org.benchmetre.farm.input.TradeUnits.DRIVER;

import java.util.List;
import org.benchmetre.budget.Axis;
import org.benchmetre.budget.BudgetBuilder;
import org.benchmetre.budget.Element;
import org.benchmetre.budget.Formula;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.ScheduleBuilder;
import org.benchmetre.budget.unit.Unit;
import org.benchmetre.farm.input.Sheets;
import org.benchmetre.farm.input.Tables;

/**
 * Tasks, picking and packing by month and in a year, hired and of the family. Plain sums.
 */
public final class Labour {

    private static final Unit HOURS_A_MONTH = Unit.parse("h/mo");
    private static final Unit HOURS_A_YEAR = Unit.parse("h/a");
    private static final Unit MONEY_A_MONTH = Unit.parse("money/mo");
    private static final Unit MONEY_A_YEAR = Unit.parse("money/a");
    private static final Unit MONEY_A_KG = Unit.parse("money/kg");

    /** Hours of tasks, picking and packing in each month, h/mo. */
    final Formula tasksInMonth;
    /** Labour paid in cash in each month, money/mo. */
    public final Line cashInMonth;
    /** Inputs in each month, money/mo. */
    public final Line inputsInMonth;
    /** Hours hired a year, h/a. */
    final Line hiredHours;
    /** Hours of the family a year, h/a. */
    final Line familyHours;
    /** Labour cost a year, family labour included, money/a. */
    public final Line cost;
    /** Labour paid in cash a year, money/a. */
    public final Line cash;
    /** Inputs a year, money/a. */
    public final Line inputs;
    /** Work and inputs of the tasks that are counted by fruit, for a kilogram, money/kg. */
    public final Formula tasksPerKg;

    /** What an hour of hired general labour costs, money/h. */
    public final Line hour;
    /** Hired work and work of the family, apart. */
    public final PaidWork paidAndNot;

    private final TaskWork work;
    private final PickingWork fruit;
    private final Wages wages;
    private final Axis drivers;
    /** Hours of each wage class and inputs, for one of each driver. */
    private final List<Line> byDriver;

    /**
     * Declares entries and lines.
     *
     * @param b where schedules are added
     * @param groups work of tasks, picking and packing
     * @param wages what hours cost
     */
    public Labour(BudgetBuilder b, OperationGroups groups, Wages wages) {
        this.wages = wages;
        work = groups.work;
        fruit = groups.fruit;
        drivers = work.drivers.axis;
        ScheduleBuilder t = b.shared(Sheets.OPERATIONS, Tables.TASKS);
        ScheduleBuilder d = b.shared(Sheets.OPERATIONS, Tables.TASK_DRIVERS);
        ScheduleBuilder m = b.shared(Sheets.OPERATIONS, Tables.LABOUR);
        ScheduleBuilder y = b.schedule(Sheets.OPERATIONS, "Labour in a year");
        Class general = ofClass(t, d, m, y, new Named(Wages.GENERAL, "general_hours", "Hours hired, general labour"));
        Class skilled = ofClass(t, d, m, y, new Named(Wages.SKILLED, "skilled_hours", "Hours hired, skilled labour"));
        Class family = ofClass(t, d, m, y, new Named(Wages.FAMILY, "family_hours", "Hours of the family"));
        Line hired = m.line("hired_hours", "Hours hired", HOURS_A_MONTH, general.month.plus(skilled.month));
        tasksInMonth = hired.plus(family.month);
        cashInMonth = m.line(
                "labour_cash_in_month",
                "Labour paid in cash",
                MONEY_A_MONTH,
                general.month
                        .times(wages.generalRate)
                        .plus(skilled.month.times(wages.skilledRate))
                        .in(MONEY_A_MONTH));
        m.line(
                "labour_cost_in_month",
                "Labour cost, family labour included",
                MONEY_A_MONTH,
                cashInMonth.plus(family.month.times(wages.familyRate).in(MONEY_A_MONTH)));
        inputsInMonth = m.line(
                "inputs_cost_in_month",
                "Inputs",
                MONEY_A_MONTH,
                monthOf(sumProduct(work.inputs, work.monthShare, work.tasks.axis)));

        hiredHours = y.line("hired_hours_total", "Hours hired", HOURS_A_YEAR, general.year.plus(skilled.year));
        familyHours = family.year;
        cash = y.line(
                "labour_cash_total",
                "Labour paid in cash",
                MONEY_A_YEAR,
                general.year
                        .times(wages.generalRate)
                        .plus(skilled.year.times(wages.skilledRate))
                        .in(MONEY_A_YEAR));
        Line ofFamily = y.line(
                "family_wage_total",
                "What family labour would earn, no cash",
                MONEY_A_YEAR,
                family.year.times(wages.familyRate).in(MONEY_A_YEAR));
        cost = y.line("labour_cost_total", "Labour cost, family labour included", MONEY_A_YEAR, cash.plus(ofFamily));
        Line inputsOf = d.line(
                "driver_inputs",
                "Inputs",
                MONEY_A_YEAR.over(DRIVER),
                sumWhere(work.inputsADriver, work.tasks.driver, work.drivers.key, work.tasks.axis));
        inputs =
                y.line("inputs_cost_total", "Inputs", MONEY_A_YEAR, sumProduct(inputsOf, work.drivers.amount, drivers));
        byDriver = List.of(general.driver, skilled.driver, family.driver, inputsOf);
        hour = wages.generalRate;
        tasksPerKg = tasksOf(TaskDrivers.YIELD).counting(MONEY_A_KG);
        paidAndNot = new PaidWork(b, groups, wages, new PaidWork.Family(family.year, ofFamily));
    }

    /** A wage class, its lines and what they are called. */
    private record Named(String wageClass, String id, String label) {}

    /** Hours of a wage class for a unit of each driver, in each month and in the year. */
    private record Class(Line driver, Line month, Line year) {}

    private Class ofClass(ScheduleBuilder t, ScheduleBuilder d, ScheduleBuilder m, ScheduleBuilder y, Named named) {
        Line byTask = t.line(
                "task_" + named.id,
                named.label,
                HOURS_A_YEAR,
                when(work.doneBy.is(named.wageClass), work.hours, none(HOURS_A_YEAR)));
        Line byDriver = d.line(
                "driver_" + named.id,
                named.label,
                HOURS_A_YEAR.over(DRIVER),
                sumWhere(
                        work.hoursADriver,
                        work.classAndDriver,
                        wages.joined(text(named.wageClass), work.drivers.key),
                        work.tasks.axis));
        Formula inMonth = monthOf(sumProduct(byTask, work.monthShare, work.tasks.axis));
        Line month = m.line(
                named.id,
                named.label,
                HOURS_A_MONTH,
                inMonth.plus(by(named, fruit.picking, fruit.picking.monthHours()))
                        .plus(by(named, fruit.packing, fruit.packing.monthHours())));
        Line year = y.line(
                named.id + "_total",
                named.label,
                HOURS_A_YEAR,
                sumProduct(byDriver, work.drivers.amount, drivers)
                        .plus(by(named, fruit.picking, fruit.picking.year().hours()))
                        .plus(by(named, fruit.packing, fruit.packing.year().hours())));
        return new Class(byDriver, month, year);
    }

    private static Formula by(Named named, PickingWork.Work fruit, Line hours) {
        return when(fruit.wageClass().is(named.wageClass), hours, none(hours.unit()));
    }

    /**
     * Work and inputs of the tasks that are counted by a driver, for one of it.
     *
     * @param driver a name of {@link TaskDrivers}
     * @return money/(driver a)
     */
    public Formula tasksOf(String driver) {
        List<Formula> each = byDriver.stream()
                .<Formula>map(line -> new Element(line, drivers, drivers.indexOf(driver)))
                .toList();
        return each.get(0)
                .times(wages.generalRate)
                .plus(each.get(1).times(wages.skilledRate))
                .plus(each.get(2).times(wages.familyRate))
                .plus(each.get(3));
    }
}
