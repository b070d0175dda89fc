package org.benchmetre;

import java.util.Locale;
import org.benchmetre.budget.run.Figures;
import org.benchmetre.budget.unit.Unit;

/** By what money and fruit of a year are divided, so that houses of different size can be held against each other. */
public enum Measure {
    /** By the metre of bench. */
    METRE("per metre of bench", "bench_metres", "m"),
    /** By the plant that stands at one time. */
    PLANT("per plant", "plant_count", "plant"),
    /** By the square metre of floor under the house. */
    AREA("per m² of floor", "house_area", "m2"),
    /** By the kilogram of marketable fruit. */
    KG("per kg of marketable fruit", "yield_total", "kg/a");

    private final String words;
    private final String line;
    private final Unit unit;

    Measure(String words, String line, String unit) {
        this.words = words;
        this.line = line;
        this.unit = Unit.parse(unit);
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
     * @param currency code that stands for money
     * @return for example {@code USD/(m2 a)}
     */
    public String unitOfMoney(String currency) {
        return Unit.parse(this == KG ? "money/kg" : "money/(" + unit + " a)").display(currency);
    }

    /** The unit of plants by this measure. */
    Unit unitOfPlants() {
        return Unit.parse("plant/" + unit);
    }

    /** How many metres, plants, square metres or kilograms a year a scenario has. */
    double size(Figures figures) {
        return figures.number(line);
    }

    /** The name as it is typed, in lower case. */
    @Override
    public String toString() {
        return name().toLowerCase(Locale.ROOT);
    }
}
