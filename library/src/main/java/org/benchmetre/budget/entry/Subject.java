package org.benchmetre.budget.entry;

import org.benchmetre.budget.unit.Unit;

/**
 * The cell a value is meant for, as a refusal names it.
 *
 * @param label what a reader sees
 * @param address its address, such as {@code material_price[tape]}
 * @param unit unit of its line
 * @param currency ISO 4217 code of all money
 */
public record Subject(String label, String address, Unit unit, String currency) {

    String name() {
        return " for " + label + " (" + address + ")";
    }

    String shown(Unit in) {
        return in.equals(Unit.ONE) ? "" : in.display(currency);
    }
}
