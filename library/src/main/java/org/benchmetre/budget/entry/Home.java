package org.benchmetre.budget.entry;

import java.io.Serializable;
import java.util.List;

/**
 * Where files keep an entry: the table, which axis of the line its rows are, and the columns that may hold a cell. A star in a column
 * stands for the key of the line's other axis. Of several columns the first that says something counts.
 *
 * @param table the file, such as {@code materials.csv}; empty for an entry that no file keeps
 * @param rows name of the axis whose keys name the rows of the file; for a single value the line that names its row
 * @param columns names, first to last, {@code *} for the key of the other axis
 * @param whole whether a column that the file has counts as a whole, blank cells as nothing; otherwise a blank cell is passed over
 */
public record Home(String table, String rows, List<String> columns, boolean whole) implements Serializable {

    /** The file of single values. */
    public static final String SINGLE = "farm.csv";

    /** No file keeps the entry. */
    public static final Home NONE = new Home("", "", List.of(), false);

    /** Keeps its own copy of the columns. */
    public Home {
        columns = List.copyOf(columns);
    }

    /**
     * The home of a single value: a row of the file of single values.
     *
     * @param row the line that names the row
     * @param column {@code value}, {@code low} or {@code high}
     * @return the home
     */
    public static Home single(String row, String column) {
        return new Home(SINGLE, row, List.of(column), false);
    }

    /**
     * The home of a column of a table.
     *
     * @param table the file
     * @param rows name of the axis whose keys name the rows
     * @param columns names, first to last, {@code *} for the key of the other axis
     * @return the home
     */
    public static Home of(String table, String rows, String... columns) {
        return new Home(table, rows, List.of(columns), false);
    }

    /**
     * The same, but that a column which the file has counts as a whole.
     *
     * @return the home
     */
    public Home wholeColumns() {
        return new Home(table, rows, columns, true);
    }

    /**
     * Whether a file keeps the entry.
     *
     * @return false for what only a workbook holds
     */
    public boolean isKept() {
        return !table.isEmpty();
    }

    /**
     * The columns that may hold a cell.
     *
     * @param other key of the line's other axis; empty when it has none
     * @return first to last
     */
    public List<String> columns(String other) {
        return columns.stream().map(column -> column.replace("*", other)).toList();
    }
}
