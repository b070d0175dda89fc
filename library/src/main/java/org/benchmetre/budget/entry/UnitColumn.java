package org.benchmetre.budget.entry;

import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import org.benchmetre.budget.unit.Unit;

/**
 * The column that holds the unit of a number beside it, such as years or crops of a life. The unit may stand behind the number too, in any
 * spelling, or be another one that converts to one of the column.
 *
 * @param units what the column may hold
 */
record UnitColumn(List<String> units) {

    private static final int LISTED = 20;

    private static final Pattern PER = Pattern.compile("(?i)^(?:per\\s+|/\\s*)");

    /**
     * What was typed, in a unit of the column.
     *
     * @param number the number
     * @param unit of the column
     */
    record Measured(double number, Unit unit) {}

    /** Reads a unit behind a number; empty when the column does not hold it and it converts to none of those that it holds. */
    Optional<Measured> read(double number, String typed) {
        String word = PER.matcher(typed).replaceFirst("");
        String kept = UnitWord.kept(word, units);
        if (units.contains(kept)) {
            return Optional.of(new Measured(number, Unit.parse(kept)));
        }
        return word.equals(typed) ? converted(number, word) : Optional.empty();
    }

    private Optional<Measured> converted(double number, String word) {
        return units.stream()
                .flatMap(unit -> UnitWord.converted(number, word, unit).stream()
                        .map(value -> new Measured(value, Unit.parse(unit))))
                .findFirst();
    }

    /** What is expected, in words. */
    String expected() {
        return units.size() > LISTED ? "a unit that goes with that of its row" : "one of " + String.join(", ", units);
    }
}
