package org.benchmetre.scenario;

import java.util.List;

/**
 * Single values that decide which lines there are.
 *
 * @param words rows that are no entries, but words
 * @param runs entries whose number says how long a run of periods is
 */
public record Deciding(List<WordChoice> words, List<EntryRun> runs) {

    /** None. */
    public static final Deciding NONE = new Deciding(List.of(), List.of());

    /** Keeps its own copy. */
    public Deciding {
        words = List.copyOf(words);
        runs = List.copyOf(runs);
    }
}
