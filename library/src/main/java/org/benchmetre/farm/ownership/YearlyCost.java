package org.benchmetre.farm.ownership;

import static org.benchmetre.budget.Formulas.lookup;
import static org.benchmetre.budget.Formulas.none;
import static org.benchmetre.budget.Formulas.onlyWhen;
import static org.benchmetre.budget.Formulas.sum;
import static org.benchmetre.budget.Formulas.sumProduct;
import static org.benchmetre.farm.input.TradeUnits.DRIVER;
import static org.benchmetre.farm.input.TradeUnits.ITEM;
import static org.benchmetre.farm.input.TradeUnits.MONEY;

import org.benchmetre.budget.BudgetBuilder;
import org.benchmetre.budget.Formula;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.ScheduleBuilder;
import org.benchmetre.budget.unit.Unit;
import org.benchmetre.farm.crop.Harvest;
import org.benchmetre.farm.crop.PlantStock;
import org.benchmetre.farm.input.Sheets;
import org.benchmetre.farm.takeoff.CostGroups;
import org.benchmetre.farm.takeoff.FirstCost;
import org.benchmetre.farm.takeoff.Materials;
import org.benchmetre.farm.takeoff.TakeOff;

/**
 * Yearly cost: what it takes to own, before labour and energy of the season. Each part recovers its exact cost over its life, less
 * salvage; repairs are a share of its cost; installing and taking out recover the same way, taking out as a negative salvage;
 * insurance and property tax are a group of their own; plants recover over their life. Each amount reaches the total along one path.
 */
public final class YearlyCost {

    private static final Unit YEARLY = Unit.parse("money/a");

    /** Yearly cost in total. */
    public final Line total;
    /** Yearly cost by group, for the chosen way. */
    public final Line byGroup;
    /** Life of each part, in years. */
    public final Line life;
    /** Salvage of a unit of each part. */
    public final Line unitSalvage;
    /** Repairs of a unit of each part, a year. */
    public final Line unitRepairs;
    /** Insurance and property tax, by way to water. */
    public final Line wayCharges;
    /** Life of the chosen plants, in years. */
    public final Line plantsLife;

    private final OwnershipRates rates;

