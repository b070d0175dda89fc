package org.benchmetre.budget;

import java.io.Serializable;
import java.util.List;

/**
 * What may stand in an entry's cells, and where its documented default comes from.
 *
 * @param bounds hard bounds of a number
 * @param plausible usual range and default of a number
 * @param usualText documented default of a text; empty when there is none
 * @param source where range and default come from
 * @param allowed texts allowed, empty when any text is
 * @param keysOf the line whose filled keys are allowed, or null
 */
public record Entry(
        Bounds bounds, Plausible plausible, String usualText, String source, List<String> allowed, Line keysOf)
        implements Serializable {

    /** An entry that takes anything. */
    static final Entry ANY = new Entry(Bounds.ANY, Plausible.UNKNOWN, "", "", List.of(), null);

    /** Keeps its own copy of the list. */
    public Entry {
        allowed = List.copyOf(allowed);
    }

    Entry within(Bounds other) {
        return new Entry(other, plausible, usualText, source, allowed, keysOf);
    }

    Entry usually(Plausible other, String from) {
        return new Entry(bounds, other, usualText, from, allowed, keysOf);
    }

    Entry among(String usual, String from, List<String> texts, Line keys) {
        return new Entry(bounds, plausible, usual, from, texts, keys);
    }
}
