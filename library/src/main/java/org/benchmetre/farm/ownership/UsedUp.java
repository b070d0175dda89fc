package org.benchmetre.farm.ownership;

import static org.benchmetre.budget.Formulas.number;

import org.benchmetre.budget.Formula;
import org.benchmetre.budget.unit.Unit;

/**
 * What is used up within a year: parts such as the film of one crop, laying and taking them out, plants of one crop. It is bought as
 * often as it is used up, stands among operating costs and carries interest on operating capital; what lasts longer recovers over its
 * life and stands among ownership costs.
 *
 * <pre>
 * U = (C - S) / n  where n is a year or less
 * U  used up, money/a     C  cost, money     S  salvage, money; negative when disposal costs     n  life, a
 * </pre>
 *
 * American Agricultural Economics Association, Commodity Costs and Returns Estimation Handbook, 2000, from memory; that inputs which
 * last are spread over their life: USDA ERS, comparison of former and new method of commodity costs and returns.
 *
 * @param parts what parts cost in a year
 * @param plants what plants cost in a year
 */
public record UsedUp(PartsYearly parts, PlantsYearly plants) {

    /** The longest life of what is used up. */
    static final Formula YEAR = number(1, Unit.parse("a"));

    /** Which things are used up, as a note of a line. */
    static final String RULE =
            "a life of a year or less: an operating input (Commodity Costs and Returns Estimation Handbook, 2000, from memory); "
                    + "what lasts is spread over its life (USDA ERS)";

    /** What one of cost comes to in a year, as a note of a line. */
    static final String EACH = "used up: 1 / life; else " + OwnershipRates.RECOVERED;

    /**
     * Parts and their labour for the chosen way.
     *
     * @return money a year
     */
    public Formula partsAndLabour() {
        return parts.usedUpTotal.plus(parts.usedUpLabour);
    }

    /**
     * The same by irrigation system.
     *
     * @return money a year, by way
     */
    public Formula partsAndLabourByWay() {
        return parts.wayUsedUp.plus(parts.wayUsedUpLabour);
    }
}
