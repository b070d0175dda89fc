package org.benchmetre.budget.entry;

import java.util.Map;
import java.util.function.Supplier;
import org.benchmetre.budget.unit.Unit;

/**
 * The cell a value is meant for, as a refusal names it.
 *
 * @param label what a reader sees
 * @param address gives its address, such as {@code material_price[tape]}; asked for only where a value is refused
 * @param unit unit of its line
 * @param currency ISO 4217 code of all money
 */
public record Subject(String label, Supplier<String> address, Unit unit, String currency) {

    /**
     * A cell whose address is known.
     *
     * @param label what a reader sees
     * @param address its address
     * @param unit unit of its line
     * @param currency ISO 4217 code of all money
     */
    public Subject(String label, String address, Unit unit, String currency) {
        this(label, () -> address, unit, currency);
    }

    String name() {
        return " for " + label + " (" + address.get() + ")";
    }

    /** A unit as typed. Pieces are what the line counts. */
    Unit unit(String typed) {
        return UnitWord.isPieces(typed) && unit.isCount() ? unit : Unit.parse(typed, Map.of(currency, Unit.MONEY));
    }

    String shown(Unit in) {
        return in.equals(Unit.ONE) ? "" : in.display(currency);
    }
}
