package org.benchmetre.page;

import org.benchmetre.budget.Line;

/**
 * A single figure in a list.
 *
 * @param label what a reader sees
 * @param line a single value
 * @param tone how loud it is
 */
public record FigureRow(String label, Line line, Tone tone) {

    /** Refuses a line with an axis. */
    public FigureRow {
        if (!line.axes().isEmpty()) {
            throw new IllegalArgumentException("A row of single figures wants a single value, but found " + line + ".");
        }
    }

    /**
     * A figure under its own label.
     *
     * @param line a single value
     * @return the row
     */
    public static FigureRow of(Line line) {
        return new FigureRow(line.label(), line, Tone.PLAIN);
    }

    /**
     * A figure under other words.
     *
     * @param label what a reader sees
     * @param line a single value
     * @return the row
     */
    public static FigureRow of(String label, Line line) {
        return new FigureRow(label, line, Tone.PLAIN);
    }

    /**
     * A sum under a rule.
     *
     * @param label what a reader sees
     * @param line a single value
     * @return the row
     */
    public static FigureRow total(String label, Line line) {
        return new FigureRow(label, line, Tone.TOTAL);
    }
}