    /**
     * Declares the lines.
     *
     * @param b where schedules are added
     * @param s the schedule of results for a reader
     * @param rates rates and rules
     * @param p what first cost is made of
     * @param chosen choices and wage
     * @param groups the groups of cost
     * @param plantsFirst first cost of the plants
     * @param harvest crops a year and fruit
     */
    public YearlyCost(
            BudgetBuilder b,
            ScheduleBuilder s,
            OwnershipRates rates,
            FirstCost.Parts p,
            FirstCost.Choices chosen,
            CostGroups groups,
            Line plantsFirst,
            Harvest harvest) {
        this.rates = rates;
        Materials m = p.materials();
        TakeOff t = p.takeOff();
        ScheduleBuilder table = b.schedule(Sheets.MATERIALS, "Parts: yearly cost of a unit");
        ScheduleBuilder groupTable = b.schedule(Sheets.SUMMARY, "Yearly cost by group, for the chosen way to water");
        ScheduleBuilder perMetre = b.schedule(
                Sheets.SUMMARY, "Yearly cost per metre of bench, all ways to water (before labour and energy)");
        ScheduleBuilder parts = b.schedule(Sheets.IRRIGATION, "Yearly cost of parts by way to water");
        ScheduleBuilder ways = b.schedule(Sheets.IRRIGATION, "Yearly cost by way to water (before labour and energy)");

        life = table.line(
                "material_life_years",
                "Life",
                Unit.parse("a"),
                OwnershipRates.years(m.life, m.lifeUnit, harvest.cropsPerYear));
        unitSalvage =
                table.line("material_unit_salvage", "Salvage of a unit", MONEY.over(ITEM), m.salvage.over(t.packSize));
        Unit perItem = YEARLY.over(ITEM);
        Line recovered = table.line(
                "material_unit_recovery", "Capital recovery", perItem, rates.yearly(life, t.unitCost, unitSalvage));
        unitRepairs = table.line("material_unit_repairs", "Repairs", perItem, t.unitCost.times(m.repairs));
        Line charges = table.line(
                "material_driver_charges",
                "Insurance and tax, a driver",
                YEARLY.over(DRIVER),
                t.perDriver.times(rates.charges(t.unitCost, unitSalvage)));
        Line labour = table.line(
                "material_driver_labour",
                "Installing and taking out, a driver",
                YEARLY.over(DRIVER),
                labour(m, life, chosen.wage()));

        Line wayParts = parts.line(
                "material_way_yearly_cost",
                "Yearly cost of the exact quantity, by part",
                YEARLY,
                t.wayAmount.times(t.perDriver).times(recovered.plus(unitRepairs)));
        Line wayLabour = ways.line(
                "way_labour_yearly", "Installing and taking out", YEARLY, sumProduct(t.wayAmount, labour, m.axis));
        wayCharges = ways.line(
                "way_charges_yearly", "Insurance and property tax", YEARLY, sumProduct(t.wayAmount, charges, m.axis));
        ScheduleBuilder plantYears = b.schedule(Sheets.CROP, "Plants, a year");
        plantsLife = plantYears.line(
                "plants_life_years",
                "Life of the chosen stock",
                Unit.parse("a"),
                lookup(years(b, p.stock(), harvest), p.stock().key, chosen.stock()));
        Line plants = plantYears.line(
                "plants_yearly_cost",
                "Plants, recovered over their life",
                YEARLY,
                rates.yearly(plantsLife, plantsFirst, none(MONEY)));

        Line groupByWay = b.schedule(Sheets.IRRIGATION, "Yearly cost by group and way to water")
                .line(
                        "group_way_yearly_cost",
                        "Yearly cost, by group",
                        YEARLY,
                        groups.rows(wayParts, p.ways().whereFilled(plants), wayLabour, wayCharges));
        Line metres = p.house().benchMetres;
        Unit yearlyPerMetre = Unit.parse("money/(m a)");
        Line way = ways.line("way_yearly_cost", "Yearly cost", YEARLY, sum(groupByWay, groups.axis));
        ways.line("way_yearly_cost_per_metre", "Yearly cost per metre", yearlyPerMetre, way.over(metres));
        perMetre.line(
                "group_way_yearly_cost_per_metre",
                "Yearly cost per metre of bench, by group",
                yearlyPerMetre,
                groupByWay.over(metres));
        byGroup = groupTable.line(
                "group_yearly_cost", "Yearly cost", YEARLY, lookup(groupByWay, p.ways().key, chosen.way()));
        groupTable.line("group_yearly_cost_per_metre", "Yearly cost per metre", yearlyPerMetre, byGroup.over(metres));
        total = s.line("yearly_cost_total", "Yearly cost, in total", YEARLY, sum(byGroup, groups.axis));
        results(s, p, harvest);
    }

    private Formula labour(Materials m, Line life, Line wage) {
        Formula install = m.installHours.times(wage);
        Formula remove = m.removeHours.times(wage);
        return m.rate.times(rates.yearly(life, install, none(remove.unit()).minus(remove)));
    }

    private static Line years(BudgetBuilder b, PlantStock stock, Harvest harvest) {
        return b.schedule(Sheets.CROP, "Plant stock: lives")
                .line(
                        "stock_life_years",
                        "Life",
                        Unit.parse("a"),
                        OwnershipRates.years(stock.life, stock.lifeUnit, harvest.cropsPerYear));
    }

    private void results(ScheduleBuilder s, FirstCost.Parts p, Harvest harvest) {
        Unit perFoot = Unit.parse("money/(ft a)");
        Line metre = s.line(
                "yearly_cost_per_metre",
                "Yearly cost per metre of bench",
                Unit.parse("money/(m a)"),
                total.over(p.house().benchMetres));
        s.line("yearly_cost_per_foot", "Yearly cost per foot of bench", perFoot, metre.in(perFoot));
        s.line(
                "yearly_cost_per_plant",
                "Yearly cost per plant",
                Unit.parse("money/(plant a)"),
                total.over(p.planting().plantCount));
        Unit perSquareFoot = Unit.parse("money/(ft2 a)");
        Line area = s.line(
                "yearly_cost_per_area",
                "Yearly cost per m² of floor",
                Unit.parse("money/(m2 a)"),
                total.over(p.house().houseArea));
        s.line(
                "yearly_cost_per_square_foot",
                "Yearly cost per square foot of floor",
                perSquareFoot,
                area.in(perSquareFoot));
        s.line(
                "yearly_cost_per_kg",
                "Yearly cost per kg of marketable fruit",
                Unit.parse("money/kg"),
                onlyWhen(harvest.yield.isPositive(), total.over(harvest.yield), "no yield"));
    }
}
