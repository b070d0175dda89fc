package org.benchmetre.farm.comparison;

import static org.benchmetre.budget.Formulas.and;
import static org.benchmetre.budget.Formulas.none;
import static org.benchmetre.budget.Formulas.not;
import static org.benchmetre.budget.Formulas.number;
import static org.benchmetre.budget.Formulas.one;
import static org.benchmetre.budget.Formulas.text;
import static org.benchmetre.budget.Formulas.when;
import static org.benchmetre.farm.input.TradeUnits.DRIVER;
import static org.benchmetre.farm.input.TradeUnits.ITEM;
import static org.benchmetre.farm.input.TradeUnits.PACK;

import org.benchmetre.budget.BudgetBuilder;
import org.benchmetre.budget.Formula;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.ScheduleBuilder;
import org.benchmetre.budget.unit.Unit;
import org.benchmetre.farm.crop.Harvest;
import org.benchmetre.farm.input.Levels;
import org.benchmetre.farm.input.Sheets;
import org.benchmetre.farm.input.Tables;
import org.benchmetre.farm.irrigation.clogging.Clogging;
import org.benchmetre.farm.irrigation.hydraulics.Ways;
import org.benchmetre.farm.ownership.OperatingInterest;
import org.benchmetre.farm.ownership.PartsYearly;
import org.benchmetre.farm.takeoff.Materials;
import org.benchmetre.farm.takeoff.TakeOff;

/**
 * What the yearly cost per metre of each way moves by for one unit of an entry in which it is a straight line: the price of a part,
 * the wage of installing and care, the level of fruit prices. What moves alike for all ways is left out of the last. Each is the
 * arithmetic of the cost itself with the entry taken as one.
 */
public final class CostSlopes {

    private static final Formula MONEY_OF_ONE = number(1, Unit.MONEY);
    private static final Unit YEARLY = Unit.parse("money/a");
    private static final Unit PER_METRE = Unit.parse("money/(m a)");
    private static final Unit PER_YEAR = Unit.parse("1/a");
    private static final Unit PACKS_A_YEAR = Unit.parse("pack/a");
    private static final Unit ITEMS_A_YEAR = ITEM.over(Unit.parse("a"));

    /** For one money/h of the wage of installing and irrigation maintenance, money/(m a), by way. */
    public final Line ofWage;
    /** For one unit of the level of fruit prices, money/(m a), by way; what is the same for all ways left out. */
    public final Line ofPriceLevel;

    private final Ways ways;
    private final Parts parts;
    private final Clogging clogging;
    private final Line benchMetres;
    private final Line partPerPrice;
    private final Line deliveredPerPrice;
    private final Line newOutlets;
    private final Formula factor;

    /**
     * Parts and what they cost in a year.
     *
     * @param materials parts as entered
     * @param takeOff their quantities and costs
     * @param owned what they cost in a year
     * @param contingency share of their cost that is set aside on top
     */
    public record Parts(Materials materials, TakeOff takeOff, PartsYearly owned, Line contingency) {}

    /**
     * Irrigation maintenance, replanting, fruit lost, and the interest on what they cost.
     *
     * @param clogging clogging of the lines
     * @param interest interest on operating capital
     */
    public record Upkeep(Clogging clogging, OperatingInterest interest) {}

    /**
     * Fruit and its price, and the levels of others.
     *
     * @param harvest what fruit brings
     * @param priceLevel all prices of fruit against those entered
     * @param levels of wages and prices
     */
    public record Levers(Harvest harvest, Line priceLevel, Levels levels) {}

    /**
     * Declares the lines.
     *
     * @param b where schedules are added
     * @param ways irrigation systems
     * @param parts parts and what they cost in a year
     * @param upkeep irrigation maintenance
     * @param levers fruit and its price, and the levels of others
     * @param benchMetres metres of bench
     */
    public CostSlopes(BudgetBuilder b, Ways ways, Parts parts, Upkeep upkeep, Levers levers, Line benchMetres) {
        this.ways = ways;
        this.parts = parts;
        this.clogging = upkeep.clogging;
        this.benchMetres = benchMetres;
        factor = upkeep.interest.factor;
        Formula withInterest = one().plus(factor);
        ScheduleBuilder unit = b.shared(Sheets.MATERIALS, Tables.PARTS_YEARLY);
        ScheduleBuilder s = b.shared(Sheets.IRRIGATION, Tables.SYSTEM_SLOPES);
        deliveredPerPrice = delivered(unit);
        partPerPrice = partPerPrice(unit);
        newOutlets = s.line(
                "way_new_outlets_priced",
                "New outlets in a year that cost what the part costs",
                ITEMS_A_YEAR,
                when(
                        isPricedByPart(),
                        clogging.care().replaced.times(withInterest).counting(ITEMS_A_YEAR),
                        none(ITEMS_A_YEAR)),
                "interest on operating capital counted");
        ofWage = s.line(
                "way_cost_per_wage",
                "For one more an hour of installing and irrigation maintenance",
                PER_METRE,
                ways.whereFilled(parts.owned
                        .wayHours
                        .plus(parts.owned.wayUsedUpHours.times(factor))
                        .counting(YEARLY)
                        .plus(ofCare(withInterest))
                        .times(levers.levels.wages)
                        .over(benchMetres)),
                "installing and taking out over the lives of the parts, with interest where they are used up; irrigation maintenance and replanting with interest");
        ofPriceLevel = s.line(
                "way_cost_per_price_level",
                "For one more of the level of fruit prices",
                PER_METRE,
                clogging.dry().fruitLost.times(worthAtLevelOne(b, levers)).over(benchMetres),
                "fruit lost, at its price less commission; what is the same for all systems is left out");
    }

