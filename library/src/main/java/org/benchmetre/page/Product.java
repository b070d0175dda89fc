package org.benchmetre.page;

/**
 * A law of a table: in each row of its axis the quantity times the price is the value, to the digits that are printed.
 * {@link PrintedDigits} says how many digits that takes.
 *
 * @param quantity how much
 * @param price for one of it
 * @param value what it comes to
 */
public record Product(Column quantity, Column price, Column value) {}
