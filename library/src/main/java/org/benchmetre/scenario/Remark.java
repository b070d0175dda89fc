package org.benchmetre.scenario;

import java.util.Objects;
import org.benchmetre.budget.entry.Quoted;

/**
 * A warning or a note about the input: worth saying, but the scenario can be used.
 *
 * @param place where it stands
 * @param text what is said, in words that follow the place and a colon
 */
public record Remark(Place place, String text) {

    /**
     * Checks that no part is missing.
     *
     * @param place where it stands
     * @param text what is said
     */
    public Remark {
        Objects.requireNonNull(place, "place");
        Objects.requireNonNull(text, "text");
    }

    /**
     * The remark as one whole sentence, without control characters.
     *
     * @return for example {@code materials.csv, row 1, column prise: nothing reads this column; did you mean price?}
     */
    public String message() {
        return Quoted.visible(Phrases.sentence(place + ": " + text));
    }
}
