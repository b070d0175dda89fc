package org.benchmetre.budget;

/** Where lines stand in a spreadsheet. The workbook knows; the formula printer asks. */
public interface Addresses {

    /**
     * How a formula refers to one cell of a line: a defined name for a single value, else an absolute reference with its sheet.
     *
     * @param line the line
     * @param cell which of its cells, from 0
     * @return spreadsheet text
     */
    String cell(Line line, int cell);

    /**
     * How a formula refers to a line along one axis.
     *
     * @param line the line
     * @param axis the axis to run along
     * @param position where the line's other axis stands
     * @return spreadsheet text of a range
     */
    String range(Line line, Axis axis, Position position);

    /**
     * Whether a line runs down the sheet along an axis, or across.
     *
     * @param line the line
     * @param axis one of its axes
     * @return true for down
     */
    boolean isDown(Line line, Axis axis);
}
