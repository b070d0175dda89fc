package org.benchmetre.farm.operations;

import static org.benchmetre.farm.input.TradeUnits.DRIVER;
import static org.benchmetre.farm.input.TradeUnits.HOUR;
import static org.benchmetre.farm.input.TradeUnits.MONEY;
import static org.benchmetre.farm.input.TradeUnits.ONE;

import java.util.List;
import org.benchmetre.budget.Axis;
import org.benchmetre.budget.Bounds;
import org.benchmetre.budget.BudgetBuilder;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.ScheduleBuilder;
import org.benchmetre.farm.input.Columns;
import org.benchmetre.farm.input.GroupLabels;
import org.benchmetre.farm.input.Months;
import org.benchmetre.farm.input.Sheets;
import org.benchmetre.scenario.Faults;
import org.benchmetre.scenario.Table;

/** The task list as entered: one row for each piece of work or input that comes back. New work is a new row. */
public final class Tasks {

    /** The file. */
    public static final String FILE = "tasks.csv";

    /** Label of the tasks whose group is not listed. */
    static final String OTHER = "Other tasks";

    /** Times are a year, a crop, or a week in crop. */
    static final List<String> TIMES_UNITS = List.of("a", "crop", "wk");

    /** Evenly over the days in crop. */
    static final String EVEN = "even";
    /** As the fruit comes. */
    static final String YIELD = "yield";
    /** By the shares of the months. */
    static final String MONTHS = "months";
    /** All patterns. */
    static final List<String> PATTERNS = List.of(EVEN, YIELD, MONTHS);

    /** Hours a driver: for the whole house, eleven people round the clock for a year. */
    private static final Bounds HOURS = new Bounds(0, true, 100_000, false);
    /** Drivers an hour: substrate is counted in litres. */
    private static final Bounds RATE = new Bounds(0, false, 10_000_000, false);
    /** How often: once an hour, day and night, for a year of 366 days. */
    private static final Bounds TIMES = new Bounds(0, false, 8784, false);
    /** Money a driver: for the whole house, in any currency. */
    private static final Bounds SPENT = new Bounds(0, true, 1e9, false);

    /** One row for each task. */
    public final Axis axis;
    /** Groups in order of first use. */
    public final List<String> groups;
    /** Group, a label. */
    public final Line group;
    /** Driver; blank where the row is not in use. */
    public final Line driver;
    /** Hours for each unit of the driver, each time, h/driver. */
    public final Line hours;
    /** Units of the driver done in an hour, in place of hours, driver/h. */
    public final Line perHour;
    /** How often; blank counts as once. */
    public final Line times;
    /** What the times are counted in: {@code a}, {@code crop} or {@code wk}. */
    public final Line timesUnit;
    /** How the year is spread over months; blank for the shares where there are any, else evenly. */
    public final Line pattern;
    /** Wage class; blank for general. */
    public final Line wageClass;
    /** Money spent for each unit of the driver, each time, money/driver. */
    public final Line inputPrice;
    /** Share of the year in each month, for tasks that go by months. */
    public final Line monthShare;

    /**
     * Declares the columns.
     *
     * @param b where schedules are added
     * @param table the file; it may be absent
     * @param faults where faults are collected
     * @param drivers what tasks are counted by
     * @param months the months
     */
    public Tasks(BudgetBuilder b, Table table, Faults faults, TaskDrivers drivers, Months months) {
        ScheduleBuilder s = b.schedule(Sheets.OPERATIONS, "Tasks");
        s.note(
                "One row a task. Hours are driver times hours a driver times how often, or driver over drivers an hour. Installing "
                        + "stands with the parts, care of outlets and lines with irrigation, picking and packing below: not here again. "
                        + "A blank driver leaves a row out.");
        table.requireColumns("task", "driver");
        Columns c = Columns.of(table, "task", "task", "Task", s, faults);
        axis = c.axis();
        Line label = c.words("label", "task_label", "Task", row -> Columns.readable(row.text("task")));
        c.keys("task_key", "Key");
        b.nameRows(axis, label);
        group = c.labels("group", "task_group", "Group", OTHER);
        driver = c.choice("driver", "task_driver", "Driver", drivers.names(), null);
        hours = c.numbers("hours", "task_hours_per_driver", "Hours a driver", HOUR.over(DRIVER), HOURS, 0);
        perHour = c.numbers("per_hour", "task_drivers_per_hour", "Drivers an hour", DRIVER.over(HOUR), RATE, 0);
        times = c.numbers("times", "task_times", "How often", ONE, TIMES, 1);
        timesUnit = c.choice("times_unit", "task_times_unit", "Often in", TIMES_UNITS, "a");
        pattern = c.choice("pattern", "task_pattern", "Spread over months", PATTERNS, "");
        wageClass = c.choice("wage_class", "task_wage_class", "Done by", Wages.CLASSES, Wages.GENERAL);
        inputPrice = c.numbers("input_cost", "task_input_price", "Input a driver", MONEY.over(DRIVER), SPENT, 0);
        c.years("price_year", "task_price_year", "Price year", row -> !row.isBlank("input_cost"));
        c.words("source", "task_source", "Source", row -> "");
        ScheduleBuilder block = b.schedule(Sheets.OPERATIONS, "Tasks: shares of the months as entered");
        block.note("Only for tasks that go by months; the shares of a row add to 1.");
        monthShare = c.in(block)
                .across(
                        months.axis,
                        "task_month_share",
                        "Share of the year in each month",
                        ONE,
                        new Bounds(0, true, 1, false));
        c.rows().forEach(row -> new TaskChecks(row, faults).check());
        c.finish(table);
        groups = GroupLabels.inOrder(c.rows(), "group", OTHER);
    }
}
