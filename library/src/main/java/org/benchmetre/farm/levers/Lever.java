package org.benchmetre.farm.levers;

import static org.benchmetre.budget.Formulas.joined;
import static org.benchmetre.budget.Formulas.shown;
import static org.benchmetre.budget.Formulas.text;

import org.benchmetre.budget.Formula;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.unit.Unit;

/**
 * An entry that decides much.
 *
 * @param named what a reader sees of it
 * @param entry a single entry
 * @param low the low end of its usual range, in its unit
 * @param high the high end
 */
record Lever(LeverList.Named named, Line entry, Formula low, Formula high) {

    private static final Unit PERCENT = Unit.parse("%");

    /** What a reader calls it. */
    String label() {
        return named.label();
    }

    private String unit(String currency) {
        return named.unit().isEmpty() ? entry.unit().display(currency) : named.unit();
    }

    /** Its usual range in words, with its unit. */
    Formula range(String currency) {
        return joined(end(low), text(" to "), end(high), text(" " + unit(currency)));
    }

    private Formula end(Formula bound) {
        Formula plain = bound.counting(Unit.ONE);
        return shown(named.isPercent() ? plain.in(PERCENT) : plain, named.decimals());
    }

    /** Whether it is the fruit of all crops. */
    boolean isFruit() {
        return name().equals(LeverList.FRUIT_OF_ONE) || name().equals(LeverList.FRUIT_OF_ALL);
    }

    /** Its name, by which one chooses it. */
    String name() {
        return entry.id();
    }
}
