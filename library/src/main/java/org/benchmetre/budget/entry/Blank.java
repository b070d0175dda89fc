package org.benchmetre.budget.entry;

/** What a blank cell means. */
public enum Blank {
    /** It must be filled. */
    REFUSED,
    /** It counts as nothing: 0, or the empty text. */
    NOTHING,
    /** The documented default of the cell. */
    DEFAULT
}
