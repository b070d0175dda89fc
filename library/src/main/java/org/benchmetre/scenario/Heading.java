package org.benchmetre.scenario;

import java.util.LinkedHashMap;
import java.util.Map;

/**
 * What a scenario says of itself, beside its entries.
 *
 * @param title the words on top of every sheet
 * @param currency ISO 4217 code of all money
 * @param crop whose documented defaults stand where the scenario says nothing
 * @param choices words by name that decide which lines there are
 */
public record Heading(String title, String currency, String crop, Map<String, String> choices) {

    /** Keeps its own copy, in order. */
    public Heading {
        choices = new LinkedHashMap<>(choices);
    }
}
