package org.benchmetre.budget;

import java.io.Serializable;
import org.benchmetre.budget.entry.Origin;
import org.benchmetre.budget.entry.Refusal;

/**
 * A value that a budget does not take.
 *
 * @param line the entry
 * @param origin where the value comes from
 * @param refusal what was found and what is expected
 */
public record Refused(Line line, Origin origin, Refusal refusal) implements Serializable {

    /**
     * The refusal as a sentence.
     *
     * @return with the place where there is one
     */
    public String message() {
        String place = origin.toString();
        String words = refusal.words() + ".";
        return place.isEmpty() ? Character.toUpperCase(words.charAt(0)) + words.substring(1) : place + ": " + words;
    }
}
