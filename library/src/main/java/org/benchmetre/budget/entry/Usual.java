package org.benchmetre.budget.entry;

import java.io.Serializable;

/**
 * The documented default and usual range of an entry, and where they come from.
 *
 * @param range usual range and default of a number
 * @param text default of a text; empty when there is none
 * @param source a published source, or the words <i>common practice, no source</i>
 */
public record Usual(Plausible range, String text, String source) implements Serializable {

    /** Nothing known. */
    public static final Usual UNKNOWN = new Usual(Plausible.UNKNOWN, "", "");
}
