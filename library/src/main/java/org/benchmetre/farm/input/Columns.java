package org.benchmetre.farm.input;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.Function;
import java.util.regex.Pattern;
import org.benchmetre.budget.Axis;
import org.benchmetre.budget.Bounds;
import org.benchmetre.budget.EntryBuilder;
import org.benchmetre.budget.Given;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.ScheduleBuilder;
import org.benchmetre.budget.unit.Unit;
import org.benchmetre.scenario.Faults;
import org.benchmetre.scenario.Row;
import org.benchmetre.scenario.Table;

/** Turns the columns of one scenario table into entries along an axis: a row of the file is a row of the axis. */
public final class Columns {

    /** Empty rows kept for the reader at the end of each table. */
    public static final int SPARE_ROWS = 10;

    /** Empty rows of short lists, such as ways to water, whose every row is worked out at length. */
    public static final int FEW_SPARE_ROWS = 3;

    /** Bounds of prices, rates and the like. */
    public static final Bounds NOT_NEGATIVE = new Bounds(0, true, Double.POSITIVE_INFINITY, false);
    /** The highest price or wage of one unit in any currency. A choice of this project. */
    public static final double HIGHEST_PRICE = 1_000_000;

    /** Bounds of prices of one unit. */
    public static final Bounds PRICE = new Bounds(0, true, HIGHEST_PRICE, false);

    /** Bounds of lives, packs and the like. */
    public static final Bounds POSITIVE = new Bounds(0, false, Double.POSITIVE_INFINITY, false);

    private static final Pattern SPARE = Pattern.compile("spare_[0-9]+");

    private final Axis axis;
    private final List<Row> rows;
    private final ScheduleBuilder schedule;
    private final Faults faults;

    private Columns(Axis axis, List<Row> rows, ScheduleBuilder schedule, Faults faults) {
        this.axis = axis;
        this.rows = rows;
        this.schedule = schedule;
        this.faults = faults;
    }

    /**
     * Reads the keys of a table, drops rows without a usable one, and makes the axis.
     *
     * @param table the file
     * @param keyColumn the column of keys
     * @param axisName name of the axis
     * @param axisTitle what one row is called
     * @param schedule where the entries are added
     * @param faults where faults are collected
     * @return the columns, whose keys are all different
     */
    public static Columns of(
            Table table, String keyColumn, String axisName, String axisTitle, ScheduleBuilder schedule, Faults faults) {
        return of(table, keyColumn, axisName, axisTitle, SPARE_ROWS, schedule, faults);
    }

    /**
     * The same with another number of spare rows.
     *
     * @param table the file
     * @param keyColumn the column of keys
     * @param axisName name of the axis
     * @param axisTitle what one row is called
     * @param spare empty rows kept for the reader
     * @param schedule where the entries are added
     * @param faults where faults are collected
     * @return the columns, whose keys are all different
     */
    public static Columns of(
            Table table,
            String keyColumn,
            String axisName,
            String axisTitle,
            int spare,
            ScheduleBuilder schedule,
            Faults faults) {
        table.requireColumns(keyColumn);
        Map<String, Row> byKey = new HashMap<>();
        List<String> keys = new ArrayList<>();
        List<Row> kept = new ArrayList<>();
        for (Row row : table.rows()) {
            String key = row.key(keyColumn, faults);
            if (key.isEmpty()) {
                continue;
            }
            if (SPARE.matcher(key).matches()) {
                faults.add(
                        row.place(keyColumn),
                        "\"" + key + "\"",
                        "another key; this one names an empty row of the workbook");
                continue;
            }
            Row first = byKey.putIfAbsent(key, row);
            if (first != null) {
                faults.add(
                        row.place(keyColumn),
                        "\"" + key + "\", which row " + first.rowNumber() + " has already",
                        "each " + axisTitle.toLowerCase(Locale.ROOT) + " once");
                continue;
            }
            keys.add(key);
            kept.add(row);
        }
        return new Columns(Axis.rows(axisName, axisTitle, keys, spare), kept, schedule, faults);
    }

    /**
     * The same table, with further columns laid out in another schedule.
     *
     * @param other where the next entries are added
     * @return the columns
     */
    public Columns in(ScheduleBuilder other) {
        return new Columns(axis, rows, other, faults);
    }

    /**
     * The axis of the table.
     *
     * @return its rows, spare rows last
     */
    public Axis axis() {
        return axis;
    }

    /**
     * The rows of the file that are rows of the axis.
     *
     * @return in order
     */
    public List<Row> rows() {
        return rows;
    }

    /**
     * The keys as an entry, so that a reader can fill a spare row.
     *
     * @param id identifier
     * @param label heading
     * @return the line
     */
    public Line keys(String id, String label) {
        List<Given> values = new ArrayList<>();
        for (int i = 0; i < rows.size(); i++) {
            values.add(sourced(Given.text(axis.keys().get(i)), rows.get(i), ""));
        }
        return schedule.textEntry(id, label, axis).given(values);
    }

    /**
     * A column of free text.
     *
     * @param column name in the file
     * @param id identifier
     * @param label heading
     * @param fallback what a blank cell stands for, by row
     * @return the line
     */
    public Line words(String column, String id, String label, Function<Row, String> fallback) {
        return schedule.textEntry(id, label, axis)
                .given(read(column, row -> Given.text(row.label(column, fallback.apply(row), false, faults))));
    }

