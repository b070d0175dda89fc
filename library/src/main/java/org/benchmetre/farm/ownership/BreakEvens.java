package org.benchmetre.farm.ownership;

import static org.benchmetre.budget.Formulas.and;
import static org.benchmetre.budget.Formulas.one;
import static org.benchmetre.budget.Formulas.onlyWhen;

import org.benchmetre.budget.BudgetBuilder;
import org.benchmetre.budget.Formula;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.ScheduleBuilder;
import org.benchmetre.budget.unit.Unit;
import org.benchmetre.farm.crop.Harvest;
import org.benchmetre.farm.input.Sheets;
import org.benchmetre.farm.layout.Planting;

/**
 * Prices and yields at which receipts just cover operating costs, and total cost. What moves with yield moves: price = (cost that
 * stays / kg + what a kg takes) / (1 - commission); yield = cost that stays over what a further kilogram leaves.
 */
final class BreakEvens {

    private static final Unit PER_KG = Unit.parse("money/kg");
    private static final Unit GRAMS = Unit.parse("g/(plant crop)");

    private final ScheduleBuilder s;
    private final Harvest harvest;
    private final MovesWithYield moves;
    private final Planting planting;

    BreakEvens(BudgetBuilder b, BudgetItems items, Line operating, Line total, Planting planting) {
        this.harvest = items.harvest();
        this.moves = items.moves();
        this.planting = planting;
        s = b.schedule(Sheets.BUDGET, "Break-evens: picking, packing and selling move with yield");
        price("break_even_price_operating", "Price that covers operating costs", operating);
        price("break_even_price_total", "Price that covers total cost", total);
        fruit("break_even_yield_operating", "Fruit per plant and crop that covers operating costs", operating);
        fruit("break_even_yield_total", "Fruit per plant and crop that covers total cost", total);
    }

    private void price(String id, String label, Line cost) {
        Formula stays = cost.minus(moves.total);
        s.line(
                id,
                label,
                PER_KG,
                onlyWhen(
                        harvest.yield.isPositive(),
                        stays.over(harvest.yield).plus(moves.perKg).over(one().minus(harvest.commission)),
                        "no yield"));
    }

    private void fruit(String id, String label, Line cost) {
        Formula needed = cost.minus(moves.total)
                .over(moves.left)
                .over(planting.plantCount)
                .over(harvest.cropsPerYear)
                .over(harvest.yieldShare)
                .over(harvest.kept)
                .in(GRAMS);
        s.line(
                id,
                label,
                GRAMS,
                onlyWhen(
                        and(moves.left.isPositive(), harvest.yield.isPositive(), harvest.kept.isPositive()),
                        needed,
                        "no yield, or a kg leaves nothing"));
    }
}
