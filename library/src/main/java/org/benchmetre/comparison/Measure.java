package org.benchmetre.comparison;

import java.util.Locale;
import org.benchmetre.budget.unit.Unit;

/**
 * By what money and fruit of a year are divided, so that houses of different size can be held against each other. A line has one unit,
 * so that a comparison is by one measure.
 */
public enum Measure {
    /** By the metre of bench. */
    METRE("per metre of bench", "bench_metres", "m", "money/(m a)"),
    /** By the plant that stands at one time. */
    PLANT("per plant", "plant_count", "plant", "money/(plant a)"),
    /** By the square metre of floor under the house. */
    AREA("per m² of floor", "house_area", "m2", "money/(m2 a)"),
    /** By the kilogram of marketable fruit. */
    KG("per kg of marketable fruit", "yield_total", "kg/a", "money/kg");

    private final String words;
    private final String line;
    private final Unit unit;
    private final Unit money;

    Measure(String words, String line, String unit, String money) {
        this.words = words;
        this.line = line;
        this.unit = Unit.parse(unit);
        this.money = Unit.parse(money);
    }

    /**
     * The measure in words.
     *
     * @return for example {@code per m² of floor}
     */
    public String words() {
        return words;
    }

    /**
     * The unit of yearly money by this measure.
     *
     * @return for example {@code money/(m2 a)}
     */
    public Unit money() {
        return money;
    }

    /** The line of a scenario that says how many metres, plants, square metres or kilograms a year it has. */
    String line() {
        return line;
    }

    /** The unit of that line. */
    Unit unit() {
        return unit;
    }

    /** The name as it is typed, in lower case. */
    @Override
    public String toString() {
        return name().toLowerCase(Locale.ROOT);
    }
}
