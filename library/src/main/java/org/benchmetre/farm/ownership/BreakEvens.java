package org.benchmetre.farm.ownership;

import static org.benchmetre.budget.Formulas.and;
import static org.benchmetre.budget.Formulas.one;
import static org.benchmetre.budget.Formulas.onlyWhen;

import org.benchmetre.budget.Formula;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.unit.Unit;
import org.benchmetre.farm.crop.Harvest;
import org.benchmetre.farm.layout.Planting;

/**
 * Prices and yields at which receipts just cover a cost. What moves with yield moves: price = (cost that stays / kg + what a kg takes)
 * / (1 - commission); yield = cost that stays over what a further kilogram leaves.
 *
 * @param harvest fruit and receipts
 * @param moves what moves with yield
 * @param planting plants
 */
record BreakEvens(Harvest harvest, MovesWithYield moves, Planting planting) {

    static final Unit PER_KG = Unit.parse("money/kg");
    static final Unit GRAMS = Unit.parse("g/(plant crop)");

    /** The average price, money/kg, that covers a yearly cost. */
    Formula price(Line cost) {
        Formula stays = cost.minus(moves.total);
        return onlyWhen(
                harvest.yield.isPositive(),
                stays.over(harvest.yield).plus(moves.perKg).over(one().minus(harvest.commission)),
                "no yield");
    }

    /** The fruit per plant and crop, g, that covers a yearly cost. */
    Formula fruit(Line cost) {
        Formula needed = cost.minus(moves.total)
                .over(moves.left)
                .over(planting.plantCount)
                .over(harvest.cropsPerYear)
                .over(harvest.yieldShare)
                .over(harvest.kept)
                .in(GRAMS);
        return onlyWhen(
                and(moves.left.isPositive(), harvest.yield.isPositive(), harvest.kept.isPositive()),
                needed,
                "no yield, or a kg leaves nothing");
    }
}
