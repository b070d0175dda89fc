package org.benchmetre.farm.crop;

import static org.benchmetre.budget.Formulas.none;
import static org.benchmetre.budget.Formulas.one;
import static org.benchmetre.budget.Formulas.sum;
import static org.benchmetre.budget.Formulas.sumProduct;
import static org.benchmetre.budget.Formulas.when;
import static org.benchmetre.farm.input.TradeUnits.MONEY;
import static org.benchmetre.farm.input.TradeUnits.PLANT;

import org.benchmetre.budget.BudgetBuilder;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.ScheduleBuilder;
import org.benchmetre.budget.unit.Unit;
import org.benchmetre.farm.input.Paid;
import org.benchmetre.farm.input.Sheets;
import org.benchmetre.farm.input.Tables;

/**
 * New plants of the crops of a year: what the first ones cost, and what is paid where whole plants are ordered. The price of a plant is
 * that of the quantity that all benches take.
 */
public final class PlantOrder {

    private static final Unit PER_PLANT = Unit.parse("money/plant");

    /** The plants of the crops. */
    public final CropPlants grown;
    /** Plants to buy for each crop. */
    public final Line boughtByCrop;
    /** Cost of the first plants of each crop, exact quantity, money. */
    public final Line exactByCrop;
    /** What is paid for whole plants of each crop, growing on included, money. */
    public final Line costByCrop;
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
     * @param grown the plants of the crops
     */
    public PlantOrder(BudgetBuilder b, CropPlants grown) {
        this.grown = grown;
        Paid paid = new Paid(b);
        Crops crops = grown.crops();
        PlantStock stock = grown.stock();
        ScheduleBuilder c = b.shared(Sheets.CROP, Tables.CROPS);
        boughtByCrop =
                c.line("crop_plants_bought", "Plants to buy", PLANT, crops.newShare.times(crops.ofKind(stock.bought)));
        exactByCrop = c.line(
                "crop_plants_first_cost", "First plants", MONEY, crops.newShare.times(crops.ofKind(stock.firstCost)));
        Line whole = c.line("crop_plants_ordered", "Plants to order, whole", PLANT, boughtByCrop.wholeUp());
        Line price = c.line("crop_plants_price", "Price of a plant", PER_PLANT, crops.ofKind(stock.price));
        Line freightByCrop = c.line(
                "crop_plants_freight",
                "Freight of plants",
                MONEY,
                paid.of(whole.times(price).times(one().plus(crops.ofKind(stock.freight))))
                        .minus(whole.times(price)),
                Paid.SOURCE);
        Line growingByCrop = c.line(
                "crop_plants_growing_on",
                "Growing on",
                MONEY,
                paid.of(crops.newShare.times(crops.ofKind(stock.growing))),
                Paid.SOURCE);
        costByCrop = c.line(
                "crop_plants_cost",
                "Plants to order, money",
                MONEY,
                whole.times(price).plus(freightByCrop).plus(growingByCrop));

        ScheduleBuilder s = b.shared(Sheets.CROP, Tables.PLANTS);
        exact = s.line("plants_first_cost", "First plants", MONEY, sum(exactByCrop, crops.axis));
        plants = s.line("plants_ordered", "Plants to order, whole", PLANT, sum(whole, crops.axis));
        Line worth = s.line("plants_order_worth", "Plants at their price", MONEY, sumProduct(whole, price, crops.axis));
        s.line(
                "plants_order_price",
                "Price of a plant at that quantity",
                PER_PLANT,
                when(plants.isPositive(), worth.over(plants), none(PER_PLANT)));
        s.line("plants_order_freight", "Freight", MONEY, sum(freightByCrop, crops.axis));
        s.line("plants_growing_on", "Growing on", MONEY, sum(growingByCrop, crops.axis));
        cost = s.line("plants_order_cost", "Plants to order", MONEY, sum(costByCrop, crops.axis));
    }
}
