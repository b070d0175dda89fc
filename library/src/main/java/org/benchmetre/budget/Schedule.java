package org.benchmetre.budget;

import java.io.Serializable;
import java.util.List;

/**
 * A table of lines that share rows or periods, in the order a reader meets them. Every line of a budget stands in exactly one.
 *
 * @param sheet the sheet it belongs to
 * @param title heading above the table
 * @param note a sentence or two under the heading; may be empty
 * @param lines the lines; how they lie on a page is the page's to say
 */
public record Schedule(String sheet, String title, String note, List<Line> lines) implements Serializable {

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
}
