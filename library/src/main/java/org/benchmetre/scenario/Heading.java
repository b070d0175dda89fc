package org.benchmetre.scenario;

/**
 * What a scenario says of itself, beside its entries.
 *
 * @param title the words on top of every sheet
 * @param currency ISO 4217 code of all money
 * @param crop whose documented defaults stand where the scenario says nothing
 */
public record Heading(String title, String currency, String crop) {}
