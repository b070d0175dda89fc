package org.benchmetre.budget;

/** What a figure's cell may hold. */
public enum Kind {
    /** A finite number. */
    NUMBER,
    /** A number, or a short text that says why there is none; barred from arithmetic but for {@link Formula#numberOr}. */
    OPTIONAL,
    /** Yes or no, held as 1 or 0; legal only as a condition. */
    TRUTH,
    /** A text: a key, a label or a choice. Compared without regard to case; the empty text is a blank cell. */
    TEXT
}
