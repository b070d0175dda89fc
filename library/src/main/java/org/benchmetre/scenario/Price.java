package org.benchmetre.scenario;

/**
 * One row of a price list.
 *
 * @param item key of the item
 * @param pack units in a pack, above 0
 * @param unit the item's unit as text
 * @param price money per pack, at least 0, in the currency
 * @param year the year of the price, 1990 to 2100
 * @param source where the price comes from; may be empty
 * @param currency ISO 4217 code; empty means the scenario's own
 * @param row the row itself
 */
public record Price(
        String item, double pack, String unit, double price, int year, String source, String currency, Row row) {}
