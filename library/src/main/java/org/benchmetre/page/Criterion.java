package org.benchmetre.page;

import org.benchmetre.budget.Line;

/**
 * A row of a table that has one column for each row of an axis.
 *
 * @param heading a heading that stands above it, or the empty text
 * @param label what a reader sees
 * @param line along the columns
 * @param tone how loud it is
 */
public record Criterion(String heading, String label, Line line, Tone tone) {

    /**
     * A plain row.
     *
     * @param label what a reader sees
     * @param line along the columns
     * @return the row
     */
    public static Criterion of(String label, Line line) {
        return new Criterion("", label, line, Tone.PLAIN);
    }

    /**
     * The same row under a heading.
     *
     * @param words the heading
     * @return the row
     */
    public Criterion under(String words) {
        return new Criterion(words, label, line, tone);
    }

    /**
     * The same row as a sum.
     *
     * @return under a rule
     */
    public Criterion total() {
        return new Criterion(heading, label, line, Tone.TOTAL);
    }
}
