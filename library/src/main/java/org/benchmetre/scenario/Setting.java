package org.benchmetre.scenario;

import java.util.Optional;
import org.benchmetre.budget.Budget;
import org.benchmetre.budget.CellRef;
import org.benchmetre.budget.Layer;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.entry.Given;
import org.benchmetre.budget.entry.Origin;
import org.benchmetre.budget.entry.Quoted;
import org.benchmetre.budget.entry.Typed;

/**
 * One change to one entry cell, as people write it: {@code plant_spacing=6in}, {@code material_price[tape]=0.12},
 * {@code irrigation_choice=tape}. A number without a unit is in the unit the entry was given in; with one it is converted. The
 * scenario's currency code stands for money in units.
 *
 * @param address the cell
 * @param value what follows the first equals sign, without spaces around it; empty for a blank cell
 */
public record Setting(Address address, String value) {

    private static final String SOURCE = "changed for this run";

    /**
     * Reads a setting.
     *
     * @param text for example {@code plant_spacing=6 in}
     * @return the setting
     * @throws SettingSyntaxException when there is no equals sign or no address before it
     */
    public static Setting parse(String text) {
        int equals = text.indexOf('=');
        if (equals < 0) {
            throw new SettingSyntaxException("A setting is line=value, line[key]=value or line[key;key]=value, such as"
                    + " plant_spacing=6in; it was " + Quoted.text(text) + ".");
        }
        return new Setting(
                Address.parse(text.substring(0, equals)),
                text.substring(equals + 1).trim());
    }

    /**
     * What a fault names as the place of this setting.
     *
     * @return the word setting and the setting itself
     */
    public Place place() {
        return Place.of("setting", toString());
    }

    /**
     * The cell that is changed.
     *
     * @param budget the budget it stands in
     * @param faults where an unknown line or key, or a line that is no entry, is reported
     * @return the cell; empty after a fault
     */
    public Optional<CellRef> cell(Budget budget, Faults faults) {
        return address.entryIn(budget, place(), faults);
    }

    /**
     * The value as the cell takes it. Rules between cells are looked at when all settings are known.
     *
     * @param budget the budget the cell stands in
     * @param below what lies over the budget already
     * @param cell an entry cell of it
     * @param faults where a value that the entry does not take is reported
     * @return the value; empty after a fault
     */
    Optional<Given> given(Budget budget, Layer below, CellRef cell, Faults faults) {
        Line line = cell.line();
        Given now = below.over(budget, line, cell.cell());
        Typed typed = Typed.of(value, now.filled() ? now.typedIn() : line.unit());
        return budget.gate()
                .accept(line, cell.cell(), typed)
                .orElse(no -> faults.add(place(), no.found(), no.expected()))
                .map(given ->
                        given.from(SOURCE).at(new Origin.Setting(toString())).usually(now.range()));
    }

    /** The setting as {@link #parse} reads it back. */
    @Override
    public String toString() {
        return address + "=" + value;
    }
}
