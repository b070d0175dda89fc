package org.benchmetre.farm;

import static org.benchmetre.budget.Formulas.one;
import static org.benchmetre.budget.Formulas.sum;

import org.benchmetre.budget.Formula;
import org.benchmetre.budget.Line;
import org.benchmetre.farm.operations.OperationGroups;
import org.benchmetre.farm.ownership.BudgetItems;
import org.benchmetre.farm.ownership.PartsYearly;
import org.benchmetre.farm.ownership.YearlyCost;
import org.benchmetre.farm.takeoff.FirstCost;

/** The operating costs of the enterprise budget, each with the quantity a grower recognises. */
final class BudgetPage {

    private BudgetPage() {}

    /**
     * What the page needs beside the running costs.
     *
     * @param first first cost and its groups
     * @param yearly yearly cost
     * @param plants plants to buy for one crop of the house
     * @param work work and inputs by group
     */
    record Needs(FirstCost first, YearlyCost yearly, Formula plants, OperationGroups work) {

        Formula chosen(Line byWay) {
            return first.ofWay(byWay);
        }
    }

    static BudgetItems items(RunningCosts.Owners o, RunningCosts running, Needs n) {
        PartsYearly owned = n.yearly().owned;
        BudgetItems items = new BudgetItems(o.moves());
        items.operating("plants", "Plants, recovered over their life", "plants bought", n.plants(), n.yearly().plants);
        items.operatingEach("", n.work().label, "h", n.work().hours, n.work().cost);
        items.operatingEach("Inputs: ", n.work().label, "a year", null, n.work().inputs);
        items.operating("water", "Water", "m³", n.chosen(o.watering().cost.fresh), n.chosen(o.watering().cost.water))
                .operating(
                        "drain",
                        "Handling of drain",
                        "m³",
                        n.chosen(o.watering().drained),
                        n.chosen(o.watering().cost.drain))
                .operating(
                        "feed",
                        "Nutrient solution",
                        "m³",
                        n.chosen(o.watering().cost.fresh),
                        n.chosen(o.watering().cost.feed))
                .operating(
                        "pumping", "Pumping", "kWh", n.chosen(o.watering().pumpEnergy), n.chosen(o.watering().pumping))
                .operating(
                        "care",
                        "Irrigation maintenance",
                        "a year",
                        one(),
                        n.chosen(o.clogging().care().careCost))
                .operating(
                        "replanting",
                        "Replanting after dry plants",
                        "plants",
                        n.chosen(o.clogging().dry().killed),
                        n.chosen(o.clogging().dry().replanting))
                .operating(
                        "heating",
                        "Heating",
                        "units of fuel",
                        o.energy().heating().fuelOfYear,
                        o.energy().heating().costOfYear)
                .operating(
                        "electricity",
                        "Electricity but for pumps",
                        "kWh",
                        o.energy().electricity().energyOfYear,
                        o.energy().electricity().costOfYear)
                .operating(
                        "repairs",
                        "Repairs",
                        "a year",
                        one(),
                        sum(owned.repairs, owned.repairs.axes().get(0)))
                .operating(
                        "operating_interest",
                        "Interest on operating capital",
                        "expense",
                        n.chosen(running.interest.expense),
                        n.chosen(running.interest.byWay));
        return items.ownership(
                        n.first().groups,
                        n.first().groupLabel,
                        n.first().groups.ofParts(owned.recovery),
                        n.chosen(owned.wayLabour),
                        n.chosen(owned.wayCharges),
                        n.first().parts.house().benchMetres)
                .overhead(o.overhead());
    }
}
