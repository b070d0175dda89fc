package org.benchmetre.scenario;

import java.util.Objects;
import org.benchmetre.budget.Budget;
import org.benchmetre.budget.Refused;
import org.benchmetre.budget.entry.Origin;
import org.benchmetre.budget.entry.Quoted;

/**
 * Where something stands in the input: a file, one of its rows, one of its columns.
 *
 * @param file the file's name without its folder
 * @param row the row as a spreadsheet program numbers it, from 1; 0 is the whole file
 * @param column the column's name as the header gives it, trimmed and in lower case; empty is the whole row
 */
public record Place(String file, int row, String column) {

    private static final int LONGEST_COLUMN = 60;
    private static final int LONGEST_TYPED = 160;

    /**
     * Checks the parts.
     *
     * @param file the name of a file
     * @param row 0 or more
     * @param column the name of a column, or empty
     * @throws IllegalArgumentException when the row is negative
     */
    public Place {
        Objects.requireNonNull(file, "file");
        Objects.requireNonNull(column, "column");
        if (row < 0) {
            throw new IllegalArgumentException("A row is 1 or more, or 0 for the whole file; it was " + row + ".");
        }
    }

    /**
     * The whole of a file.
     *
     * @param file the file's name
     * @return its place
     */
    public static Place wholeFile(String file) {
        return new Place(file, 0, "");
    }

    /**
     * Where a refused value comes from.
     *
     * @param refused what a budget does not take
     * @param budget the budget
     * @return the cell it was read from; the file where the entry is kept when it is the default that is refused
     */
    public static Place of(Refused refused, Budget budget) {
        boolean said = !refused.origin().equals(Origin.DEFAULT);
        return said
                ? of(refused.origin())
                : wholeFile(budget.entry(refused.line()).orElseThrow().home().table());
    }

    /**
     * Where a value comes from, as a place.
     *
     * @param origin a cell of a file, a setting, a sheet
     * @return its place
     */
    public static Place of(Origin origin) {
        return origin instanceof Origin.File cell
                ? new Place(cell.file(), cell.row(), cell.column())
                : wholeFile(origin.toString());
    }

    /**
     * A place that is no file but something typed.
     *
     * @param what what it is, such as setting
     * @param typed as it was typed; cut where it is long
     * @return its place
     */
    public static Place of(String what, String typed) {
        return wholeFile(what + " " + Phrases.cut(typed, LONGEST_TYPED));
    }

    /** The place in words, such as {@code materials.csv, row 7, column price}; control characters are escaped. */
    @Override
    public String toString() {
        return words(row == 0 ? "" : ", row " + row);
    }

    /** The place with other words for the row. */
    String words(String rows) {
        return Quoted.visible(
                file + rows + (column.isEmpty() ? "" : ", column " + Phrases.cut(column, LONGEST_COLUMN)));
    }
}
