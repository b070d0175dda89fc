package org.benchmetre.farm.takeoff;

import static org.benchmetre.budget.Formulas.and;
import static org.benchmetre.budget.Formulas.greater;
import static org.benchmetre.budget.Formulas.lookup;
import static org.benchmetre.budget.Formulas.none;
import static org.benchmetre.budget.Formulas.not;
import static org.benchmetre.budget.Formulas.number;
import static org.benchmetre.budget.Formulas.one;
import static org.benchmetre.budget.Formulas.or;
import static org.benchmetre.budget.Formulas.sum;
import static org.benchmetre.budget.Formulas.when;
import static org.benchmetre.farm.input.TradeUnits.DRIVER;
import static org.benchmetre.farm.input.TradeUnits.ITEM;
import static org.benchmetre.farm.input.TradeUnits.MONEY;
import static org.benchmetre.farm.input.TradeUnits.PACK;

import org.benchmetre.budget.BudgetBuilder;
import org.benchmetre.budget.Formula;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.ScheduleBuilder;
import org.benchmetre.budget.unit.Unit;
import org.benchmetre.farm.input.Paid;
import org.benchmetre.farm.input.Sheets;
import org.benchmetre.farm.input.Tables;
import org.benchmetre.farm.irrigation.hydraulics.Ways;

/**
 * Take-off: exact quantity with waste for every irrigation system, then the purchase list of the chosen way in whole packs, with what is
 * left over and its value. Exact cost plus the value of leftovers is the purchase cost, to the last cent. Common practice, no
 * source.
 *
 * <p>What a part takes is worked out once; by irrigation system it is only asked whether the part belongs to the way, and how many outlets
 * and metres of line the way has.
 */
public final class TakeOff {

    /** Amount of its driver for each part, by irrigation system. */
    public final Line wayAmount;
    /** Cost of the exact quantity of each part, money, by irrigation system. */
    public final Line wayCost;
    /** Amount of its driver for each part, for the chosen way. */
    public final Line amount;
    /** Exact quantity of each part, for the chosen way, item. */
    public final Line quantity;
    /** Cost of the exact quantity of each part, for the chosen way, money. */
    public final Line exact;
    /** Whole packs of each part, for the chosen way. */
    public final Line packs;
    /** Cost of each part in whole packs, for the chosen way, money. */
    public final Line bought;
    /** Value of what is left over of each part, money. */
    public final Line leftValue;
    /** Cost of the exact quantity of all parts, for the chosen way, money. */
    public final Line exactTotal;
    /** Cost of all parts in whole packs, for the chosen way, money. */
    public final Line purchase;
    /** Packs of all parts, for the chosen way. */
    public final Line packCount;
    /** Units in a pack, one where blank, item/pack. */
    public final Line packSize;
    /** Delivered price of a unit, money/item. */
    public final Line unitCost;
    /** Units for each unit of the driver, with waste, item/driver. */
    public final Line perDriver;
    /** Amount of its driver for each part, the same for every way but where it is counted by outlets or metres of line. */
    public final Line driverAmount;

    /** All prices of parts against those entered. */
    public final Line priceLevel;

    private final Drivers drivers;
    private final Ways ways;

    /**
     * What holds for all parts.
     *
     * @param way key of the way that is counted
     * @param priceLevel all prices of parts against those entered
     */
    public record Settings(Line way, Line priceLevel) {}

    /**
     * Declares the lines.
     *
     * @param b where schedules are added
     * @param m parts as entered
     * @param d what parts are counted by
     * @param ways irrigation systems
     * @param settings which way is counted, and the level of prices
     */
    public TakeOff(BudgetBuilder b, Materials m, Drivers d, Ways ways, Settings settings) {
        this.drivers = d;
        this.ways = ways;
        priceLevel = settings.priceLevel();
        Unit perPack = ITEM.over(PACK);
        Unit moneyPerItem = MONEY.over(ITEM);
        Unit itemPerDriver = ITEM.over(DRIVER);
        ScheduleBuilder list = b.shared(Sheets.MATERIALS, Tables.PARTS_BOUGHT);
        ScheduleBuilder totals = b.schedule(Sheets.MATERIALS, "Purchase list, totals");
        ScheduleBuilder blocks = b.schedule(Sheets.MATERIALS, "Parts by irrigation system");

        packSize = list.line(
                "material_pack_size",
                "Pack size",
                perPack,
                when(m.pack.isPositive(), m.pack, number(1, perPack)),
                "a blank pack counts as one unit");
        Line delivered = list.line(
                "material_delivered_price",
                "Price delivered",
                Unit.parse("money/pack"),
                m.price.times(settings.priceLevel()).times(one().plus(m.freight).plus(m.salesTax)));
        unitCost = list.line("material_unit_cost", "Price of a unit", moneyPerItem, delivered.over(packSize));
        perDriver = list.line(
                "material_per_driver", "Units a driver, with waste", itemPerDriver, m.rate.times(one().plus(m.waste)));

        driverAmount = list.line(
                "material_driver_amount",
                "Amount of its driver, if it belongs to the system",
                DRIVER,
                when(m.driver.isFilled(), lookup(d.amount, d.key, m.driver), none(DRIVER)));
        wayAmount = blocks.line(
                "material_way_amount",
                "Amount of its driver, by part",
                DRIVER,
                byWay(m.driver, m.option, driverAmount));
        wayCost = blocks.line(
                "material_way_cost",
                "Cost of the exact quantity, by part",
                MONEY,
                wayAmount.times(perDriver).times(unitCost));

        amount = list.line(
                "material_amount",
                "Amount of driver",
                DRIVER,
                when(belongs(m.option, settings.way()), driverAmount, none(DRIVER)));
        quantity = list.line("material_quantity", "Exact quantity", ITEM, perDriver.times(amount));
        packs = list.line(
                "material_packs", "Whole packs", PACK, quantity.over(packSize).wholeUp());
        exact = list.line("material_exact_cost", "Exact cost", MONEY, quantity.times(unitCost));
        bought = list.line(
                "material_purchase_cost", "Purchase cost", MONEY, new Paid(b).of(packs.times(delivered)), Paid.SOURCE);
        list.line("material_left", "Left over", ITEM, packs.times(packSize).minus(quantity));
        leftValue =
                list.line("material_left_value", "Value left over", MONEY, greater(bought.minus(exact), none(MONEY)));

        exactTotal = totals.line("exact_cost", "All parts, exact quantity", MONEY, sum(exact, m.axis));
        purchase = totals.line("purchase_cost", "All parts, whole packs", MONEY, sum(bought, m.axis));
        totals.line(
                "leftover_value",
                "All leftovers",
                MONEY,
                sum(leftValue, m.axis),
                "the whole difference between whole packs and exact quantity");
        packCount = totals.line("pack_count", "Packs", PACK, sum(packs, m.axis));
    }

    /**
     * The rule of take-off: the amount of its driver that a part takes with each irrigation system, nothing where it does not belong.
     *
     * @param driver what a part is counted by; blank where the row is not in use
     * @param option keys of the ways it belongs to; blank for all
     * @param alike the amount where all ways have the same
     * @return driver, by way, and by row of the three lines
     */
    public Formula byWay(Line driver, Line option, Line alike) {
        return when(
                and(driver.isFilled(), ways.key.isFilled(), belongs(option, ways.key)),
                drivers.byWay(driver, alike),
                none(DRIVER));
    }

    /** A part without a key belongs to every way. */
    private static Formula belongs(Line option, Line way) {
        return or(not(option.isFilled()), option.hasKey(way));
    }
}
