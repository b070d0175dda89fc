package org.benchmetre.farm.ownership;

import static org.benchmetre.budget.Formulas.none;
import static org.benchmetre.budget.Formulas.sumProduct;
import static org.benchmetre.farm.input.TradeUnits.DRIVER;
import static org.benchmetre.farm.input.TradeUnits.ITEM;
import static org.benchmetre.farm.input.TradeUnits.MONEY;

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
 * What parts cost in a year. Each part recovers its exact cost over its life, less salvage; repairs are a share of its cost;
 * installing and taking out recover the same way, taking out as a negative salvage; insurance and property tax are shares of average
 * value. Capital recovery is worked out for one unit of an item and multiplied by its quantity.
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
    /** Capital recovery of each part a year, for the chosen way, money/a. */
    public final Line recovery;
    /** Capital recovery of all parts a year, for the chosen way, money/a. */
    public final Line recoveryTotal;
    /** Repairs of all parts a year, for the chosen way, money/a. */
    public final Line repairsTotal;
    /** Installing and taking out a year, for the chosen way, money/a. */
    public final Line labourTotal;
    /** Insurance and property tax a year, for the chosen way, money/a. */
    public final Line chargesTotal;
    /** What one of cost recovers in a year, 1/a, by part. */
    public final Line ofCost;
    /** What one of salvage takes off that in a year, 1/a, by part. */
    public final Line ofSalvage;
    /** Capital recovery for each unit of the driver, money/(a driver). */
    public final Line driverRecovery;
    /** Recovery and repairs of each part, money/a, by irrigation system. */
    public final Line wayParts;
    /** Installing and taking out, money/a, by irrigation system. */
    public final Line wayLabour;
    /** Insurance and property tax, money/a, by irrigation system. */
    public final Line wayCharges;
    /** Installing and taking out, h/a, by irrigation system, recovered over the lives of the parts. */
    public final Line wayHours;
    /** Installing and taking out, for each unit of the driver, h/(a driver). */
    public final Line driverHours;
    /** Insurance and property tax, for each unit of the driver, money/(a driver). */
    public final Line driverCharges;

    /** Rates and rules. */
    public final OwnershipRates rates;

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
        Unit perItem = YEARLY.over(ITEM);
        ofCost = table.line(
                "material_recovery_of_one", "Recovered for one of cost", PER_YEAR, rates.ofCost(life), RECOVERED);
        ofSalvage = table.line(
                "material_worth_of_salvage",
                "Taken off for one of salvage",
                PER_YEAR,
                rates.ofSalvage(life),
                RECOVERED);
        Line recovered = table.line(
                "material_unit_recovery",
                "Capital recovery",
                perItem,
                t.unitCost.times(ofCost).minus(unitSalvage.times(ofSalvage)),
                RECOVERED);
        Line unitRepairs = table.line("material_unit_repairs", "Repairs", perItem, t.unitCost.times(m.repairs));
        recovery = table.line(
                "material_recovery_yearly", "Capital recovery, chosen system", YEARLY, t.quantity.times(recovered));
        driverRecovery = table.line(
                "material_driver_recovery",
                "Capital recovery, a driver",
                YEARLY.over(DRIVER),
                t.perDriver.times(recovered));
        driverCharges = table.line(
                "material_driver_charges",
                "Insurance and tax, a driver",
                YEARLY.over(DRIVER),
                t.perDriver.times(rates.charges(t.unitCost, unitSalvage)),
                OwnershipRates.CHARGED);
        driverHours = table.line(
                "material_driver_hours",
                "Installing and taking out, a driver, hours a year",
                HOURS_A_YEAR.over(DRIVER),
                t.rate.times(m.installHours.times(ofCost).plus(m.removeHours.times(ofSalvage))),
                "taking out counts as a negative salvage");
        ScheduleBuilder sums = b.schedule(Sheets.MATERIALS, "Parts of the chosen system, a year");
        recoveryTotal = sums.line(
                "parts_recovery_total", "Capital recovery of parts", YEARLY, sumProduct(t.quantity, recovered, m.axis));
        repairsTotal = sums.line(
                "parts_repairs_total", "Repairs of parts", YEARLY, sumProduct(t.quantity, unitRepairs, m.axis));
        Line hours = sums.line(
                "parts_labour_hours",
                "Installing and taking out, hours a year",
                HOURS_A_YEAR,
                sumProduct(t.amount, driverHours, m.axis));
        labourTotal = sums.line(
                "parts_labour_total",
                "Installing and taking out",
                YEARLY,
                hours.times(wage).in(YEARLY));
        chargesTotal = sums.line(
                "parts_charges_total",
                "Insurance and property tax",
                YEARLY,
                sumProduct(t.amount, driverCharges, m.axis));
        wayParts = parts.line(
                "material_way_yearly_cost",
                "Yearly cost of the exact quantity, by part",
                YEARLY,
                t.wayAmount.times(t.perDriver).times(recovered.plus(unitRepairs)));
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
    }

    /**
     * Insurance and property tax.
     *
     * @param cost money, or money of something
     * @return the same a year
     */
    public Formula chargesOf(Formula cost) {
        return rates.charges(cost, none(MONEY));
    }
}
