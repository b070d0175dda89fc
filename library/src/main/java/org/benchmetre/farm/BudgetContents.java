package org.benchmetre.farm;

import static org.benchmetre.budget.Formulas.text;

import org.benchmetre.budget.Formula;
import org.benchmetre.budget.Line;
import org.benchmetre.farm.energy.HouseEnergy;
import org.benchmetre.farm.irrigation.clogging.Clogging;
import org.benchmetre.farm.irrigation.water.Watering;
import org.benchmetre.farm.operations.OperationGroups;
import org.benchmetre.farm.operations.PaidWork;
import org.benchmetre.farm.ownership.BudgetItems;
import org.benchmetre.farm.ownership.BudgetRow;
import org.benchmetre.farm.ownership.PartsYearly;
import org.benchmetre.farm.ownership.PlantsYearly;
import org.benchmetre.farm.ownership.YearlyCost;
import org.benchmetre.farm.ownership.YieldBends;
import org.benchmetre.farm.takeoff.CostGroups;
import org.benchmetre.farm.takeoff.FirstCost;

/**
 * What stands in the enterprise budget, each cost with the quantity a grower recognises: hired work and work of the family apart, and
 * what is paid in cash. What is used up within a year is an operating cost and paid, what lasts is recovered and costs no cash; interest
 * is not paid, since no loan is counted.
 */
final class BudgetContents {

    private static final String PLANTS = "plants";

    private final RunningCosts.Owners o;
    private final RunningCosts running;
    private final Needs n;
    private final BudgetItems items;

    private BudgetContents(RunningCosts.Owners o, RunningCosts running, Needs n, String currency) {
        this.o = o;
        this.running = running;
        this.n = n;
        items = new BudgetItems(o.moves(), n.bends(), currency);
        work();
        growing();
        usedUp();
        energyAndRepairs();
        items.operating(BudgetRow.of(
                        "operating_interest",
                        "Interest on operating capital",
                        currency,
                        running.interest.expense,
                        running.interest.interest)
                .noCash());
        PartsYearly owned = n.yearly().owned;
        items.ownership(
                        n.first().groups,
                        n.first().groupLabel,
                        n.first().groups.ofParts(owned.recovery),
                        owned.labourTotal,
                        owned.chargesTotal.plus(n.yearly().house.charges),
                        n.first().parts.house().benchMetres)
                .owning(BudgetRow.of(
                                "own_plants",
                                "Plants, recovered over their life",
                                PLANTS,
                                n.yearly().plants.lastingPlants,
                                n.yearly().plants.recovery)
                        .noCash())
                .owning(BudgetRow.of(
                                "own_house_by_area",
                                "House, by area",
                                "m²",
                                n.yearly().house.floor,
                                n.yearly().house.recovery)
                        .noCash())
                .owning(BudgetRow.lump("own_contingency", text("Contingency on parts"), n.yearly().contingency.recovery)
                        .noCash())
                .overhead(o.overhead())
                .adding(sums());
    }

    /**
     * What the budget needs beside the running costs.
     *
     * @param first first cost and its groups
     * @param yearly yearly cost
     * @param groups work by group, hired and of the family
     * @param work hired work and work of the family
     * @param bends what full channels make of low and high yield
     */
    record Needs(FirstCost first, YearlyCost yearly, OperationGroups groups, PaidWork work, YieldBends bends) {

        Formula chosen(Line byWay) {
            return first.ofWay(byWay);
        }
    }

    static BudgetItems items(RunningCosts.Owners o, RunningCosts running, Needs n, String currency) {
        return new BudgetContents(o, running, n, currency).items;
    }

    private void work() {
        PaidWork work = n.work();
        items.hired(new BudgetItems.ByGroup(work.label, work.hours, work.cost, work.moves));
        items.operating(BudgetRow.of(
                        "work_of_family",
                        "Family labour (not paid in cash)",
                        "h",
                        work.family.hours(),
                        work.family.worth())
                .noCash()
                .withYield(work.familyMoves));
        items.inputs(new BudgetItems.ByGroup(work.label, null, work.inputs, work.inputsMove));
    }

    private void growing() {
        PlantsYearly plants = n.yearly().plants;
        items.operating(BudgetRow.of("plants", "Plants", PLANTS, plants.usedUpPlants, plants.usedUp));
        Watering w = o.watering();
        items.operating(BudgetRow.of(
                "water", "Nutrient solution and water", "m³", n.chosen(w.cost.fresh), n.chosen(w.cost.solution)));
        Clogging clogging = o.clogging();
        items.operating(BudgetRow.lump("care", text("Irrigation maintenance"), n.chosen(clogging.care().careCost)));
        items.operating(BudgetRow.of(
                "replanting",
                "Replanting after dry plants",
                PLANTS,
                n.chosen(clogging.dry().killed),
                n.chosen(clogging.dry().replanting)));
    }

    private void usedUp() {
        PartsYearly parts = n.yearly().owned;
        CostGroups groups = n.first().groups;
        Line metres = n.first().parts.house().benchMetres;
        items.usedUp(groups, n.first().groupLabel, groups.ofParts(parts.usedUp), metres);
        items.operating(
                BudgetRow.of("used_up_labour", "Laying and taking out", "h", parts.usedUpHours, parts.usedUpLabour));
    }

    private void energyAndRepairs() {
        HouseEnergy energy = o.energy();
        items.operating(BudgetRow.of(
                "heating",
                text("Heating fuel"),
                energy.heating().fuelUnit,
                energy.heating().fuelOfYear,
                energy.heating().costOfYear));
        items.operating(BudgetRow.of(
                "electricity",
                "Electricity",
                "kWh",
                energy.electricity().energyOfYear.plus(n.chosen(o.watering().pumpEnergy)),
                energy.electricity().costOfYear.plus(n.chosen(o.watering().pumping))));
        items.operating(BudgetRow.lump("repairs", text("Repairs"), n.yearly().owned.repairsTotal));
    }

    private BudgetItems.Sums sums() {
        YearlyCost yearly = n.yearly();
        PartsYearly owned = yearly.owned;
        return new BudgetItems.Sums(
                o.moves()
                        .harvest
                        .yieldCosts
                        .plus(yearly.plants.usedUp)
                        .plus(o.labour().cost)
                        .plus(o.labour().inputs)
                        .plus(running.watering)
                        .plus(running.usedUp)
                        .plus(o.energy().cost().total)
                        .plus(owned.repairsTotal)
                        .plus(running.interest.interest),
                owned.recoveryTotal
                        .plus(yearly.plants.recovery)
                        .plus(owned.labourTotal)
                        .plus(owned.chargesTotal.plus(yearly.house.charges))
                        .plus(yearly.house.recovery)
                        .plus(yearly.contingency.recovery),
                o.overhead().total);
    }
}
