package org.benchmetre.page;

import java.util.List;
import org.benchmetre.budget.CellRef;

/**
 * A row of a table.
 *
 * @param heading a heading that stands above it, or the empty text
 * @param label words that name it where no cell does; the empty text where the table's label column names it
 * @param index the row of the axis, from 0; -1 for a row of single figures
 * @param cells for a row of single figures one cell for each column, null where the column has none; else empty
 * @param tone how loud it is
 * @param hiddenWhileNothing whether it is folded away where all its numbers are zero as written
 */
public record TableRow(
        String heading, String label, int index, List<CellRef> cells, Tone tone, boolean hiddenWhileNothing) {

    /** Keeps the list as it is; its cells may be null. */
    public TableRow {
        cells = java.util.Collections.unmodifiableList(new java.util.ArrayList<>(cells));
    }

    /**
     * A row of the axis.
     *
     * @param index from 0
     * @return the row
     */
    public static TableRow at(int index) {
        return new TableRow("", "", index, List.of(), Tone.PLAIN, false);
    }

    /**
     * A row of single figures, which is no row of the axis.
     *
     * @param label words that name it
     * @param cells one for each column, null where the column has none
     * @return the row
     */
    public static TableRow single(String label, List<CellRef> cells) {
        return new TableRow("", label, -1, cells, Tone.PLAIN, false);
    }

    /**
     * The same row as a sum.
     *
     * @return under a rule
     */
    public TableRow total() {
        return new TableRow(heading, label, index, cells, Tone.TOTAL, false);
    }

    /**
     * The same row under a heading of its own.
     *
     * @param words the heading
     * @return the row
     */
    public TableRow under(String words) {
        return new TableRow(words, label, index, cells, tone, hiddenWhileNothing);
    }

    /**
     * The same row, folded away where all its numbers are zero as written.
     *
     * @return the row
     */
    public TableRow ifAny() {
        return new TableRow(heading, label, index, cells, tone, true);
    }
}
