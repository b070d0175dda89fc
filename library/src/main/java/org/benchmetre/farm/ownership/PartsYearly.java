package org.benchmetre.farm.ownership;

import static org.benchmetre.budget.Formulas.none;
import static org.benchmetre.budget.Formulas.one;
import static org.benchmetre.budget.Formulas.sumProduct;
import static org.benchmetre.budget.Formulas.when;
import static org.benchmetre.farm.input.TradeUnits.DRIVER;
import static org.benchmetre.farm.input.TradeUnits.ITEM;
import static org.benchmetre.farm.input.TradeUnits.MONEY;
import static org.benchmetre.farm.input.TradeUnits.ONE;

import org.benchmetre.budget.BudgetBuilder;
import org.benchmetre.budget.Formula;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.ScheduleBuilder;
import org.benchmetre.budget.unit.Unit;
import org.benchmetre.farm.input.Sheets;
import org.benchmetre.farm.input.Tables;
import org.benchmetre.farm.takeoff.Materials;
import org.benchmetre.farm.takeoff.TakeOff;

/**
 * What parts cost in a year. What lasts longer than a year recovers its exact cost over its life, less salvage, and insurance and
 * property tax are shares of its average value. What is used up within a year is bought as often as it is used up, and is an operating
 * input, see {@link UsedUp}. Repairs are a share of cost; installing and taking out go with the part, taking out as a negative
 * salvage. All is worked out for one unit of an item and multiplied by its quantity, and follows a life that is typed over.
 */
public final class PartsYearly {

    private static final String RECOVERED = OwnershipRates.RECOVERED;
    private static final Unit YEARLY = Unit.parse("money/a");
    private static final Unit PER_YEAR = Unit.parse("1/a");
    private static final Unit HOURS_A_YEAR = Unit.parse("h/a");

    /** Life of each part, in years. */
    public final Line life;
    /** Salvage of a unit of each part, money/item. */
    public final Line unitSalvage;
    /** 1 for each part that is used up within a year, 0 for what lasts. */
    public final Line isUsedUp;
    /** Capital recovery of each part that lasts, a year, for the chosen way, money/a. */
    public final Line recovery;
    /** Capital recovery of all parts that last, a year, for the chosen way, money/a. */
    public final Line recoveryTotal;
    /** Each part that is used up, a year, for the chosen way, money/a. */
    public final Line usedUp;
    /** All parts that are used up, a year, for the chosen way, money/a. */
    public final Line usedUpTotal;
    /** Repairs of all parts a year, for the chosen way, money/a. */
    public final Line repairsTotal;
    /** Installing and taking out of parts that last, a year, for the chosen way, money/a. */
    public final Line labourTotal;
    /** Laying and taking out what is used up, for the chosen way, h/a. */
    public final Line usedUpHours;
    /** What that costs, money/a. */
    public final Line usedUpLabour;
    /** Insurance and property tax a year, for the chosen way, money/a. */
    public final Line chargesTotal;
    /** What one of cost comes to in a year, 1/a, by part. */
    public final Line ofCost;
    /** What one of salvage takes off that in a year, 1/a, by part. */
    public final Line ofSalvage;
    /** Recovered or used up for each unit of the driver, money/(a driver). */
    public final Line driverYearly;
    /** Recovered or used up, and repairs, of each part, money/a, by irrigation system. */
    public final Line wayParts;
    /** Installing and taking out, money/a, by irrigation system. */
    public final Line wayLabour;
    /** Insurance and property tax, money/a, by irrigation system. */
    public final Line wayCharges;
    /** Installing and taking out, h/a, by irrigation system, over the lives of the parts. */
    public final Line wayHours;
    /** Of that, laying and taking out what is used up, h/a. */
    public final Line wayUsedUpHours;
    /** Parts that are used up, money/a, by irrigation system. */
    final Line wayUsedUp;
    /** Laying and taking them out, money/a, by irrigation system. */
    final Line wayUsedUpLabour;
    /** Installing and taking out, for each unit of the driver, h/(a driver). */
    public final Line driverHours;
    /** Insurance and property tax, for each unit of the driver, money/(a driver). */
    public final Line driverCharges;

