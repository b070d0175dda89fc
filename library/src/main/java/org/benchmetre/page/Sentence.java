package org.benchmetre.page;

import org.benchmetre.budget.Kind;
import org.benchmetre.budget.Line;

/**
 * A live sentence.
 *
 * @param text a single text line; where it is empty, nothing is said
 * @param tone how loud it is
 */
public record Sentence(Line text, Tone tone) {

    /** Refuses what is no single text. */
    public Sentence {
        if (text.kind() != Kind.TEXT || !text.axes().isEmpty()) {
            throw new IllegalArgumentException("A sentence is a single text, but found line " + text + ".");
        }
    }
}
