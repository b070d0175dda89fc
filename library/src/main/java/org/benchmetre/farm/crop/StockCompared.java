package org.benchmetre.farm.crop;

import static org.benchmetre.budget.Formulas.greatest;
import static org.benchmetre.budget.Formulas.least;
import static org.benchmetre.budget.Formulas.none;
import static org.benchmetre.budget.Formulas.one;
import static org.benchmetre.budget.Formulas.or;
import static org.benchmetre.budget.Formulas.text;
import static org.benchmetre.budget.Formulas.when;
import static org.benchmetre.farm.input.TradeUnits.ONE;
import static org.benchmetre.farm.input.TradeUnits.PLANT;

import org.benchmetre.budget.BudgetBuilder;
import org.benchmetre.budget.Formula;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.ScheduleBuilder;
import org.benchmetre.budget.unit.Unit;
import org.benchmetre.farm.input.Sheets;

/**
 * The kinds of plant stock side by side, each as if it were chosen: plants, their yearly cost, fruit, what receipts leave after what
 * moves with yield, returns above plants per metre of bench and per metre and week that the crop stands on it. All else is taken as
 * the same for every kind. Plain arithmetic.
 */
public final class StockCompared {

    private static final Unit YEARLY = Unit.parse("money/a");
    private static final Unit YEARLY_METRE = Unit.parse("money/(m a)");
    private static final Unit WEEKLY_METRE = Unit.parse("money/(m wk)");
    private static final Unit PER_KG = Unit.parse("money/kg");
    private static final Unit KG = Unit.parse("kg/a");

    /**
     * Declares the lines.
     *
     * @param b where schedules are added
     * @param crop the kinds, fruit of each and what a kilogram leaves in each month, before work
     * @param workPerKg work that one more kilogram takes, picking and packing included, money/kg
     * @param yearlyCost cost of the plants a year, by kind
     * @param benchMetres bench metres
     */
    public StockCompared(BudgetBuilder b, Crop crop, Line workPerKg, Line yearlyCost, Line benchMetres) {
        PlantStock stock = crop.chosen.stock();
        StockGrowth growth = crop.chosen.growth();
        MonthPattern pattern = crop.pattern;
        ScheduleBuilder s = b.schedule(Sheets.CROP, "Plant stock compared, each as if it were chosen");
        s.note(
                "Returns above plants: receipts less what moves with yield, picking and packing included, less plants. All else is taken "
                        + "as the same for each kind.");
        s.line("compared_plants", "Plants to buy", PLANT, stock.whereFilled(stock.bought));
        s.line(
                "compared_established_cost",
                "Cost of an established plant",
                stock.perEstablished.unit(),
                stock.whereFilled(stock.perEstablished));
        Line plants = s.line(
                "compared_plants_per_metre",
                "Plants, a metre and year",
                YEARLY_METRE,
                stock.whereFilled(yearlyCost.over(benchMetres)));
        Line fruit = s.line("compared_fruit", "Marketable fruit", KG, crop.yield.byStock.times(crop.picking.kept));
        Line left = s.line(
                "compared_net_per_kg",
                "Returns of a kg above what moves with yield",
                PER_KG,
                stock.whereFilled(pattern.averageByStock(b, crop.receipts.further.netByMonth)
                        .minus(workPerKg)));
        Line net = s.line(
                "compared_net",
                "Receipts less what moves with yield",
                YEARLY,
                fruit.times(left).plus(stock.whereFilled(crop.receipts.further.aboveMargin)));
        Line returnsPerMetre = s.line(
                "compared_returns_per_metre",
                "Returns above plants, a metre and year",
                YEARLY_METRE,
                net.over(benchMetres).minus(plants));
        Line weeks = s.line(
                "compared_bench_weeks",
                "Weeks on the bench, a year",
                Unit.parse("wk/a"),
                stock.whereFilled(growth.benchWeeks.times(crop.chosen.crops().total)));
        s.line(
                "compared_returns_per_metre_week",
                "Returns above plants, a metre and week",
                WEEKLY_METRE,
                when(weeks.isPositive(), returnsPerMetre.over(weeks), none(WEEKLY_METRE)));
        s.line(
                "compared_first_fruit",
                "Weeks to first fruit; 0 unknown",
                Unit.parse("wk"),
                stock.whereFilled(growth.weeksToFruit));
        Line most = b.schedule(Sheets.CROP, "Plant stock compared: yields")
                .line("stock_yield_most", "Highest yield of a kind", ONE, greatest(growth.yieldFactor, stock.axis));
        Line least = b.schedule(Sheets.CROP, "Plant stock compared: yields")
                .line("stock_yield_least", "Lowest yield of a kind", ONE, least(growth.yieldFactor, stock.axis));
        b.schedule(Sheets.CROP, "Plant stock compared: what it says")
                .textLine(
                        "compared_sentence",
                        "What the comparison says",
                        when(
                                most.exceeds(least),
                                text(""),
                                text(
                                        "All kinds are taken to yield the same, as none is entered: returns differ by cost and "
                                                + "months alone, and rank no kind.")));
        Formula differs = or(growth.yieldFactor.exceeds(one()), one().exceeds(growth.yieldFactor));
        Line doubt = b.schedule(Sheets.CROP, "Plant stock compared: doubt")
                .textLine("stock_yield_doubt", "Yield by kind of plant stock", text("Doubt: " + growth.doubt + "."));
        Formula words = when(differs, doubt, text("Taken to yield as planned."));
        s.textLine("compared_doubt", "How far to trust the yield", when(stock.key.isFilled(), words, text("")));
    }
}
