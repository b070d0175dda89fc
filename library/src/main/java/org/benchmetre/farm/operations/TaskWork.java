package org.benchmetre.farm.operations;

import static org.benchmetre.budget.Formulas.and;
import static org.benchmetre.budget.Formulas.lookup;
import static org.benchmetre.budget.Formulas.none;
import static org.benchmetre.budget.Formulas.number;
import static org.benchmetre.budget.Formulas.one;
import static org.benchmetre.budget.Formulas.or;
import static org.benchmetre.budget.Formulas.sum;
import static org.benchmetre.budget.Formulas.text;
import static org.benchmetre.budget.Formulas.when;
import static org.benchmetre.farm.input.TradeUnits.DRIVER;
import static org.benchmetre.farm.input.TradeUnits.ONE;

import org.benchmetre.budget.BudgetBuilder;
import org.benchmetre.budget.Formula;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.ScheduleBuilder;
import org.benchmetre.budget.unit.Unit;
import org.benchmetre.farm.input.Months;
import org.benchmetre.farm.input.Sheets;
import org.benchmetre.farm.input.Tables;

/**
 * Hours and money of each task: driver times hours a driver times how often, spread over the months; what hired work costs in
 * cash and what family labour would earn; inputs at their price. Common practice, no source; wages as {@link Wages} says.
 */
public final class TaskWork {

    private static final Unit A_YEAR = Unit.parse("1/a");
    private static final Unit HOURS_A_YEAR = Unit.parse("h/a");
    private static final Unit MONEY_A_YEAR = Unit.parse("money/a");

    /** Share of its year that each task has in each month. */
    public final Line monthShare;
    /** Hours a year, h/a. */
    public final Line hours;
    /** Wage class, general where the cell is blank; blank where the row is not in use. */
    public final Line doneBy;
    /** Labour cost a year, family labour included, money/a. */
    public final Line cost;
    /** Inputs a year, money/a. */
    public final Line inputs;

    /** The tasks as entered. */
    final Tasks tasks;
    /** What they are counted by. */
    final TaskDrivers drivers;
    /** Hours a year for each unit of the driver, h/(driver a). */
    final Line hoursADriver;
    /** Inputs a year for each unit of the driver, money/(driver a). */
    final Line inputsADriver;
    /** Wage class and driver, one text; the empty one where the row is not in use. */
    final Line classAndDriver;

    /**
     * Declares the lines.
     *
     * @param b where schedules are added
     * @param tasks the tasks as entered
     * @param drivers what tasks are counted by
     * @param wages what hours cost
     * @param crop crops a year, weeks in crop and patterns
     */
    public TaskWork(BudgetBuilder b, Tasks tasks, TaskDrivers drivers, Wages wages, CropMonths crop) {
        this.tasks = tasks;
        this.drivers = drivers;
        Months months = crop.months;
        ScheduleBuilder s = b.shared(Sheets.OPERATIONS, Tables.TASKS);
        ScheduleBuilder blocks = b.schedule(Sheets.OPERATIONS, "Tasks by month");
        Line amount = s.line(
                "task_amount", "Amount of driver", DRIVER, inUse(lookup(drivers.amount, drivers.key, tasks.driver)));
        Line often = s.line("task_times_a_year", "Times a year", A_YEAR, inUse(timesAYear(crop)));
        Line given = s.line("task_share_sum", "Shares entered", ONE, sum(tasks.monthShare, months.axis));
        Line pattern = s.textLine("task_pattern_used", "Spread by", patternOr(given));
        monthShare = blocks.line(
                "task_share_in_month",
                "Share of the year",
                ONE,
                inUse(when(
                        pattern.is(Tasks.MONTHS),
                        tasks.monthShare,
                        when(
                                pattern.is(Tasks.YIELD),
                                crop.yieldShare,
                                when(
                                        pattern.is(Tasks.PLANTING),
                                        crop.plantingShare,
                                        when(pattern.is(Tasks.CLEAR_OUT), crop.clearingShare, crop.evenShare))))));
        hoursADriver = s.line(
                "task_hours_a_driver_year",
                "Hours a driver, a year",
                HOURS_A_YEAR.over(DRIVER),
                hoursPerDriver().times(often).times(when(pattern.is(Tasks.MONTHS), given, one())),
                "shares of months that do not add to 1 lose hours or count them twice");
        hours = s.line("task_hours", "Hours", HOURS_A_YEAR, amount.times(hoursADriver));
        doneBy = s.textLine("task_done_by", "Done by", doneBy());
        classAndDriver = s.textLine("task_class_driver", "Done by, and driver", wages.joined(doneBy, tasks.driver));
        cost = s.line(
                "task_cost",
                "Labour cost",
                MONEY_A_YEAR,
                hours.times(inUse(wages.cost(doneBy))).in(MONEY_A_YEAR),
                Wages.OF_FAMILY);
        inputsADriver = s.line(
                "task_inputs_a_driver",
                "Inputs a driver, a year",
                MONEY_A_YEAR.over(DRIVER),
                tasks.inputPrice.times(often));
        inputs = s.line("task_input_cost", "Inputs", MONEY_A_YEAR, amount.times(inputsADriver));
        warn(b, given, pattern);
    }

    /** Rows without a driver are empty. */
    private Formula inUse(Formula formula) {
        return when(tasks.driver.isFilled(), formula, none(formula.unit()));
    }

    private Formula hoursPerDriver() {
        return when(tasks.perHour.isPositive(), one().over(tasks.perHour), tasks.hours);
    }

    private Formula timesAYear(CropMonths crop) {
        Formula often = when(tasks.times.isPositive(), tasks.times, one());
        Formula counted = when(
                tasks.timesUnit.is("crop"),
                crop.cropsPerYear.counting(A_YEAR),
                when(
                        tasks.timesUnit.is(Tasks.PLANTING),
                        crop.plantings,
                        when(tasks.timesUnit.is("wk"), crop.weeks.counting(A_YEAR), number(1, A_YEAR))));
        return often.times(counted);
    }

    /** The pattern as entered; where none is, the shares of the months if there are any, else evenly. */
    private Formula patternOr(Line given) {
        Formula blank = when(given.isPositive(), text(Tasks.MONTHS), text(Tasks.EVEN));
        return when(tasks.driver.isFilled(), when(tasks.pattern.isFilled(), tasks.pattern, blank), text(""));
    }

    private Formula doneBy() {
        Formula orGeneral = when(tasks.wageClass.isFilled(), tasks.wageClass, text(Wages.GENERAL));
        return when(tasks.driver.isFilled(), orGeneral, text(""));
    }

    /** What the file is refused for is a warning where it is typed into the workbook. */
    private void warn(BudgetBuilder b, Line given, Line pattern) {
        ScheduleBuilder s = b.shared(Sheets.OPERATIONS, Tables.TASKS);
        s.warning(
                "task_share_warning",
                "Shares of months",
                and(pattern.is(Tasks.MONTHS), or(given.exceeds(one()), one().exceeds(given))),
                "The shares of the months do not add to 1, so hours are lost or counted twice: correct the shares.");
        s.warning(
                "task_rate_warning",
                "Hours and rate",
                and(tasks.hours.isPositive(), tasks.perHour.isPositive()),
                "Both hours a driver and drivers an hour are given; the rate counts: clear one of them.");
        s.warning(
                "task_times_warning",
                "How often fruit counts",
                and(tasks.driver.is(TaskDrivers.YIELD), or(tasks.timesUnit.is("crop"), tasks.timesUnit.is("wk"))),
                "The driver is the fruit of a whole year, so it would count again each crop or week: count in a.");
    }
}
