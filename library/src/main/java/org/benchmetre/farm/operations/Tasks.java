package org.benchmetre.farm.operations;

import static org.benchmetre.farm.input.TradeUnits.DRIVER;
import static org.benchmetre.farm.input.TradeUnits.HOUR;
import static org.benchmetre.farm.input.TradeUnits.MONEY;
import static org.benchmetre.farm.input.TradeUnits.ONE;

import java.util.List;
import org.benchmetre.budget.Axis;
import org.benchmetre.budget.BudgetBuilder;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.ScheduleBuilder;
import org.benchmetre.budget.entry.Bounds;
import org.benchmetre.budget.rule.AddToOne;
import org.benchmetre.farm.input.Columns;
import org.benchmetre.farm.input.FarmTable;
import org.benchmetre.farm.input.Groups;
import org.benchmetre.farm.input.Months;
import org.benchmetre.farm.input.Sheets;
import org.benchmetre.farm.input.Tables;
import org.benchmetre.scenario.TableForm;

/** The task list as entered: one row for each piece of work or input that comes back. New work is a new row. */
public final class Tasks {

    /** The file. */
    public static final String FILE = FarmTable.TASKS.file();

    /** Label of the tasks whose group is not listed. */
    static final String OTHER = "Other tasks";

    /** In the months of planting; times that plants are set. */
    static final String PLANTING = "planting";
    /** In the months of clearing out. */
    static final String CLEAR_OUT = "clear_out";
    /** Times are a year, a crop, a setting of plants, or a week in crop. */
    static final List<String> TIMES_UNITS = List.of("a", "crop", PLANTING, "wk");

    /** Evenly over the days in crop. */
    static final String EVEN = "even";
    /** As the fruit comes. */
    static final String YIELD = "yield";
    /** By the shares of the months. */
    static final String MONTHS = "months";
    /** All patterns. */
    static final List<String> PATTERNS = List.of(EVEN, YIELD, PLANTING, CLEAR_OUT, MONTHS);

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
    public final Groups groups;
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
    /** What the times are counted in: {@code a}, {@code crop}, {@code planting} or {@code wk}. */
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
     * @param drivers what tasks are counted by
     * @param months the months
     */
    public Tasks(BudgetBuilder b, TaskDrivers drivers, Months months) {
        ScheduleBuilder s = b.shared(Sheets.OPERATIONS, Tables.TASKS);
        s.note(
                "One row a task. Hours are driver times hours a driver times how often, or driver over drivers an hour. Installing "
                        + "stands with the parts, irrigation maintenance with irrigation, picking and packing below: not here again. "
                        + "A blank driver leaves a row out.");
        Columns c = Columns.of(b, FarmTable.TASKS, s);
        axis = c.axis();
        c.names("task_label", "Task");
        Line key = c.keys("task_key", "Key");
        groups = Groups.of(
                b.structure().keys(TableForm.groupsOf(FILE)).names(),
                OperationGroups.HARVEST,
                OperationGroups.PACKING,
                OTHER);
        group = c.groups("group", "task_group", "Group", groups);
        driver = c.choice("driver", "task_driver", "Driver", drivers.names(), null);
        hours = c.numbers("hours", "task_hours_per_driver", "Hours a driver", HOUR.over(DRIVER), HOURS, 0);
        perHour = c.numbers("per_hour", "task_drivers_per_hour", "Drivers an hour", DRIVER.over(HOUR), RATE, 0);
        times = c.numbers("times", "task_times", "How often", ONE, TIMES, 1);
        timesUnit = c.choice("times_unit", "task_times_unit", "Times per", TIMES_UNITS, "a");
        pattern = c.choice("pattern", "task_pattern", "Spread over months", PATTERNS, "");
        wageClass = c.choice("wage_class", "task_wage_class", "Done by", Wages.CLASSES, Wages.GENERAL);
        inputPrice = c.numbers("input_cost", "task_input_price", "Input a driver", MONEY.over(DRIVER), SPENT, 0);
        c.years("price_year", "task_price_year", "Price year", inputPrice);
        c.words("source", "task_source", "Source");
        ScheduleBuilder block = b.schedule(Sheets.OPERATIONS, "Tasks: shares of the months as entered");
        block.note("Only for tasks that go by months; the shares of a row add to 1.");
        monthShare = c.in(block)
                .across(
                        months.axis,
                        "task_month_share",
                        "Share of the year in each month",
                        ONE,
                        new Bounds(0, true, 1, false));
        b.rule(new HoursGiven(key, hours, perHour, inputPrice));
        b.rule(new YieldByYear(driver, timesUnit));
        b.rule(new AddToOne(monthShare, months.axis, "shares of the year"));
        b.rule(new SharesFitPattern(pattern, monthShare));
    }
}
