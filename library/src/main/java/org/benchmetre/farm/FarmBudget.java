package org.benchmetre.farm;

import static org.benchmetre.budget.Formulas.lookup;
import static org.benchmetre.budget.Formulas.none;

import java.util.List;
import org.benchmetre.budget.Budget;
import org.benchmetre.budget.BudgetBuilder;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.ScheduleBuilder;
import org.benchmetre.budget.unit.Unit;
import org.benchmetre.farm.crop.Harvest;
import org.benchmetre.farm.crop.PlantStock;
import org.benchmetre.farm.feed.Feed;
import org.benchmetre.farm.energy.Climate;
import org.benchmetre.farm.energy.DesignNight;
import org.benchmetre.farm.energy.Electricity;
import org.benchmetre.farm.energy.EnergyCost;
import org.benchmetre.farm.energy.Envelope;
import org.benchmetre.farm.energy.Fuel;
import org.benchmetre.farm.energy.HeatLoss;
import org.benchmetre.farm.energy.Heating;
import org.benchmetre.farm.finance.CashFlow;
import org.benchmetre.farm.input.FarmEntries;
import org.benchmetre.farm.input.Months;
import org.benchmetre.farm.input.Settings;
import org.benchmetre.farm.input.Sheets;
import org.benchmetre.farm.irrigation.DryPlants;
import org.benchmetre.farm.irrigation.FailedOutlets;
import org.benchmetre.farm.irrigation.Hydraulics;
import org.benchmetre.farm.irrigation.Watering;
import org.benchmetre.farm.irrigation.LineCare;
import org.benchmetre.farm.irrigation.WaterQuality;
import org.benchmetre.farm.input.TradeUnits;
import org.benchmetre.farm.irrigation.Ways;
import org.benchmetre.farm.layout.Containers;
import org.benchmetre.farm.layout.House;
import org.benchmetre.farm.layout.Planting;
import org.benchmetre.farm.layout.Substrate;
import org.benchmetre.farm.layout.Trough;
import org.benchmetre.farm.ownership.EnterpriseBudget;
import org.benchmetre.farm.ownership.Margin;
import org.benchmetre.farm.ownership.OwnershipRates;
import org.benchmetre.farm.ownership.PartsYearly;
import org.benchmetre.farm.ownership.YearlyCost;
import org.benchmetre.farm.takeoff.CostGroups;
import org.benchmetre.farm.takeoff.Drivers;
import org.benchmetre.farm.takeoff.FirstCost;
import org.benchmetre.farm.takeoff.Materials;
import org.benchmetre.farm.takeoff.TakeOff;
import org.benchmetre.scenario.FarmFile;
import org.benchmetre.scenario.Faults;
import org.benchmetre.scenario.ScenarioFolder;

/** Puts the sections together into one budget. */
public final class FarmBudget {

    private FarmBudget() {}

