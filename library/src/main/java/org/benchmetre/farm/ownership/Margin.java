package org.benchmetre.farm.ownership;

import static org.benchmetre.budget.Formulas.and;
import static org.benchmetre.budget.Formulas.one;
import static org.benchmetre.budget.Formulas.onlyWhen;

import org.benchmetre.budget.Formula;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.ScheduleBuilder;
import org.benchmetre.budget.unit.Unit;
import org.benchmetre.farm.crop.Harvest;
import org.benchmetre.farm.layout.House;
import org.benchmetre.farm.layout.Planting;

/**
 * What is left: receipts less yearly cost. Break-evens move what moves with
 * yield: the price at which nothing is left is (cost that stays / kg + what a kg takes) / (1 - commission); the yield is cost that stays
 * over what a further kilogram leaves.
 */
public final class Margin {

    /** What is left in a year. */
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
        s.line("margin_per_plant", "Margin per plant", Unit.parse("money/(plant a)"), total.over(planting.plantCount));
        s.line("margin_per_area", "Margin per m² of floor", Unit.parse("money/(m2 a)"), total.over(house.houseArea));
        s.line(
                "margin_per_kg",
                "Margin per kg of marketable fruit",
                moneyPerKg,
                onlyWhen(harvest.yield.isPositive(), total.over(harvest.yield), "no yield"));
        Line stays = s.line(
                "stays_with_yield_total",
                "Yearly cost that does not move with yield",
                Unit.parse("money/a"),
                yearly.total.minus(moves.total));
        s.line(
                "break_even_price",
                "Price at which nothing is left",
                moneyPerKg,
                onlyWhen(
                        harvest.yield.isPositive(),
                        stays.over(harvest.yield).plus(moves.perKg).over(one().minus(harvest.commission)),
                        "no yield"));
        Unit grams = Unit.parse("g/(plant crop)");
        Formula needed = stays.over(moves.left)
                .over(planting.plantCount)
                .over(harvest.cropsPerYear)
                .over(harvest.yieldShare)
                .over(harvest.kept)
                .in(grams);
        s.line(
                "break_even_yield",
                "Fruit per plant and crop at which nothing is left",
                grams,
                onlyWhen(
                        and(moves.left.isPositive(), harvest.yield.isPositive(), harvest.kept.isPositive()),
                        needed,
                        "no yield, or a kg leaves nothing"));
    }
}
