package org.benchmetre.farm;

import static org.benchmetre.budget.Formulas.lookup;

import org.benchmetre.budget.Axis;
import org.benchmetre.budget.Budget;
import org.benchmetre.budget.BudgetBuilder;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.ScheduleBuilder;
import org.benchmetre.budget.Structure;
import org.benchmetre.budget.WhatIf;
import org.benchmetre.farm.comparison.CostSlopes;
import org.benchmetre.farm.comparison.DoubtfulEntries;
import org.benchmetre.farm.comparison.LineShare;
import org.benchmetre.farm.comparison.WaysCompared;
import org.benchmetre.farm.crop.ChosenStock;
import org.benchmetre.farm.crop.Crop;
import org.benchmetre.farm.crop.Harvest;
import org.benchmetre.farm.crop.PlantStock;
import org.benchmetre.farm.crop.StockGrowth;
import org.benchmetre.farm.energy.Climate;
import org.benchmetre.farm.energy.DesignNight;
import org.benchmetre.farm.energy.Electricity;
import org.benchmetre.farm.energy.EnergyCost;
import org.benchmetre.farm.energy.Envelope;
import org.benchmetre.farm.energy.Fuel;
import org.benchmetre.farm.energy.HeatLoss;
import org.benchmetre.farm.energy.Heating;
import org.benchmetre.farm.energy.HouseEnergy;
import org.benchmetre.farm.feed.Feed;
import org.benchmetre.farm.finance.CashFlow;
import org.benchmetre.farm.input.FarmEntries;
import org.benchmetre.farm.input.FarmTable;
import org.benchmetre.farm.input.FarmTables;
import org.benchmetre.farm.input.Months;
import org.benchmetre.farm.input.Sheets;
import org.benchmetre.farm.irrigation.clogging.Clogging;
import org.benchmetre.farm.irrigation.clogging.FailedOutlets;
import org.benchmetre.farm.irrigation.hydraulics.Hydraulics;
import org.benchmetre.farm.irrigation.hydraulics.Ways;
import org.benchmetre.farm.irrigation.water.Watering;
import org.benchmetre.farm.layout.Containers;
import org.benchmetre.farm.layout.House;
import org.benchmetre.farm.layout.Planting;
import org.benchmetre.farm.layout.Substrate;
import org.benchmetre.farm.layout.Trough;
import org.benchmetre.farm.operations.Operations;
import org.benchmetre.farm.ownership.BudgetMonths;
import org.benchmetre.farm.ownership.EnterpriseBudget;
import org.benchmetre.farm.ownership.MostOfTotal;
import org.benchmetre.farm.ownership.MovesWithYield;
import org.benchmetre.farm.ownership.Overhead;
import org.benchmetre.farm.ownership.OwnershipRates;
import org.benchmetre.farm.ownership.PartsYearly;
import org.benchmetre.farm.ownership.UsualTotals;
import org.benchmetre.farm.ownership.YearlyCost;
import org.benchmetre.farm.profile.CropProfile;
import org.benchmetre.farm.takeoff.CostGroups;
import org.benchmetre.farm.takeoff.Drivers;
import org.benchmetre.farm.takeoff.FirstCost;
import org.benchmetre.farm.takeoff.Materials;
import org.benchmetre.farm.takeoff.TakeOff;
import org.benchmetre.scenario.ScenarioReader;

/** Puts the sections together into one budget. */
public final class FarmBudget {

    private static final String USUAL_CROP = "strawberry";

    /** Reads scenarios of a farm. */
    public static final ScenarioReader READER = new ScenarioReader(
            FarmTables.FORMS, FarmBudget::of, FarmTable.MATERIALS.file(), USUAL_CROP, CropProfile::exists);

    private FarmBudget() {}

