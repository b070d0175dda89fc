package org.benchmetre.page;

import java.util.ArrayList;
import java.util.List;
import org.benchmetre.budget.Axis;
import org.benchmetre.budget.CellRef;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.Position;

/**
 * A column of a table: a line along the rows of the table, or one row of its other axis.
 *
 * @param heading words above, without the unit, which whoever draws it adds where all cells have one
 * @param line along the rows of the table
 * @param fixed where the other axis of the line stands, if it has one
 * @param typed whether the line is an entry that has its home here
 */
public record Column(String heading, Line line, Position fixed, boolean typed) {

    /**
     * A column of a line.
     *
     * @param heading words above, without the unit
     * @param line along the rows of the table alone
     * @return the column
     */
    public static Column of(String heading, Line line) {
        return new Column(heading, line, Position.NONE, false);
    }

    /**
     * A column of an entry that is typed here and nowhere else.
     *
     * @param heading words above, without the unit
     * @param line an entry along the rows of the table alone
     * @return the column
     */
    public static Column typed(String heading, Line line) {
        return new Column(heading, line, Position.NONE, true);
    }

    /**
     * A column for one row of the other axis of a line.
     *
     * @param heading words above, without the unit
     * @param line along the rows of the table and another axis
     * @param other the other axis
     * @param index its row, from 0
     * @return the column
     */
    public static Column of(String heading, Line line, Axis other, int index) {
        return new Column(heading, line, Position.NONE.with(other, index), false);
    }

    /**
     * The cell in a row of the table.
     *
     * @param rows the axis of the table
     * @param row from 0
     * @return the cell
     */
    public CellRef cell(Axis rows, int row) {
        return new CellRef(line, line.cellAt(fixed.with(rows, row)));
    }

    /**
     * All cells of the column.
     *
     * @param rows the axis of the table
     * @return one for each row
     */
    public List<CellRef> cells(Axis rows) {
        List<CellRef> cells = new ArrayList<>();
        for (int row = 0; row < rows.size(); row++) {
            cells.add(cell(rows, row));
        }
        return cells;
    }
}
