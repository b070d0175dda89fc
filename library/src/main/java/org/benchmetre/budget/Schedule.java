package org.benchmetre.budget;

import java.io.Serializable;
import java.util.List;

/**
 * A table of lines that share rows or periods, in the order a reader meets them. Every line of a budget stands in exactly one.
 *
 * @param sheet the sheet it belongs to
 * @param title heading above the table
 * @param note a sentence or two under the heading; may be empty
 * @param lines the lines: single values one below the other, lines along rows side by side, lines along periods one below the
 *     other, lines along two axes as blocks
 * @param roomBelow rows left free under the table, for a chart
 */
public record Schedule(String sheet, String title, String note, List<Line> lines, int roomBelow)
        implements Serializable {

    /** How the lines of a schedule lie on a sheet. */
    public enum Layout {
        /** Single values, one a row. */
        LIST,
        /** Lines along the rows of a table, one a column. */
        TABLE,
        /** Lines along periods, one a row. */
        PERIODS,
        /** Lines along two axes, a block each, one below the other. */
        BLOCKS
    }

    /** Refuses a mixture of axes and an empty table. */
    public Schedule {
        lines = List.copyOf(lines);
        if (lines.isEmpty()) {
            throw new FormulaException("Schedule " + title + " has no lines.");
        }
        for (Line line : lines) {
            if (!line.axes().equals(lines.get(0).axes())) {
                throw new FormulaException("Schedule " + title + " mixes lines along "
                        + lines.get(0).axes() + " with " + line + " along " + line.axes() + ".");
            }
        }
    }

    /**
     * The axes all lines share.
     *
     * @return none, one or two
     */
    public List<Axis> axes() {
        return lines.get(0).axes();
    }

    /**
     * How the lines lie on a sheet.
     *
     * @return the layout that fits the axes
     */
    public Layout layout() {
        return switch (axes().size()) {
            case 0 -> Layout.LIST;
            case 1 -> axes().get(0).isPeriods() ? Layout.PERIODS : Layout.TABLE;
            default -> Layout.BLOCKS;
        };
    }
}