    /**
     * Builds the budget of a structure. Its entries hold their documented defaults.
     *
     * @param structure the keys of the tables
     * @return the budget
     */
    public static Budget of(Structure structure) {
        CropProfile profile = CropProfile.of(structure);
        FarmEntries entries = new FarmEntries(profile);
        BudgetBuilder b = new BudgetBuilder(structure);
        b.sheetsInOrder(Sheets.IN_ORDER);

        ScheduleBuilder summary = b.schedule(Sheets.SUMMARY, "First cost: what it takes to build");
        ScheduleBuilder yearly = b.schedule(Sheets.SUMMARY, "Yearly cost: what it takes to own and to run");
        ScheduleBuilder budgetPage = b.schedule(Sheets.BUDGET, "Enterprise budget of a year");
        WaysCompared compared = new WaysCompared(b);
        ScheduleBuilder choices = b.schedule(Sheets.ENTRIES, "Choices and rates");
        Months months = new Months(b, entries.profile());
        House house = new House(b, entries);
        Containers containers = new Containers(b, entries, house);
        Planting planting = new Planting(b, entries, house, containers);
        Trough trough = new Trough(b, entries, house, containers, planting);
        Substrate substrate = new Substrate(b, entries, trough);
        Ways ways = new Ways(b, house, planting);
        Hydraulics hydraulics = new Hydraulics(b, entries, ways);
        PlantStock stock = new PlantStock(b, entries, house, planting);
        Line wayChoice = entries.add(choices.textEntry("irrigation_choice", "Irrigation system")
                .keyOf(ways.key)
                .usually(firstKey(ways.axis), "first system of the list"));
        Line stockChoice = entries.add(choices.textEntry("stock_choice", "Plant stock")
                .keyOf(stock.key)
                .usually(firstKey(stock.axis), "first stock of the list"));
        Line wage = Rates.declare(choices, entries);
        summary.textLine("irrigation_label", "Irrigation system", lookup(ways.label, ways.key, wayChoice));
        summary.textLine("stock_label_chosen", "Plant stock", lookup(stock.label, stock.key, stockChoice));

        Feed feed = new Feed(b, entries);
        Watering watering = new Watering(b, entries, months, hydraulics, wayChoice, feed.costPerVolume);
        Drivers drivers = new Drivers(
                b,
                new Drivers.Sections(house, containers, planting, trough, substrate, ways),
                watering.headerLength,
                wayChoice);
        Materials materials = new Materials(b, drivers, ways);
        TakeOff takeOff = new TakeOff(b, materials, drivers, ways, wayChoice);
        FirstCost.Parts parts = new FirstCost.Parts(materials, takeOff, ways, stock, house, planting);
        FirstCost.Choices chosen = new FirstCost.Choices(wayChoice, stockChoice, wage);
        CostGroups groups = new CostGroups(materials, RunningCosts.LABELS);
        FirstCost first = new FirstCost(b, summary, parts, chosen, groups);
        StockGrowth growth = new StockGrowth(b, entries, stock);
        OwnershipRates rates = new OwnershipRates(choices, entries);
        PartsYearly owned = new PartsYearly(b, rates, materials, takeOff, wage, growth.cropsPerYear);
        Clogging clogging = new Clogging(b, entries, hydraulics, wage);
        Crop crop = new Crop(
                b,
                entries,
                months,
                planting,
                new ChosenStock(stock, growth, stockChoice),
                fruit -> first.ofWay(clogging.fruitLost(
                        new FailedOutlets.Parts(materials.key, owned.life, takeOff.unitCost),
                        fruit,
                        planting.each(first.plants))));
        Harvest harvest = crop.harvest;
        Operations operations = new Operations(
                b,
                entries,
                months,
                new Operations.Grounds(house, containers, planting, trough),
                crop,
                watering.cropShare);
        MovesWithYield moves = new MovesWithYield(
                b,
                harvest,
                operations.fruit.pickingMoves,
                operations.fruit.packingMoves,
                operations.labour.movesWithYield);
        clogging.value(moves.left);
        HouseEnergy energy = energy(b, entries, months, house, watering.electricityPrice);
        Overhead overhead = new Overhead(b, entries, house, materials.driver);
        RunningCosts.Owners owners =
                new RunningCosts.Owners(watering, clogging, operations.labour, moves, energy, overhead);
        RunningCosts running = new RunningCosts(b, entries, ways, wayChoice, owners);
        YearlyCost yearlyCost = new YearlyCost(
                b,
                yearly,
                first,
                owned,
                harvest,
                new YearlyCost.Running(
                        running.groups(), clogging.dry().fruitLost.times(harvest.pricePerKg)));
        crop.compare(b, moves.workPerKg, yearlyCost.byStock, house.benchMetres);
        BudgetPage.Needs needs = new BudgetPage.Needs(first, yearlyCost, crop.chosen.bought(), operations.groups);
        new BudgetMonths(
                b,
                months,
                new BudgetMonths.Parts(
                        harvest,
                        operations.labour.costInMonth,
                        operations.labour.inputsInMonth,
                        energy.cost().byMonth,
                        new BudgetMonths.Water(
                                first.ofWay(watering.givenByMonth),
                                first.ofWay(watering.given),
                                first.ofWay(watering.cost.running))));
        EnterpriseBudget page = new EnterpriseBudget(
                b, budgetPage, BudgetPage.items(owners, running, needs), house, planting, harvest.yield);
        MostOfTotal most = new MostOfTotal(b);
        most.watch(
                "Part",
                new MostOfTotal.Rows("first_cost_part", Sheets.MATERIALS, takeOff.exact, first.total),
                "This part is most of first cost: check its price, its pack and its rate for a factor of ten or a hundred.");
        most.watch(
                "Row of the enterprise budget",
                new MostOfTotal.Rows("yearly_row", Sheets.BUDGET, page.costs, page.total),
                "This row is most of the yearly cost: check its price, its hours and its life for a factor of ten or a hundred.");
        new UsualTotals(b, profile)
                .watch(first.perArea, "Check prices, packs and rates of parts, and the size of the house.")
                .watch(
                        "operating_cost_per_area",
                        "Operating costs per m² of floor",
                        page.operating.over(house.houseArea),
                        "Check hours, wages, plants, heat, and the size of the house.")
                .watch(yearlyCost.perKg, "Check wages, hours, lives of parts, and the yield.")
                .watch(
                        "fruit_per_area",
                        "Marketable fruit per m² of floor",
                        harvest.yield.over(house.houseArea),
                        "Check yield_per_plant, plant_spacing and the size of the house.");
        LineShare line = new LineShare(b, materials, takeOff, owned, wage);
        CostSlopes slopes = new CostSlopes(
                b,
                ways,
                new CostSlopes.Parts(materials, takeOff, owned),
                new CostSlopes.Upkeep(clogging, running.interest),
                new CostSlopes.Fruit(harvest, crop.priceLevel),
                house.benchMetres);
        compared.compare(
                entries,
                new WaysCompared.Sides(
                        ways,
                        wayChoice,
                        new WaysCompared.Water(hydraulics, watering, clogging),
                        new WaysCompared.Costs(
                                line,
                                running.interest.byWay,
                                first.wayPerMetre,
                                yearlyCost.way,
                                yearlyCost.wayPerMetre),
                        house.benchMetres),
                new DoubtfulEntries(b, structure.currency())
                        .ofWays(clogging.failed(), slopes)
                        .add(wage, entries.range(b, choices, wage), slopes.ofWage)
                        .add(crop.priceLevel, entries.range(b, choices, crop.priceLevel), slopes.ofPriceLevel));
        new CashFlow(b, entries, first, harvest, yearlyCost, running.cash);
        WhatIf.table(
                b,
                Sheets.WHAT_IF,
                "Returns above total cost in a year, over steps of price and yield",
                page.aboveTotal,
                new WhatIf.Steps(crop.yieldPerPlant, "yield", "Fruit per plant", 0.7, 0.85, 1, 1.15, 1.3),
                new WhatIf.Steps(crop.priceLevel, "price", "Price level", 0.8, 0.9, 1, 1.1, 1.2));
        Cautions.add(b);
        return b.build();
    }

    static HouseEnergy energy(BudgetBuilder b, FarmEntries entries, Months months, House house, Line electricityPrice) {
        Envelope skin = new Envelope(b, entries, house.length, house.width, house.houseArea);
        HeatLoss loss = new HeatLoss(b, entries, skin);
        Climate climate = new Climate(b, months);
        Fuel fuel = new Fuel(b, entries);
        new DesignNight(b, entries, loss, climate, fuel, house.houseArea);
        Heating heating = new Heating(b, entries, loss, climate, fuel, house.houseArea);
        Electricity electricity = new Electricity(b, entries, months, house.houseArea, electricityPrice);
        EnergyCost cost = new EnergyCost(b, heating.cost, electricity.cost, months, house.houseArea);
        return new HouseEnergy(cost, heating, electricity);
    }

    private static String firstKey(Axis axis) {
        return axis.isSpare(0) ? "" : axis.keys().get(0);
    }
}
