package org.benchmetre.farm.crop;

import static org.benchmetre.budget.Formulas.lookup;

import org.benchmetre.budget.Formula;
import org.benchmetre.budget.Line;

/**
 * The kind of plant stock that is counted.
 *
 * @param stock the kinds
 * @param growth how each kind grows
 * @param key key of the kind that is counted
 */
public record ChosenStock(PlantStock stock, StockGrowth growth, Line key) {

    /**
     * Plants to buy.
     *
     * @return plants
     */
    public Formula bought() {
        return of(stock.bought);
    }

    /**
     * Plants that are set out.
     *
     * @return plants
     */
    public Formula setOut() {
        return of(stock.setOut);
    }

    /**
     * Weeks of a year in which it stands on the benches.
     *
     * @return weeks a year, wk/a
     */
    public Formula benchWeeks() {
        return of(growth.benchWeeks).times(growth.cropsPerYear);
    }

    /**
     * Weeks from order to delivery.
     *
     * @return weeks, wk
     */
    public Formula leadWeeks() {
        return of(growth.leadWeeks);
    }

    private Formula of(Line byKind) {
        return lookup(byKind, stock.key, key);
    }
}
