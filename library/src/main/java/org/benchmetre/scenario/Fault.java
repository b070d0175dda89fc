package org.benchmetre.scenario;

import java.util.Objects;
import org.benchmetre.budget.entry.Quoted;

/**
 * Something in the input that keeps a scenario from being used.
 *
 * @param place where it stands
 * @param found what stands there, in words that follow "found": {@code "abc"} in its quotation marks, {@code nothing},
 *     {@code 8 fields}
 * @param expected what should stand there, in words that follow "expected", with bounds and unit: {@code a number of at
 *     least 0 (EUR per pack)}
 */
public record Fault(Place place, String found, String expected) {

    /**
     * Checks that no part is missing.
     *
     * @param place where it stands
     * @param found what stands there
     * @param expected what should stand there
     */
    public Fault {
        Objects.requireNonNull(place, "place");
        Objects.requireNonNull(found, "found");
        Objects.requireNonNull(expected, "expected");
    }

    /**
     * The fault as one whole sentence, without control characters.
     *
     * @return for example {@code materials.csv, row 7, column price: found "abc", expected a number of at least 0 (EUR
     *     per pack).}
     */
    public String message() {
        return sentence(place.toString());
    }

    /** The sentence with other words for the place, where several rows have the same fault. */
    String sentence(String where) {
        return Quoted.visible(Phrases.sentence(where + ": found " + found + ", expected " + expected));
    }
}