    /**
     * A column of labels that rows are gathered by.
     *
     * @param column name in the file
     * @param id identifier
     * @param label heading
     * @param fallback what a blank cell stands for
     * @return the line
     */
    public Line labels(String column, String id, String label, String fallback) {
        return schedule.textEntry(id, label, axis)
                .given(read(column, row -> Given.text(row.label(column, fallback, true, faults))));
    }

    /**
     * A column that takes one of a few words.
     *
     * @param column name in the file
     * @param id identifier
     * @param label heading
     * @param allowed the words
     * @param fallback what a blank cell stands for; null when it must be filled
     * @return the line
     */
    public Line choice(String column, String id, String label, List<String> allowed, String fallback) {
        return schedule.textEntry(id, label, axis)
                .oneOf("", "", allowed)
                .given(read(
                        column,
                        row -> Given.text(
                                fallback == null
                                        ? row.choice(column, allowed, faults)
                                        : row.choice(column, allowed, fallback, faults))));
    }

    /**
     * A column of keys of another table, several apart by spaces, or blank.
     *
     * @param column name in the file
     * @param id identifier
     * @param label heading
     * @param allowed the keys of the other table; empty when that table is itself at fault, and nothing is checked then
     * @return the line
     */
    public Line keyList(String column, String id, String label, List<String> allowed) {
        return schedule.textEntry(id, label, axis).given(read(column, row -> {
            List<String> keys = row.keys(column, faults);
            keys.stream()
                    .filter(key -> !allowed.isEmpty() && !allowed.contains(key))
                    .forEach(key -> faults.add(
                            row.place(column), "\"" + key + "\"", "blank or keys among " + String.join(", ", allowed)));
            return Given.text(String.join(" ", keys));
        }));
    }

    /**
     * A column of numbers.
     *
     * @param column name in the file
     * @param id identifier
     * @param label heading
     * @param unit unit of the column
     * @param bounds hard bounds
     * @param fallback what a blank cell stands for: NaN when it must be filled
     * @return the line
     */
    public Line numbers(String column, String id, String label, Unit unit, Bounds bounds, double fallback) {
        EntryBuilder entry = schedule.entry(id, label, unit, axis).within(bounds);
        return entry.given(rows.stream()
                .map(row -> number(row, column, unit, bounds, fallback))
                .toList());
    }

    private Given number(Row row, String column, Unit unit, Bounds bounds, double fallback) {
        double value =
                row.number(column, asRead(bounds), unit.equals(Unit.ONE) ? "" : unit.toString(), fallback, faults);
        boolean blank = row.isBlank(column) && fallback == 0;
        Given given = blank || Double.isNaN(value) ? Given.blank(unit) : Given.number(value, unit);
        return sourced(given, row, column);
    }

    /**
     * A block of numbers: one column for each period, named by the key of the period. A blank cell counts as nothing.
     *
     * @param periods what runs across
     * @param id identifier
     * @param label heading
     * @param unit unit of all its cells
     * @param bounds hard bounds
     * @return the line, along the rows and the periods
     */
    public Line across(Axis periods, String id, String label, Unit unit, Bounds bounds) {
        EntryBuilder entry = schedule.entry(id, label, unit, axis, periods).within(bounds);
        List<Given> values = new ArrayList<>();
        for (Row row : rows) {
            periods.keys().forEach(period -> values.add(number(row, period, unit, bounds, 0)));
        }
        return entry.given(values);
    }

    /**
     * A column of years, such as the year of a price.
     *
     * @param column name in the file
     * @param id identifier
     * @param label heading
     * @param needed whether a row must have one
     * @return the line
     */
    public Line years(String column, String id, String label, Function<Row, Boolean> needed) {
        Unit unit = Unit.ONE;
        return schedule.entry(id, label, unit, axis)
                .within(new Bounds(1990, true, 2100, true))
                .given(read(column, row -> {
                    int year = needed.apply(row) ? row.year(column, faults) : row.year(column, 0, faults);
                    return year == 0 ? Given.blank(unit) : Given.number(year, unit);
                }));
    }

    /**
     * Reports columns that nothing read.
     *
     * @param table the file
     */
    public void finish(Table table) {
        table.warnUnaskedColumns(faults);
    }

    /**
     * A key as words, for rows without a label.
     *
     * @param key lower snake case
     * @return for example {@code Drip tape} for {@code drip_tape}
     */
    public static String readable(String key) {
        String words = key.trim().replace('_', ' ');
        return words.isEmpty() ? "" : words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1);
    }

    static org.benchmetre.scenario.Bounds asRead(Bounds bounds) {
        return new org.benchmetre.scenario.Bounds(bounds.least(), bounds.leastIncluded(), bounds.most(), true);
    }

    private List<Given> read(String column, Function<Row, Given> cell) {
        List<Given> values = new ArrayList<>();
        for (Row row : rows) {
            values.add(sourced(cell.apply(row), row, column));
        }
        return values;
    }

    private static Given sourced(Given given, Row row, String column) {
        return given.from(row.text("source")).at(row.place(column).toString());
    }
}
