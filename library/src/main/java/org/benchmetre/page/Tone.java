package org.benchmetre.page;

/** How loud a sentence or a row is. What it looks like is for whoever draws it to say; it is never colour alone. */
public enum Tone {
    /** The sentence that answers the page's question. */
    LEAD,
    /** As most are. */
    PLAIN,
    /** Something is missing or wrong. */
    WARNING,
    /** A remark, such as how to cite a table. */
    FAINT,
    /** A sum under a rule. */
    TOTAL
}