    /**
     * Reads a scenario and builds its budget.
     *
     * @param folder the scenario
     * @param faults where faults are collected; the budget is sound only when there are none
     * @return the budget
     */
    public static Budget of(ScenarioFolder folder, Faults faults) {
        FarmFile farm = FarmFile.of(folder.table("farm.csv"), faults);
        Settings settings = Settings.of(farm, folder.name(), faults);
        FarmEntries entries = new FarmEntries(farm, settings.currency(), faults);
        BudgetBuilder b = new BudgetBuilder(settings.title(), settings.currency());
        b.sheetsInOrder(Sheets.IN_ORDER);

        ScheduleBuilder summary = b.schedule(Sheets.SUMMARY, "First cost: what it takes to build");
        ScheduleBuilder yearly =
                b.schedule(Sheets.SUMMARY, "Yearly cost: what it takes to own, before labour and energy");
        ScheduleBuilder margin = b.schedule(Sheets.SUMMARY, "Margin: what is left, before labour and energy");
        ScheduleBuilder choices = b.schedule(Sheets.ENTRIES, "Choices and rates");
        Months months = new Months(b, folder.table(Months.FILE), faults);
        House house = new House(b, entries);
        Containers containers = new Containers(b, entries, house);
        Planting planting = new Planting(b, entries, house, containers);
        Trough trough = new Trough(b, entries, house, containers, planting);
        Substrate substrate = new Substrate(b, entries, trough);
        Ways ways = new Ways(b, folder.table(Ways.FILE), faults, house, planting);
        Hydraulics hydraulics = new Hydraulics(b, entries, ways, house, planting);
        PlantStock stock = new PlantStock(b, folder.table(PlantStock.FILE), faults, planting);
        Line wayChoice = entries.add(choices.textEntry("irrigation_choice", "Way to water, by its key")
                .keyOf(firstKey(ways.axis), "first way of the list", ways.key));
        Line stockChoice = entries.add(choices.textEntry("stock_choice", "Plant stock, by its key")
                .keyOf(firstKey(stock.axis), "first stock of the list", stock.key));
        Line wage = Rates.declare(choices, entries);
        summary.textLine("irrigation_label", "Way to water", lookup(ways.label, ways.key, wayChoice));
        summary.textLine("stock_label_chosen", "Plant stock", lookup(stock.label, stock.key, stockChoice));

        Line feedCost = b.schedule(Sheets.OPERATIONS, "Feed")
                .line("feed_none", "x", Unit.parse("money/m3"), none(Unit.parse("money/m3")));
        new Watering(b, entries, months, house, planting, ways, hydraulics, wayChoice, feedCost);
        Drivers drivers = new Drivers(b, house, containers, planting, trough, substrate, ways);
        Materials materials = new Materials(b, folder.table(Materials.FILE), faults, drivers, ways);
        TakeOff takeOff = new TakeOff(b, materials, drivers, ways, wayChoice);
        FirstCost.Parts parts = new FirstCost.Parts(materials, takeOff, ways, stock, house, planting);
        FirstCost.Choices chosen = new FirstCost.Choices(wayChoice, stockChoice, wage);
        CostGroups groups = new CostGroups(materials, List.of());
        FirstCost first = new FirstCost(b, summary, parts, chosen, groups);
        new Feed(b, entries);
        Harvest harvest = new Harvest(b, entries, planting);
        OwnershipRates rates = new OwnershipRates(choices, entries);
        PartsYearly owned = new PartsYearly(b, rates, materials, takeOff, wage, harvest.cropsPerYear);
        new WaterQuality(b, entries);
        FailedOutlets.Parts carriers =
                new FailedOutlets.Parts(materials.key, owned.life, takeOff.unitCost, materials.keys);
        FailedOutlets failed = new FailedOutlets(b, entries, faults, ways, carriers, hydraulics.outletsInReach);
        DryPlants.Plants plants = new DryPlants.Plants(
                planting.plantCount,
                house.benchMetres,
                harvest.perCrop,
                harvest.cropsPerYear,
                harvest.marketable,
                harvest.leftPerKg,
                first.plants.over(planting.plantCount));
        DryPlants dry = new DryPlants(b, entries, ways, failed, plants, wage);
        new LineCare(b, entries, ways, failed, dry, carriers, house, planting, wage);
        YearlyCost yearlyCost = new YearlyCost(
                b,
                yearly,
                rates,
                parts,
                chosen,
                groups,
                first.plants,
                harvest,
                owned,
                List.of(),
                none(Unit.parse("money/a")));
        Margin left = new Margin(margin, harvest, yearlyCost, house, planting);
        new EnterpriseBudget(b, harvest, groups, first.groupLabel, yearlyCost.byGroup, left.total, house, planting);
        new CashFlow(b, entries, rates, parts, chosen, first, harvest, owned, yearlyCost);
        new CashFlow(b, entries, rates, parts, chosen, first, harvest, yearlyCost);
        Line electricityPrice =
                entries.add(choices.entry("standin_electricity_price", "Price of electricity", Unit.parse("money/kWh"))
                        .from(0, 1_000_000)
                        .typical(0.08, 0.15, 0.4, TradeUnits.INVENTED));
        energy(b, entries, months, house, electricityPrice);
        Cautions.add(b);
        Budget budget = b.build();
        entries.reportUnknown(budget.lines().stream()
                .filter(line -> budget.entry(line).isPresent() && line.axes().isEmpty())
                .map(Line::id)
                .toList());
        new Choices(budget, faults).check();
        for (String file : List.of("farm.csv", Ways.FILE, PlantStock.FILE)) {
            folder.table(file).warnUnaskedColumns(faults);
        }
        months.finish();
        return budget;
    }

    static EnergyCost energy(BudgetBuilder b, FarmEntries entries, Months months, House house, Line electricityPrice) {
        Envelope skin = new Envelope(b, entries, house.length, house.width, house.houseArea);
        HeatLoss loss = new HeatLoss(b, entries, skin);
        Climate climate = new Climate(b, months);
        Fuel fuel = new Fuel(b, entries);
        new DesignNight(b, entries, loss, climate, months, fuel, house.houseArea);
        Heating heating = new Heating(b, entries, loss, climate, months, fuel, house.houseArea);
        Electricity electricity = new Electricity(b, entries, months, house.houseArea, electricityPrice);
        return new EnergyCost(b, heating.cost, electricity.cost, months, house.houseArea);
    }

    private static String firstKey(org.benchmetre.budget.Axis axis) {
        return axis.isSpare(0) ? "" : axis.keys().get(0);
    }
}
