package org.benchmetre.farm.input;

import static org.benchmetre.budget.Formulas.number;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.DoubleStream;
import org.benchmetre.budget.Axis;
import org.benchmetre.budget.BudgetBuilder;
import org.benchmetre.budget.Formula;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.Rows;
import org.benchmetre.budget.ScheduleBuilder;
import org.benchmetre.budget.entry.Blank;
import org.benchmetre.budget.entry.Bounds;
import org.benchmetre.budget.entry.Given;
import org.benchmetre.budget.entry.Home;
import org.benchmetre.budget.unit.Unit;

/**
 * The months of a year, and {@code months.csv}: up to twelve rows, {@code jan} to {@code dec}, one column for each figure that goes
 * by month. A column or month that is left out takes the documented default, or is blank where there is none. February has 28.25
 * days, so that a year has 365.25.
 */
public final class Months {

    /** The file. */
    public static final String FILE = "months.csv";

    /** Name of the axis. */
    public static final String AXIS = "month";

    /** Keys, in order of the calendar. */
    public static final List<String> KEYS =
            List.of("jan", "feb", "mar", "apr", "may", "jun", "jul", "aug", "sep", "oct", "nov", "dec");

    private static final double[] DAYS = {31, 28.25, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31};
    private static final Unit DAYS_A_MONTH = Unit.parse("d/mo");

    /** One period for each month. */
    public final Axis axis = Axis.periods(AXIS, "Month", KEYS);
    /** Days in each month, d/mo. */
    public final Line days;

    /**
     * Declares the days.
     *
     * @param b where the schedule of days is added
     */
    public Months(BudgetBuilder b) {
        Formula each = new Rows(
                axis,
                DoubleStream.of(DAYS)
                        .mapToObj(value -> number(value, DAYS_A_MONTH))
                        .toList());
        days = b.schedule(Sheets.OPERATIONS, "Days")
                .line(
                        "days_in_month",
                        "Days",
                        DAYS_A_MONTH,
                        each,
                        "calendar; February has 28.25, so that a year has 365.25");
    }

    /**
     * A column of numbers.
     *
     * @param s where the entries are added; all its lines go by month
     * @param column name in the file
     * @param id identifier
     * @param label heading
     * @param unit unit of the column
     * @param bounds hard bounds
     * @param defaults twelve values for what is left out, or a single one for every month
     * @param source where the defaults come from
     * @return the line
     */
    public Line numbers(
            ScheduleBuilder s,
            String column,
            String id,
            String label,
            Unit unit,
            Bounds bounds,
            double[] defaults,
            String source) {
        return s.entry(id, label, unit, axis)
                .within(bounds)
                .keptAt(Home.of(FILE, AXIS, column))
                .whenBlank(Blank.DEFAULT)
                .given(usual(defaults, unit, source));
    }

    /**
     * A column of numbers without a default: what is left out is blank and counts as nothing.
     *
     * @param s where the entries are added; all its lines go by month
     * @param column name in the file
     * @param id identifier
     * @param label heading
     * @param unit unit of the column
     * @param bounds hard bounds
     * @return the line
     */
    public Line numbersOrBlank(ScheduleBuilder s, String column, String id, String label, Unit unit, Bounds bounds) {
        return s.entry(id, label, unit, axis)
                .within(bounds)
                .keptAt(Home.of(FILE, AXIS, column))
                .given(List.of());
    }

    /**
     * Twelve documented values.
     *
     * @param defaults twelve values, or a single one for every month
     * @param unit unit of the column
     * @param source where they come from
     * @return one value a month
     */
    public static List<Given> usual(double[] defaults, Unit unit, String source) {
        List<Given> values = new ArrayList<>();
        for (int month = 0; month < KEYS.size(); month++) {
            values.add(Given.number(defaults[Math.min(month, defaults.length - 1)], unit)
                    .from(source));
        }
        return values;
    }
}
