package org.benchmetre.farm;

import static org.benchmetre.budget.Formulas.lookup;

import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.benchmetre.budget.Axis;
import org.benchmetre.budget.Budget;
import org.benchmetre.budget.BudgetBuilder;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.ScheduleBuilder;
import org.benchmetre.budget.Structure;
import org.benchmetre.farm.comparison.CostSlopes;
import org.benchmetre.farm.comparison.DoubtfulEntries;
import org.benchmetre.farm.comparison.LineShare;
import org.benchmetre.farm.comparison.MulchFilm;
import org.benchmetre.farm.comparison.WaysCompared;
import org.benchmetre.farm.crop.Crop;
import org.benchmetre.farm.crop.CropPlants;
import org.benchmetre.farm.crop.CropStands;
import org.benchmetre.farm.crop.CropYear;
import org.benchmetre.farm.crop.FirstFruit;
import org.benchmetre.farm.crop.Harvest;
import org.benchmetre.farm.crop.Indoors;
import org.benchmetre.farm.crop.PlantOrder;
import org.benchmetre.farm.crop.PlantStock;
import org.benchmetre.farm.crop.RipeByHeat;
import org.benchmetre.farm.energy.HouseEnergy;
import org.benchmetre.farm.energy.InsideTemperature;
import org.benchmetre.farm.feed.Feed;
import org.benchmetre.farm.finance.CalendarWords;
import org.benchmetre.farm.finance.CashFlow;
import org.benchmetre.farm.finance.MonthsBase;
import org.benchmetre.farm.finance.OrderWords;
import org.benchmetre.farm.finance.PlanYears;
import org.benchmetre.farm.finance.SeasonCash;
import org.benchmetre.farm.input.FarmEntries;
import org.benchmetre.farm.input.FarmTable;
import org.benchmetre.farm.input.FarmTables;
import org.benchmetre.farm.input.Levels;
import org.benchmetre.farm.input.Months;
import org.benchmetre.farm.input.Sheets;
import org.benchmetre.farm.input.Tables;
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
import org.benchmetre.farm.lending.Lending;
import org.benchmetre.farm.lending.Submission;
import org.benchmetre.farm.levers.FirstDoubt;
import org.benchmetre.farm.levers.LeverList;
import org.benchmetre.farm.levers.Swings;
import org.benchmetre.farm.levers.WhatIfTables;
import org.benchmetre.farm.loans.Uses;
import org.benchmetre.farm.operations.AllWork;
import org.benchmetre.farm.operations.Operations;
import org.benchmetre.farm.ownership.BudgetMonths;
import org.benchmetre.farm.ownership.BudgetSentences;
import org.benchmetre.farm.ownership.ChangingParts;
import org.benchmetre.farm.ownership.Contingency;
import org.benchmetre.farm.ownership.EnterpriseBudget;
import org.benchmetre.farm.ownership.HouseByArea;
import org.benchmetre.farm.ownership.MovesWithYield;
import org.benchmetre.farm.ownership.Overhead;
import org.benchmetre.farm.ownership.OwnershipRates;
import org.benchmetre.farm.ownership.PartsYearly;
import org.benchmetre.farm.ownership.PlantsYearly;
import org.benchmetre.farm.ownership.UsedUp;
import org.benchmetre.farm.ownership.YearlyCost;
import org.benchmetre.farm.ownership.YieldBends;
import org.benchmetre.farm.ownership.YieldRange;
import org.benchmetre.farm.profile.CropProfile;
import org.benchmetre.farm.takeoff.CostGroups;
import org.benchmetre.farm.takeoff.Drivers;
import org.benchmetre.farm.takeoff.FirstCost;
import org.benchmetre.farm.takeoff.Materials;
import org.benchmetre.farm.takeoff.PartBlocks;
import org.benchmetre.farm.takeoff.TakeOff;
import org.benchmetre.farm.takeoff.ToBuy;
import org.benchmetre.farm.whole.Accounts;
import org.benchmetre.farm.whole.AnswerSentences;
import org.benchmetre.farm.whole.HouseThatPays;
import org.benchmetre.farm.whole.LeftOut;
import org.benchmetre.farm.whole.MoneyOfAMetre;
import org.benchmetre.scenario.Deciding;
import org.benchmetre.scenario.ScenarioReader;
import org.benchmetre.scenario.WordChoice;

