package org.benchmetre.farm.profile;

import org.benchmetre.budget.unit.Unit;

/**
 * Something known of a crop that is no default of an entry.
 *
 * @param value a number, NaN for what is told in words alone
 * @param unit its unit as people write it
 * @param source what is known and where it comes from
 */
public record Fact(double value, String unit, String source) {

    static Fact of(ProfileRow row) {
        return new Fact(row.number("value"), row.text("unit"), row.text("source"));
    }

    /**
     * The number.
     *
     * @param line the unit it is wanted in
     * @return in that unit
     */
    public double in(Unit line) {
        return Unit.parse(unit).convertLevel(value, line);
    }
}
