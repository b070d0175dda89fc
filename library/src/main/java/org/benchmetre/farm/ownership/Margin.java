package org.benchmetre.farm.ownership;

import static org.benchmetre.budget.Formulas.onlyWhen;

import org.benchmetre.budget.Line;
import org.benchmetre.budget.ScheduleBuilder;
import org.benchmetre.budget.unit.Unit;
import org.benchmetre.farm.crop.Harvest;
import org.benchmetre.farm.layout.House;
import org.benchmetre.farm.layout.Planting;

/** What is left: receipts less yearly cost, a plain difference. Break-evens are those of {@link BreakEvens}. */
public final class Margin {

    /** What is left in a year, money/a. */
    public final Line total;

    /**
     * Declares the lines.
     *
     * @param s the schedule of results for a reader
     * @param harvest fruit and receipts
     * @param yearly yearly cost
     * @param moves what moves with yield
     * @param house benches
     * @param planting plants
     */
    public Margin(
            ScheduleBuilder s,
            Harvest harvest,
            YearlyCost yearly,
            MovesWithYield moves,
            House house,
            Planting planting) {
        Unit moneyPerKg = Unit.parse("money/kg");
        total = s.line("margin_total", "Margin, in total", Unit.parse("money/a"), harvest.receipts.minus(yearly.total));
        s.line(
                "margin_per_metre",
                "Margin per metre of bench",
                Unit.parse("money/(m a)"),
                total.over(house.benchMetres));
        s.line("margin_per_plant", "Margin per plant", Unit.parse("money/(plant a)"), planting.each(total));
        s.line("margin_per_area", "Margin per m² of floor", Unit.parse("money/(m2 a)"), total.over(house.houseArea));
        s.line(
                "margin_per_kg",
                "Margin per kg of marketable fruit",
                moneyPerKg,
                onlyWhen(harvest.yield.isPositive(), total.over(harvest.yield), "no yield"));
        s.line(
                "stays_with_yield_total",
                "Yearly cost that does not move with yield",
                Unit.parse("money/a"),
                yearly.total.minus(moves.total));
        BreakEvens evens = new BreakEvens(harvest, moves, planting);
        s.line("break_even_price", "Break-even price", moneyPerKg, evens.price(yearly.total), BreakEvens.PRICE_RULE);
        s.line(
                "break_even_yield",
                "Break-even yield, fruit per plant and crop",
                BreakEvens.GRAMS,
                evens.fruit(yearly.total),
                BreakEvens.FRUIT_RULE);
    }
}