    /** Rates and rules. */
    public final OwnershipRates rates;

    private final TakeOff quantities;
    private final Line unitRepairs;

    /**
     * Declares the lines.
     *
     * @param b where schedules are added
     * @param rates rates and rules
     * @param m parts as entered
     * @param t their quantities and costs
     * @param wage wage of installation labour
     * @param cropsPerYear crops in a year
     */
    public PartsYearly(BudgetBuilder b, OwnershipRates rates, Materials m, TakeOff t, Line wage, Line cropsPerYear) {
        this.rates = rates;
        quantities = t;
        ScheduleBuilder table = b.shared(Sheets.MATERIALS, Tables.PARTS_YEARLY);
        ScheduleBuilder parts = b.schedule(Sheets.MATERIALS, "Yearly cost of parts by irrigation system");
        ScheduleBuilder ways = b.shared(Sheets.MATERIALS, Tables.PARTS_BY_SYSTEM);
        life = table.line(
                "material_life_years",
                "Life",
                Unit.parse("a"),
                OwnershipRates.years(m.life, m.lifeUnit, cropsPerYear),
                OwnershipRates.LIFE);
        unitSalvage =
                table.line("material_unit_salvage", "Salvage of a unit", MONEY.over(ITEM), m.salvage.over(t.packSize));
        isUsedUp = table.line(
                "material_used_up",
                "Used up within a year, 1 or 0",
                ONE,
                when(life.exceeds(UsedUp.YEAR), none(ONE), one()),
                UsedUp.RULE);
        ofCost = table.line(
                "material_recovery_of_one",
                "A year, for one of cost",
                PER_YEAR,
                when(isUsedUp.isPositive(), one().over(life), rates.ofCost(life)),
                UsedUp.EACH);
        ofSalvage = table.line(
                "material_worth_of_salvage",
                "Taken off for one of salvage",
                PER_YEAR,
                when(isUsedUp.isPositive(), one().over(life), rates.ofSalvage(life)),
                UsedUp.EACH);
        Unit perItem = YEARLY.over(ITEM);
        Formula yearly = t.unitCost.times(ofCost).minus(unitSalvage.times(ofSalvage));
        Line unitRecovery = table.line(
                "material_unit_recovery",
                "Capital recovery",
                perItem,
                when(isUsedUp.isPositive(), none(perItem), yearly),
                RECOVERED);
        Line unitUsedUp = table.line(
                "material_unit_used_up",
                "Used up",
                perItem,
                when(isUsedUp.isPositive(), yearly, none(perItem)),
                UsedUp.RULE);
        unitRepairs = table.line("material_unit_repairs", "Repairs", perItem, t.unitCost.times(m.repairs));
        recovery = table.line(
                "material_recovery_yearly", "Capital recovery, chosen system", YEARLY, t.quantity.times(unitRecovery));
        usedUp = table.line("material_used_up_yearly", "Used up, chosen system", YEARLY, t.quantity.times(unitUsedUp));
        driverYearly = table.line(
                "material_driver_recovery",
                "Recovered or used up, a driver",
                YEARLY.over(DRIVER),
                t.perDriver.times(unitRecovery.plus(unitUsedUp)));
        Line driverUsedUp = table.line(
                "material_driver_used_up", "Used up, a driver", YEARLY.over(DRIVER), t.perDriver.times(unitUsedUp));
        driverCharges = table.line(
                "material_driver_charges",
                "Insurance and tax, a driver",
                YEARLY.over(DRIVER),
                t.perDriver.times(whereItLasts(rates.charges(t.unitCost, unitSalvage))),
                OwnershipRates.CHARGED + "; of what lasts");
        driverHours = table.line(
                "material_driver_hours",
                "Installing and taking out, a driver, hours a year",
                HOURS_A_YEAR.over(DRIVER),
                t.rate.times(m.installHours.times(ofCost).plus(m.removeHours.times(ofSalvage))),
                "taking out counts as a negative salvage");
        Line driverUsedUpHours = table.line(
                "material_driver_used_up_hours",
                "Of that, of what is used up",
                driverHours.unit(),
                when(isUsedUp.isPositive(), driverHours, none(driverHours.unit())));
        ScheduleBuilder sums = b.schedule(Sheets.MATERIALS, "Parts of the chosen system, a year");
        recoveryTotal = sums.line(
                "parts_recovery_total",
                "Capital recovery of parts",
                YEARLY,
                sumProduct(t.quantity, unitRecovery, m.axis));
        usedUpTotal = sums.line(
                "parts_used_up_total",
                "Parts used up within a year",
                YEARLY,
                sumProduct(t.quantity, unitUsedUp, m.axis));
        repairsTotal = sums.line(
                "parts_repairs_total", "Repairs of parts", YEARLY, sumProduct(t.quantity, unitRepairs, m.axis));
        Line hours = sums.line(
                "parts_labour_hours",
                "Installing and taking out, hours a year",
                HOURS_A_YEAR,
                sumProduct(t.amount, driverHours, m.axis));
        usedUpHours = sums.line(
                "parts_used_up_hours",
                "Of that, laying and taking out what is used up",
                HOURS_A_YEAR,
                sumProduct(t.amount, driverUsedUpHours, m.axis));
        labourTotal = sums.line(
                "parts_labour_total",
                "Installing and taking out what lasts",
                YEARLY,
                hours.minus(usedUpHours).times(wage).in(YEARLY));
        usedUpLabour = sums.line(
                "parts_used_up_labour",
                "Laying and taking out what is used up",
                YEARLY,
                usedUpHours.times(wage).in(YEARLY));
        chargesTotal = sums.line(
                "parts_charges_total",
                "Insurance and property tax",
                YEARLY,
                sumProduct(t.amount, driverCharges, m.axis));
        wayParts = parts.line(
                "material_way_yearly_cost",
                "Yearly cost of the exact quantity, by part",
                YEARLY,
                t.wayAmount
                        .times(t.perDriver)
                        .times(unitRecovery.plus(unitUsedUp).plus(unitRepairs)));
        wayHours = ways.line(
                "way_labour_yearly_hours",
                "Installing and taking out, hours a year",
                HOURS_A_YEAR,
                sumProduct(t.wayAmount, driverHours, m.axis));
        wayLabour = ways.line(
                "way_labour_yearly",
                "Installing and taking out",
                YEARLY,
                wayHours.times(wage).in(YEARLY));
        wayCharges = ways.line(
                "way_charges_yearly",
                "Insurance and property tax",
                YEARLY,
                sumProduct(t.wayAmount, driverCharges, m.axis));
        wayUsedUp = ways.line(
                "way_used_up_yearly",
                "Parts used up within a year",
                YEARLY,
                sumProduct(t.wayAmount, driverUsedUp, m.axis));
        wayUsedUpHours = ways.line(
                "way_used_up_hours",
                "Laying and taking them out, hours a year",
                HOURS_A_YEAR,
                sumProduct(t.wayAmount, driverUsedUpHours, m.axis));
        wayUsedUpLabour = ways.line(
                "way_used_up_labour",
                "Laying and taking them out",
                YEARLY,
                wayUsedUpHours.times(wage).in(YEARLY));
    }

    private Formula whereItLasts(Formula amount) {
        return when(isUsedUp.isPositive(), none(amount.unit()), amount);
    }

    /**
     * Insurance and property tax of parts; none of what is used up.
     *
     * @param cost money
     * @return the same a year, by part
     */
    public Formula chargesOf(Formula cost) {
        return whereItLasts(rates.charges(cost, none(MONEY)));
    }

    /**
     * What each part of the chosen system costs in a year, installing and taking out left aside: in proportion to its price.
     *
     * @param contingency share of the cost of parts
     * @return along the parts, money/a
     */
    public Formula priced(Line contingency) {
        return recovery.plus(usedUp)
                .times(one().plus(contingency))
                .plus(quantities.quantity.times(unitRepairs))
                .plus(quantities.amount.times(driverCharges));
    }
}
