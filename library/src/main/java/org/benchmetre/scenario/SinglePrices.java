package org.benchmetre.scenario;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import org.benchmetre.budget.Budget;
import org.benchmetre.budget.Layer;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.entry.Given;
import org.benchmetre.budget.unit.Unit;
import org.benchmetre.budget.unit.UnitException;

/**
 * Prices of items that are no rows of a table but single entries in money for a unit, such as salts by the kilogram: a row of a price list
 * says how many units a pack holds and what it costs. One year stands for all of them: the oldest of the list.
 */
final class SinglePrices {

    private final Budget budget;
    private final Map<String, Line> prices = new HashMap<>();
    private double oldest = Double.POSITIVE_INFINITY;

    SinglePrices(Budget budget) {
        this.budget = budget;
        budget.lines()
                .forEach(line -> budget.entry(line)
                        .map(entry -> entry.meaning().item())
                        .filter(item -> !item.isEmpty())
                        .ifPresent(item -> prices.put(item, line)));
    }

    /** The entry that holds the price of an item. */
    Optional<Line> of(String item) {
        return Optional.ofNullable(prices.get(item));
    }

    /** What the price is for, such as a kilogram. */
    static Unit per(Line price) {
        return Unit.MONEY.over(price.unit());
    }

    /** How many of what the price is for a unit holds; empty where the unit is none or measures something else. */
    static Optional<Double> held(Line price, String unit) {
        try {
            Unit typed = Unit.parse(unit);
            Unit per = per(price);
            return typed.sameDimension(per) ? Optional.of(Unit.apply(1, typed.factorTo(per))) : Optional.empty();
        } catch (UnitException e) {
            return Optional.empty();
        }
    }

    /**
     * Puts a price, and its year where no older one stands there.
     *
     * @param layer where it is put
     * @param price the entry
     * @param given its value
     * @param year when it was asked
     */
    void put(Layer layer, Line price, Given given, Given year) {
        layer.put(price, 0, given);
        if (year.number() < oldest) {
            oldest = year.number();
            layer.put(budget.line(budget.entry(price).orElseThrow().meaning().year()), 0, year);
        }
    }
}
