package org.benchmetre.scenario;

import java.util.List;
import org.benchmetre.budget.entry.Quoted;
import org.benchmetre.budget.entry.TextForm;

/**
 * One row of a table, as text. What its cells mean is for entries to say; only keys, which are structure, are read here.
 */
public final class Row {

    private final CsvTable table;
    private final int row;
    private final List<String> cells;

    Row(CsvTable table, int row, List<String> cells) {
        this.table = table;
        this.row = row;
        this.cells = List.copyOf(cells);
    }

    /**
     * The number a spreadsheet program shows beside the row.
     *
     * @return 2 or more when the header is the first line of the file
     */
    public int rowNumber() {
        return row;
    }

    /**
     * Where a cell stands.
     *
     * @param column name in lower case; empty for the whole row
     * @return its place, whether or not the column exists
     */
    public Place place(String column) {
        return new Place(table.file(), row, column);
    }

    /**
     * The text of a cell.
     *
     * @param column name in lower case
     * @return trimmed text; empty when the cell is blank, or the row or the header ends before it
     */
    public String text(String column) {
        return table.cell(cells, column);
    }

    /**
     * Whether a cell has nothing in it but spaces.
     *
     * @param column name in lower case
     * @return true also when the column does not exist
     */
    public boolean isBlank(String column) {
        return text(column).isEmpty();
    }

    /**
     * A key: letters a to z, digits and underscores, beginning with a letter; capitals are folded to lower case.
     *
     * @param column name in lower case
     * @param faults where a blank or badly formed key is reported
     * @return the key; empty after a fault
     */
    public String key(String column, Faults faults) {
        String key = Phrases.folded(text(column));
        if (!TextForm.OWN_KEY.isFit(key)) {
            return refused(column, TextForm.OWN_KEY.expected(), faults);
        }
        return key;
    }

    /**
     * Whether numbers of this file have a decimal comma.
     *
     * @return true for files with semicolons
     */
    public boolean decimalComma() {
        return table.decimalComma();
    }

    private String refused(String column, String expected, Faults faults) {
        faults.add(place(column), Quoted.text(text(column)), expected);
        return "";
    }
}