/** Puts the sections together into one budget. */
public final class FarmBudget {

    private static final String USUAL_CROP = "strawberry";

    private static final List<WordChoice> CHOICES = Stream.concat(
                    Stream.of(RipeByHeat.WORDS),
                    LeverList.CHOICES.stream().map(choice -> choice.without(RipeByHeat.MOVED)))
            .toList();

    /** Reads scenarios of a farm. */
    public static final ScenarioReader READER = new ScenarioReader(
            FarmTables.FORMS,
            FarmBudget::of,
            FarmTable.MATERIALS.file(),
            USUAL_CROP,
            CropProfile::exists,
            new Deciding(CHOICES, List.of(PlanYears.RUN)));

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
        ScheduleBuilder budgetPage = b.shared(Sheets.BUDGET, Tables.BUDGET);
        WaysCompared compared = new WaysCompared(b);
        ScheduleBuilder choices = b.schedule(Sheets.ENTRIES, "Choices and rates");
        Levels levels = new Levels(b, entries);
        Months months = new Months(b, entries.profile());
        House house = new House(b, entries);
        Containers containers = new Containers(b, entries, house);
        Planting planting = new Planting(b, entries, house, containers);
        Trough trough = new Trough(b, entries, house, containers, planting);
        Substrate substrate = new Substrate(b, entries, trough);
        Ways ways = new Ways(b, house, planting);
        Hydraulics hydraulics = new Hydraulics(b, entries, ways);
        PlantStock stock = new PlantStock(b, entries, house, planting, levels);
        Line wayChoice = entries.add(choices.textEntry("irrigation_choice", "Irrigation system")
                .keyOf(ways.key)
                .usually(firstKey(ways.axis), "first system of the list"));
        Line stockChoice = entries.add(choices.textEntry("stock_choice", "Plant stock")
                .keyOf(stock.key)
                .usually(firstKey(stock.axis), "first stock of the list"));
        Rates wages = Rates.declare(choices, entries, levels.wages);
        Line wage = wages.install();
        CropYear cropYear = new CropYear(b, entries, months, wages.planYear());
        CropPlants grown = CropPlants.of(b, entries, months, cropYear, stock, stockChoice);
        CropStands stands = new CropStands(b, months, grown);
        summary.textLine("irrigation_label", "Irrigation system", lookup(ways.label, ways.key, wayChoice));
        summary.textLine("stock_label_chosen", "Plant stock", lookup(stock.label, stock.key, stockChoice));