    private Line delivered(ScheduleBuilder unit) {
        Materials m = parts.materials;
        return unit.line(
                "material_delivered_per_price",
                "Price of a unit, for one of a pack",
                PACK.over(ITEM),
                one().plus(m.freight)
                        .plus(m.salesTax)
                        .times(parts.takeOff.priceLevel)
                        .over(parts.takeOff.packSize));
    }

    private Line partPerPrice(ScheduleBuilder unit) {
        Formula charges = parts.owned.chargesOf(MONEY_OF_ONE).over(MONEY_OF_ONE);
        Formula yearly = parts.owned
                .ofCost
                .times(one().plus(parts.contingency).plus(parts.owned.isUsedUp.times(factor)))
                .plus(parts.materials.repairs)
                .plus(charges);
        return unit.line(
                "material_yearly_per_price",
                "Yearly cost a driver, for one of a pack",
                Unit.parse("pack/(driver a)"),
                parts.takeOff.perDriver.times(deliveredPerPrice).times(yearly),
                "recovered or used up, with contingency; interest on what is used up, insurance and property tax on what lasts; repairs");
    }

    private Formula isPricedByPart() {
        return and(
                not(clogging.care().givenPrice.isPositive()),
                clogging.failed().itemsFound.isPositive());
    }

    private Formula ofCare(Formula withInterest) {
        Formula planting = clogging.dry().killed.times(clogging.dry().replantHours);
        return clogging.care().careHours.plus(planting).times(withInterest).counting(YEARLY);
    }

    private static Line worthAtLevelOne(BudgetBuilder b, Levers fruit) {
        Formula left = fruit.harvest.furtherPrice.times(one().minus(fruit.harvest.furtherCommission));
        return b.schedule(Sheets.IRRIGATION, "Fruit at a price level of one")
                .line(
                        "fruit_worth_at_level",
                        "A kg less commission, at a price level of one",
                        left.unit(),
                        when(fruit.priceLevel.isPositive(), left.over(fruit.priceLevel), none(left.unit())),
                        "nothing where the level is 0, since no price is known then");
    }

    /**
     * For one unit of the price of a pack of each part that carries outlets: what the part takes of its driver, by the rule of
     * take-off, times its yearly cost a driver, and the outlets put in anew.
     *
     * @param b where schedules are added
     * @param carriers parts that carry outlets
     * @return money/(m a), by part and way
     */
    Line ofPrice(BudgetBuilder b, OutletParts carriers) {
        Materials m = parts.materials;
        ScheduleBuilder s = b.shared(Sheets.IRRIGATION, Tables.OUTLET_PARTS);
        Line driver = s.textLine("way_part_driver", "Driver", carriers.of(m.driver, text("")));
        Line option = s.textLine("way_part_option", "Irrigation system", carriers.of(m.option, text("")));
        Line alike = s.line(
                "way_part_driver_amount",
                "Amount of its driver",
                DRIVER,
                carriers.of(parts.takeOff.driverAmount, none(DRIVER)));
        Line whole = s.textLine("way_part_whole", "Whole units", carriers.of(m.whole, text("no")));
        Line perDriver = s.line(
                "way_part_per_driver",
                parts.takeOff.perDriver.label(),
                parts.takeOff.perDriver.unit(),
                carriers.of(parts.takeOff.perDriver, none(parts.takeOff.perDriver.unit())));
        Line perPrice = s.line(
                "way_part_yearly_per_price",
                partPerPrice.label(),
                partPerPrice.unit(),
                carriers.of(partPerPrice, none(partPerPrice.unit())));
        Line delivered = s.line(
                "way_part_delivered_per_price",
                deliveredPerPrice.label(),
                deliveredPerPrice.unit(),
                carriers.of(deliveredPerPrice, none(deliveredPerPrice.unit())));
        ScheduleBuilder blocks = b.schedule(Sheets.IRRIGATION, "Parts that carry outlets, by irrigation system");
        Line taken = blocks.line(
                "way_part_driver_taken", "Amount of its driver", DRIVER, parts.takeOff.byWay(driver, option, alike));
        Line amount =
                blocks.line("way_part_amount", "Amount counted", DRIVER, parts.takeOff.whole(whole, taken, perDriver));
        Formula replaced =
                when(clogging.failed().outletItem.is(carriers.item), newOutlets.times(delivered), none(PACKS_A_YEAR));
        return blocks.line(
                "way_part_cost_per_price",
                "Yearly cost per metre, for one of the price of a pack",
                PER_METRE,
                when(
                        carriers.item.isFilled(),
                        amount.times(perPrice).plus(replaced).over(benchMetres).counting(PER_METRE),
                        none(PER_METRE)));
    }

    /** Irrigation systems. */
    Ways ways() {
        return ways;
    }

    /** Parts as entered. */
    Materials materials() {
        return parts.materials;
    }
}
