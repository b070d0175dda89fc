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

    /** Amount of its driver that each part is counted for, up to whole units of the part where it says so, by irrigation system. */
    public final Line wayAmount;
    /** Cost of the exact quantity of each part, money, by irrigation system. */
    public final Line wayCost;
    /** Amount of its driver that each part is counted for, up to whole units of the part where it says so, for the chosen way. */
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
    /** Units for each unit of the driver, without waste, item/driver. */
    public final Line rate;
    /** Units for each unit of the driver, with waste, item/driver. */
    public final Line perDriver;
    /** Amount of its driver for each part, the same for every way but where it is counted by outlets or metres of line. */
    public final Line driverAmount;

    /** All prices of parts against those entered. */
    public final Line priceLevel;

    private static final String WHOLE = "that of the next whole number of units, where a part comes in whole units";

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
        rate = new PartRates(b, m, d).rate;
        perDriver = list.line(
                "material_per_driver", "Units a driver, with waste", itemPerDriver, rate.times(one().plus(m.waste)));

        driverAmount = list.line(
                "material_driver_amount",
                "Amount of its driver, if it belongs to the system",
                DRIVER,
                when(m.driver.isFilled(), lookup(d.amount, d.key, m.driver), none(DRIVER)));
        Line byWay = blocks.line(
                "material_way_driver",
                "Amount of its driver, by part",
                DRIVER,
                byWay(m.driver, m.option, driverAmount));
        wayAmount = blocks.line(
                "material_way_amount", "Amount counted, by part", DRIVER, whole(m.whole, byWay, perDriver), WHOLE);
        wayCost = blocks.line(
                "material_way_cost",
                "Cost of the exact quantity, by part",
                MONEY,
                wayAmount.times(perDriver).times(unitCost));

        Line taken = list.line(
                "material_driver_taken",
                "Amount of driver",
                DRIVER,
                when(belongs(m.option, settings.way()), driverAmount, none(DRIVER)));
        amount = list.line("material_amount", "Amount counted", DRIVER, whole(m.whole, taken, perDriver), WHOLE);
        quantity = list.line("material_quantity", "Exact quantity", ITEM, perDriver.times(amount));
        new PartCapacity(b, m, d, quantity);
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
     * @param driver what a part is counted by
     * @param option keys of the ways it belongs to; blank for all
     * @param alike the amount where all ways have the same; nothing where the row is not in use
     * @return driver, by way, and by row of the three lines
     */
    public Formula byWay(Line driver, Line option, Line alike) {
        return when(and(belongs(option, ways.key), ways.key.isFilled()), drivers.byWay(driver, alike), none(DRIVER));
    }

    /**
     * The amount of its driver that a part is counted for: where it comes in whole units, that of the next whole number of them, so that all
     * that follows the amount is for whole units.
     *
     * @param whole whether it comes in whole units, {@code yes} or {@code no}
     * @param taken the amount of its driver
     * @param perDriver units for each unit of the driver
     * @return driver, along the axes of the three lines
     */
    public Formula whole(Line whole, Line taken, Line perDriver) {
        Formula units = perDriver.times(taken).wholeUp();
        return when(and(whole.is("yes"), perDriver.isPositive()), units.over(perDriver), taken);
    }

    /** A part without a key belongs to every way. */
    private static Formula belongs(Line option, Line way) {
        return or(not(option.isFilled()), option.hasKey(way));
    }
}
