package org.benchmetre.farm.input;

import static org.benchmetre.budget.Formulas.number;
import static org.benchmetre.farm.input.TradeUnits.ONE;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.DoubleStream;
import org.benchmetre.budget.Axis;
import org.benchmetre.budget.Bounds;
import org.benchmetre.budget.BudgetBuilder;
import org.benchmetre.budget.Formula;
import org.benchmetre.budget.Given;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.Rows;
import org.benchmetre.budget.ScheduleBuilder;
import org.benchmetre.budget.unit.Unit;
import org.benchmetre.scenario.Faults;
import org.benchmetre.scenario.Row;
import org.benchmetre.scenario.Table;

/**
 * The months of a year, and {@code months.csv}: up to twelve rows, {@code jan} to {@code dec}, one column for each figure that goes
 * by month. A column or month that is left out takes the documented default, or is blank where there is none. February has 28.25
 * days, so that a year has 365.25.
 */
public final class Months {

    /** The file. */
    public static final String FILE = "months.csv";

    /** Keys, in order of the calendar. */
    public static final List<String> KEYS =
            List.of("jan", "feb", "mar", "apr", "may", "jun", "jul", "aug", "sep", "oct", "nov", "dec");

    private static final String NO_SOURCE = "scenario, no source given";
    private static final double[] NO_DEFAULT = {Double.NaN};
    private static final double[] DAYS = {31, 28.25, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31};
    private static final Unit DAYS_A_MONTH = Unit.parse("d/mo");

    /** One period for each month. */
    public final Axis axis = Axis.periods("month", "Month", KEYS);
    /** Days in each month, d/mo. */
    public final Line days;

    private final Table table;
    private final Faults faults;
    private final Map<String, Row> rows = new HashMap<>();

    /**
     * Reads the file.
     *
     * @param b where the schedule of days is added
     * @param table the file; it may be absent
     * @param faults where faults are collected
     */
    public Months(BudgetBuilder b, Table table, Faults faults) {
        this.table = table;
        this.faults = faults;
        for (Row row : table.rows()) {
            String key = row.choice("month", KEYS, faults);
            if (!key.isEmpty() && rows.putIfAbsent(key, row) != null) {
                faults.add(row.place("month"), "\"" + key + "\" again", "each month once");
            }
        }
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
     * Whether the file has a column.
     *
     * @param column name in the file
     * @return true when it stands in the header
     */
    public boolean has(String column) {
        return table.hasColumn(column);
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
        return s.entry(id, label, unit, axis).within(bounds).given(values(column, unit, bounds, defaults, source));
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
        return numbers(s, column, id, label, unit, bounds, NO_DEFAULT, "");
    }

    /**
     * Reports months that have some of these columns and not the others, where each is of no use alone.
     *
     * @param columns names in the file
     */
    public void together(List<String> columns) {
        for (String key : KEYS) {
            Row row = rows.get(key);
            List<String> filled = row == null
                    ? List.of()
                    : columns.stream().filter(column -> !row.isBlank(column)).toList();
            if (!filled.isEmpty()) {
                columns.stream()
                        .filter(column -> !filled.contains(column))
                        .forEach(column -> faults.add(
                                row.place(column), "nothing", "a value, since " + filled.get(0) + " is given"));
            }
        }
    }

    /**
     * The twelve values of a column, for an entry with one more axis.
     *
     * @param column name in the file
     * @param unit unit of the column
     * @param bounds hard bounds
     * @param defaults twelve values for what is left out, or a single one for every month
     * @param source where the defaults come from
     * @return one value a month
     */
    public List<Given> values(String column, Unit unit, Bounds bounds, double[] defaults, String source) {
        List<Given> values = new ArrayList<>();
        for (int month = 0; month < KEYS.size(); month++) {
            double usual = defaults[Math.min(month, defaults.length - 1)];
            values.add(value(rows.get(KEYS.get(month)), column, unit, bounds, usual, source));
        }
        return values;
    }

    private Given value(Row row, String column, Unit unit, Bounds bounds, double usual, String source) {
        if (!table.hasColumn(column) || row == null || row.isBlank(column)) {
            return usually(usual, unit).from(source);
        }
        double read =
                row.number(column, Columns.asRead(bounds), unit.equals(ONE) ? "" : unit.toString(), Double.NaN, faults);
        return (Double.isNaN(read) ? usually(usual, unit) : Given.number(read, unit))
                .from(row.isBlank("source") ? NO_SOURCE : row.text("source"))
                .at(row.place(column).toString());
    }

    private static Given usually(double usual, Unit unit) {
        return Double.isNaN(usual) ? Given.blank(unit) : Given.number(usual, unit);
    }

    /** Reports columns that nothing read. Called when every section has asked for its own. */
    public void finish() {
        table.allowColumns("source");
        table.warnUnaskedColumns(faults);
    }
}
