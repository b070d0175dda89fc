package org.benchmetre.farm.ownership;

import org.benchmetre.budget.BudgetBuilder;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.ScheduleBuilder;
import org.benchmetre.farm.input.Sheets;
import org.benchmetre.farm.layout.Planting;

/** Prices and yields at which receipts just cover operating costs, and total cost; see {@link MovesWithYield}. */
final class BreakEvens {

    private final ScheduleBuilder s;
    private final MovesWithYield moves;
    private final Planting planting;

    BreakEvens(BudgetBuilder b, BudgetItems items, Line operating, Line total, Planting planting) {
        this.moves = items.moves();
        this.planting = planting;
        s = b.schedule(Sheets.BUDGET, "Break-evens: picking, packing and selling move with yield");
        price("break_even_price_operating", "Price that covers operating costs", operating);
        price("break_even_price_total", "Price that covers total cost", total);
        fruit("break_even_yield_operating", "Fruit per plant and crop that covers operating costs", operating);
        fruit("break_even_yield_total", "Fruit per plant and crop that covers total cost", total);
    }

    private void price(String id, String label, Line cost) {
        s.line(id, label, MovesWithYield.PER_KG, moves.priceThatCovers(cost.minus(moves.total)));
    }

    private void fruit(String id, String label, Line cost) {
        s.line(id, label, MovesWithYield.GRAMS, moves.fruitThatCovers(cost.minus(moves.total), planting));
    }
}
