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
import org.benchmetre.farm.takeoff.Materials;
import org.benchmetre.farm.takeoff.TakeOff;

/**
 * What parts cost in a year. Each part recovers its exact cost over its life, less salvage; repairs are a share of its cost;
 * installing and taking out recover the same way, taking out as a negative salvage; insurance and property tax are shares of average
 * value. Capital recovery is worked out for one unit of an item and multiplied by its quantity.
 */
public final class PartsYearly {

    private static final Unit YEARLY = Unit.parse("money/a");

    /** Life of each part, in years. */
    public final Line life;
    /** Salvage of a unit of each part, money/item. */
    public final Line unitSalvage;
    /** Repairs of a unit of each part, money/(a item). */
    public final Line unitRepairs;
    /** Capital recovery of each part a year, for the chosen way, money/a. */
    public final Line recovery;
    /** Repairs of each part a year, for the chosen way, money/a. */
    public final Line repairs;
    /** Recovery and repairs of each part, money/a, by irrigation system. */
    public final Line wayParts;
    /** Installing and taking out, money/a, by irrigation system. */
    public final Line wayLabour;
    /** Insurance and property tax, money/a, by irrigation system. */
    public final Line wayCharges;
    /** Installing and taking out, for each unit of the driver, money/(a driver). */
    public final Line driverLabour;
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
        ScheduleBuilder table = b.schedule(Sheets.MATERIALS, "Parts: yearly cost of a unit");
        ScheduleBuilder parts = b.schedule(Sheets.MATERIALS, "Yearly cost of parts by irrigation system");
        ScheduleBuilder ways = b.schedule(Sheets.MATERIALS, "Installing and charges by irrigation system");
        life = table.line(
                "material_life_years",
                "Life",
                Unit.parse("a"),
                OwnershipRates.years(m.life, m.lifeUnit, cropsPerYear),
                OwnershipRates.LIFE);
        unitSalvage =
                table.line("material_unit_salvage", "Salvage of a unit", MONEY.over(ITEM), m.salvage.over(t.packSize));
        Unit perItem = YEARLY.over(ITEM);
        Line recovered =
                rates.recovered(table, "material_unit_recovery", "Capital recovery", life, t.unitCost, unitSalvage);
        unitRepairs = table.line("material_unit_repairs", "Repairs", perItem, t.unitCost.times(m.repairs));
        repairs =
                table.line("material_repairs_yearly", "Repairs, chosen system", YEARLY, t.quantity.times(unitRepairs));
        recovery = table.line(
                "material_recovery_yearly", "Capital recovery, chosen system", YEARLY, t.quantity.times(recovered));
        driverCharges = table.line(
                "material_driver_charges",
                "Insurance and tax, a driver",
                YEARLY.over(DRIVER),
                t.perDriver.times(rates.charges(t.unitCost, unitSalvage)),
                OwnershipRates.CHARGED);
        driverLabour = table.line(
                "material_driver_labour",
                "Installing and taking out, a driver",
                YEARLY.over(DRIVER),
                m.rate.times(unitLabour(table, m, wage)));
        wayParts = parts.line(
                "material_way_yearly_cost",
                "Yearly cost of the exact quantity, by part",
                YEARLY,
                t.wayAmount.times(t.perDriver).times(recovered.plus(unitRepairs)));
        wayLabour = ways.line(
                "way_labour_yearly",
                "Installing and taking out",
                YEARLY,
                sumProduct(t.wayAmount, driverLabour, m.axis));
        wayCharges = ways.line(
                "way_charges_yearly",
                "Insurance and property tax",
                YEARLY,
                sumProduct(t.wayAmount, driverCharges, m.axis));
    }

    /**
     * Adds what an amount spent on a part, or left as salvage at the end of its life, is in a year; the yearly cost is a straight line
     * in both.
     *
     * @param s where the lines are added
     * @param id identifier
     * @param label what a reader sees
     * @param cost an amount spent
     * @param salvage an amount that is left at the end of life
     * @return money/a, by part
     */
    public Line recoveredOf(ScheduleBuilder s, String id, String label, Formula cost, Formula salvage) {
        return rates.recovered(s, id, label, life, cost, salvage);
    }

    /**
     * Insurance and property tax of an amount spent that leaves no salvage.
     *
     * @param cost an amount spent
     * @return money/a
     */
    public Formula chargesOf(Formula cost) {
        return rates.charges(cost, none(MONEY));
    }

    /** Installing a unit recovers over its life like a cost, taking it out like a negative salvage. */
    private Line unitLabour(ScheduleBuilder table, Materials m, Line wage) {
        Unit perItem = MONEY.over(ITEM);
        Line install = table.line("material_unit_installing", "Installing a unit", perItem, m.installHours.times(wage));
        Line remove = table.line(
                "material_unit_taking_out",
                "Taking out a unit, as negative salvage",
                perItem,
                none(perItem).minus(m.removeHours.times(wage)));
        return rates.recovered(
                table, "material_unit_labour", "Installing and taking out, a unit", life, install, remove);
    }
}
