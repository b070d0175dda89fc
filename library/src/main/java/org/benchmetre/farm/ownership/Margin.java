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
 * What is left, before labour and energy: receipts less what moves with yield less yearly cost. Break-evens move what moves with
 * yield: the price at which nothing is left is (yearly cost / kg + cost per kg) / (1 - commission); the yield is yearly cost over
 * (price (1 - commission) - cost per kg).
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
     * @param house benches
     * @param planting plants
     */
    public Margin(ScheduleBuilder s, Harvest harvest, YearlyCost yearly, House house, Planting planting) {
        Unit moneyPerKg = Unit.parse("money/kg");
        total = s.line(
                "margin_total",
                "Margin, in total",
                Unit.parse("money/a"),
                harvest.receipts.minus(harvest.yieldCosts).minus(yearly.total));
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
        s.line(
                "break_even_price",
                "Price at which nothing is left",
                moneyPerKg,
                onlyWhen(
                        harvest.yield.isPositive(),
                        yearly.total.over(harvest.yield).plus(harvest.perKg).over(one().minus(harvest.commission)),
                        "no yield"));
        Formula perKg = harvest.price.times(one().minus(harvest.commission)).minus(harvest.perKg);
        Line left = s.line("left_per_kg", "Left of a kg after what moves with yield", moneyPerKg, perKg);
        Unit grams = Unit.parse("g/(plant crop)");
        Formula needed = yearly.total
                .over(left)
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
                        and(left.isPositive(), harvest.yieldShare.isPositive(), harvest.kept.isPositive()),
                        needed,
                        "none: a kg leaves nothing"));
    }
}
