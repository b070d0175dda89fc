package org.benchmetre.farm.crop;

import static org.benchmetre.budget.Formulas.lookup;
import static org.benchmetre.budget.Formulas.one;
import static org.benchmetre.farm.input.TradeUnits.MONEY;
import static org.benchmetre.farm.input.TradeUnits.PLANT;

import org.benchmetre.budget.BudgetBuilder;
import org.benchmetre.budget.Formula;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.ScheduleBuilder;
import org.benchmetre.budget.unit.Unit;
import org.benchmetre.farm.input.Paid;
import org.benchmetre.farm.input.Sheets;
import org.benchmetre.farm.input.Tables;

/** Plants of the chosen stock: what the first ones cost, and what is paid where whole plants are ordered. */
public final class PlantOrder {

    /** Cost of the first plants, exact quantity, money. */
    public final Line exact;
    /** Whole plants to order. */
    public final Line plants;
    /** What is paid for whole plants, growing on included, money. */
    public final Line cost;

    /**
     * Declares the lines.
     *
     * @param b where schedules are added
     * @param stock the kinds
     * @param choice key of the chosen kind
     */
    public PlantOrder(BudgetBuilder b, PlantStock stock, Line choice) {
        Paid paid = new Paid(b);
        exact = b.shared(Sheets.CROP, Tables.PLANTS)
                .line("plants_first_cost", "First plants", MONEY, lookup(stock.firstCost, stock.key, choice));
        ScheduleBuilder s = b.shared(Sheets.CROP, Tables.PLANTS);
        Formula needed = lookup(stock.bought, stock.key, choice);
        plants = s.line("plants_ordered", "Plants to order, whole", PLANT, needed.wholeUp());
        Line price = s.line(
                "plants_order_price",
                "Price of a plant at that quantity",
                Unit.parse("money/plant"),
                lookup(stock.price, stock.key, choice));
        Formula share = lookup(stock.freight, stock.key, choice);
        Line freight = s.line(
                "plants_order_freight",
                "Freight",
                MONEY,
                paid.of(plants.times(price).times(one().plus(share))).minus(plants.times(price)),
                Paid.SOURCE);
        Line growing = s.line(
                "plants_growing_on",
                "Growing on",
                MONEY,
                paid.of(lookup(stock.growing, stock.key, choice)),
                Paid.SOURCE);
        cost = s.line(
                "plants_order_cost",
                "Plants to order",
                MONEY,
                plants.times(price).plus(freight).plus(growing));
    }
}
