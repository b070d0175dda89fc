package org.benchmetre.scenario;

import java.util.Map;
import java.util.Optional;
import org.benchmetre.budget.unit.Unit;
import org.benchmetre.budget.unit.UnitException;

/** Reads units from cells. */
public final class Units {

    private Units() {}

    /**
     * The unit written in a cell.
     *
     * @param row the row
     * @param column the column's name in lower case
     * @param names further names and the units they stand for, see {@link Unit#parse(String, Map)}
     * @param faults where a blank cell or an unknown or badly written unit is reported
     * @return the unit; empty after a fault
     */
    public static Optional<Unit> read(Row row, String column, Map<String, Unit> names, Faults faults) {
        return parse(row.text(column), row.place(column), names, faults);
    }

    /**
     * The unit written in a text.
     *
     * @param text the unit as written
     * @param place where the text stands
     * @param names further names and the units they stand for, see {@link Unit#parse(String, Map)}
     * @param faults where an empty text or an unknown or badly written unit is reported
     * @return the unit; empty after a fault
     */
    public static Optional<Unit> parse(String text, Place place, Map<String, Unit> names, Faults faults) {
        if (Words.trimmed(text).isEmpty()) {
            faults.add(place, "nothing", "a unit (a plain number has the unit 1)");
            return Optional.empty();
        }
        try {
            return Optional.of(Unit.parse(text, names));
        } catch (UnitException e) {
            faults.add(place, Fault.quoted(text), "a unit (" + withoutStop(e.getMessage()) + ")");
            return Optional.empty();
        }
    }

    private static String withoutStop(String sentence) {
        return sentence.endsWith(".") ? sentence.substring(0, sentence.length() - 1) : sentence;
    }
}