        Feed feed = new Feed(b, entries);
        Watering watering = new Watering(
                b, entries, new Watering.Season(months, stands.inCrop), hydraulics, wayChoice, feed.costPerVolume);
        HouseEnergy energy = EnergyOfHouse.of(b, entries, months, house, watering.electricityPrice);
        InsideTemperature inside = energy.inside();
        Drivers.Plant plant =
                new Drivers.Plant(ways, watering.headerLength, watering.zoneFlow, energy.heaterPower(), stands.inCrop);
        Drivers drivers =
                new Drivers(b, new Drivers.Sections(house, containers, planting, trough, substrate, plant), wayChoice);
        Materials materials = new Materials(b, drivers, ways);
        TakeOff takeOff = new TakeOff(b, materials, drivers, ways, new TakeOff.Settings(wayChoice, levels.parts));
        PartBlocks blocks = new PartBlocks(b, materials, takeOff.exact);
        Overhead overhead = new Overhead(b, entries, house, blocks.house);
        OwnershipRates rates = new OwnershipRates(choices, entries);
        PartsYearly owned = new PartsYearly(b, rates, materials, takeOff, wage, grown.crops().total);
        PlantOrder order = new PlantOrder(b, grown);
        YearlyCost.Owned owning = new YearlyCost.Owned(
                owned,
                new PlantsYearly(b, rates, order),
                new HouseByArea(b, entries, rates, house.houseArea, blocks.house, overhead.houseCharge),
                new Contingency(b, entries, takeOff, owned));
        FirstCost.Parts parts = new FirstCost.Parts(materials, takeOff, ways, order, house, planting);
        FirstCost.Choices chosen = new FirstCost.Choices(wayChoice, wage);
        CostGroups groups = new CostGroups(materials, RunningCosts.LABELS);
        FirstCost.Lumps lumps = new FirstCost.Lumps(owning.house().cost, owning.contingency().wayCost);
        FirstCost first = new FirstCost(b, summary, parts, chosen, groups, lumps);
        Clogging clogging = new Clogging(
                b, entries, hydraulics, wage, Map.of("hardness", feed.hardness, "dissolved", feed.dissolved));
        Crop crop = new Crop(
                b,
                entries,
                months,
                planting,
                new FirstFruit(
                        b, entries, months, grown, stands, new Indoors(inside.night, inside.mean, inside.unknown)),
                fruit -> first.ofWay(clogging.fruitLost(
                        new FailedOutlets.Parts(materials.key, owned.life, takeOff.unitCost),
                        fruit,
                        grown.eachOf(planting.each(first.plants)))));
        Harvest harvest = crop.harvest;
        Operations operations = new Operations(
                b,
                entries,
                months,
                new Operations.Grounds(house, containers, planting, trough, levels.wages),
                crop,
                stands.inCrop);
        MovesWithYield moves = new MovesWithYield(
                b, harvest, operations.fruit.pickingMoves, operations.fruit.packingMoves, operations.labour.tasksPerKg);
        clogging.value(moves.left);
        AllWork work = new AllWork(
                b,
                entries,
                operations.labour,
                new AllWork.Elsewhere(
                        first.ofWay(clogging.care().careHours)
                                .plus(first.ofWay(clogging.dry().killed).times(clogging.dry().replantHours)),
                        new ChangingParts(b, materials, takeOff, owned.life).hours),
                operations.plantingShare);
        RunningCosts.Owners owners =
                new RunningCosts.Owners(watering, clogging, operations.labour, moves, energy, overhead);
        RunningCosts running =
                new RunningCosts(b, entries, ways, wayChoice, owners, new UsedUp(owned, owning.plants()));
        YearlyCost yearlyCost = new YearlyCost(
                b,
                yearly,
                first,
                owning,
                harvest,
                new YearlyCost.Running(
                        running.groups(), clogging.dry().fruitLost.times(harvest.furtherPrice)));
        crop.compare(b, moves.workPerKg, yearlyCost.plants.byStock, house.benchMetres);
        YieldRange yields = new YieldRange(b, entries, crop.fruitEntry, harvest.planned);
        BudgetContents.Needs needs = new BudgetContents.Needs(
                first,
                yearlyCost,
                operations.groups,
                operations.labour.paidAndNot,
                new YieldBends(b, crop.priceLevel, harvest, yields));
        EnterpriseBudget page = new EnterpriseBudget(
                b,
                budgetPage,
                BudgetContents.items(owners, running, needs, structure.currency()),
                new EnterpriseBudget.Grounds(house, planting, harvest.yield),
                yields);
        LeftOut leftOut =
                new LeftOut(b, entries, new LeftOut.Counted(blocks, owning.house(), overhead, owning.contingency()));
        Accounts accounts = new Accounts(
                b,
                new Accounts.Year(
                        harvest.receipts, page.operating, page.owning, overhead.total, page.total, page.aboveTotal),
                leftOut,
                house,
                planting,
                harvest.yield);
        new AnswerSentences(
                b,
                first.perMetre,
                accounts,
                leftOut,
                new AnswerSentences.Evens(page.evensOfAll.price(), page.evensOfAll.fruit()),
                new MoneyOfAMetre(b, MetreParts.of(owners, running, needs, page.owning), house.benchMetres));
        new HouseThatPays(
                b,
                new HouseThatPays.House(
                        blocks.house.plus(owning.house().cost),
                        blocks.yearOfHouse(b, owned.priced(owning.contingency().share))
                                .plus(owning.house().recovery)
                                .plus(owning.house().charges),
                        house.houseArea),
                page.aboveTotal);
        new BudgetSentences(
                b,
                page,
                yields,
                leftOut.costWords,
                new BudgetSentences.Cited(structure.title(), wages.planYear(), Release.VERSION));
        Proportions.watch(
                b,
                profile,
                new Proportions.Results(
                        first, yearlyCost, page, harvest, house, new Proportions.Work(operations.fruit, work.hours)));
        LineShare line = new LineShare(b, materials, takeOff, owned, wage, owning.contingency().share);
        CostSlopes slopes = new CostSlopes(
                b,
                ways,
                new CostSlopes.Parts(materials, takeOff, owned, owning.contingency().share),
                new CostSlopes.Upkeep(clogging, running.interest),
                new CostSlopes.Levers(harvest, crop.priceLevel, levels),
                house.benchMetres);
        compared.compare(
                entries,
                new WaysCompared.Sides(
                        ways,
                        wayChoice,
                        new WaysCompared.Water(hydraulics, watering, clogging),
                        new WaysCompared.Costs(line, running.interest, yearlyCost.wayPerMetre),
                        house.benchMetres),
                new DoubtfulEntries(b, structure.currency())
                        .ofWays(clogging.failed(), slopes)
                        .add(wages.installWage(), entries.range(b, choices, wages.installWage()), slopes.ofWage)
                        .add(crop.priceLevel, entries.range(b, choices, crop.priceLevel), slopes.ofPriceLevel));
        new MulchFilm(
                b,
                entries,
                new MulchFilm.Parts(materials, takeOff, owned, wage, owning.contingency().share),
                new MulchFilm.Bench(
                        house.benchMetres,
                        trough.mulchMetres,
                        operations.labour.tasksOf(trough.mulchMetres.id()),
                        operations.labour.hour,
                        operations.fruit.pickingMoves),
                moves);
        BudgetMonths cash = new BudgetMonths(
                b,
                months,
                new BudgetMonths.Parts(
                        harvest,
                        operations.labour.cashInMonth,
                        operations.labour.inputsInMonth,
                        energy.cost().byMonth,
                        new BudgetMonths.Water(
                                first.ofWay(watering.givenByMonth),
                                first.ofWay(watering.given),
                                first.ofWay(watering.cost.running))),
                new BudgetMonths.Plants(cropYear, first.order, grown.crops(), yearlyCost.plants.life),
                running.withoutMonth.plus(owned.repairsTotal).plus(yearlyCost.charges));
        Uses uses = new Uses(b);
        CashFlow flow = new CashFlow(
                b,
                entries,
                new CashFlow.Built(first, yearlyCost, uses),
                new CashFlow.FullYear(
                        harvest, operations.labour.cash, energy.cost().total, running.beside(), yearlyCost.charges),
                new CashFlow.ByMonth(
                        cropYear,
                        new MonthsBase.Flows(
                                operations.labour.cashInMonth,
                                operations.labour.inputsInMonth,
                                cash.water,
                                energy.cost().byMonth,
                                running.care,
                                overhead.cash),
                        cash.selling));
        Lending.Farm lent = new Lending.Farm(flow, first, yearlyCost, blocks, uses);
        Lending lending = new Lending(b, entries, lent);
        SeasonCash season = new SeasonCash(b, cropYear, cash, work, harvest.monthYield, energy);
        new CalendarWords(b, season, cash, new CalendarWords.Sections(harvest, work, energy.heating()));
        new ToBuy(b, materials, takeOff, groups);
        new OrderWords(b, takeOff, grown, first.order, flow.startUp);
        LeverList levers = new LeverList(b, entries, name -> !RipeByHeat.moves(b, name));
        new WhatIfTables(b, levers, page.aboveTotalPerArea)
                .first(crop.fruitEntry, crop.priceLevel, harvest.planned, harvest.pricePerKg);
        new FirstDoubt(b, new Swings(b, levers, page.aboveTotalPerArea));
        new Submission(
                b, entries, lending, lent, new Submission.Year(harvest.receipts, page.aboveTotal, overhead.total));
        Cautions.add(b);
        return b.build();
    }

    private static String firstKey(Axis axis) {
        return axis.isSpare(0) ? "" : axis.keys().get(0);
    }
}
