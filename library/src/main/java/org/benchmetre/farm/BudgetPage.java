package org.benchmetre.farm;

import static org.benchmetre.budget.Formulas.lookup;
import static org.benchmetre.budget.Formulas.one;
import static org.benchmetre.budget.Formulas.sum;

import org.benchmetre.budget.Formula;
import org.benchmetre.budget.Line;
import org.benchmetre.farm.irrigation.hydraulics.Ways;
import org.benchmetre.farm.operations.OperationGroups;
import org.benchmetre.farm.ownership.BudgetItems;
import org.benchmetre.farm.ownership.PartsYearly;
import org.benchmetre.farm.takeoff.CostGroups;

/** The operating costs of the enterprise budget, each with the quantity a grower recognises. */
final class BudgetPage {

    private BudgetPage() {}

    /**
     * What the page needs beside the running costs.
     *
     * @param ways ways to water
     * @param choice key of the way that is counted
     * @param plants plants to buy for one crop of the house
     * @param plantsCost plants, recovered over their life
     * @param work work and inputs by group
     * @param groups groups of cost
     * @param groupLabel their labels
     * @param owned what parts cost in a year
     * @param benchMetres metres of bench
     */
    record Needs(
            Ways ways,
            Line choice,
            Formula plants,
            Line plantsCost,
            OperationGroups work,
            CostGroups groups,
            Line groupLabel,
            PartsYearly owned,
            Line benchMetres) {

        Formula chosen(Line byWay) {
            return lookup(byWay, ways.key, choice);
        }
    }

    static BudgetItems items(RunningCosts.Owners o, RunningCosts running, Needs n) {
        BudgetItems items = new BudgetItems(o.harvest(), o.moves());
        items.operating("plants", "Plants, recovered over their life", "plants bought", n.plants(), n.plantsCost());
        items.operatingEach("", n.work().label, "h", n.work().hours, n.work().cost);
        items.operatingEach("Inputs: ", n.work().label, "a year", null, n.work().inputs);
        items.operating("water", "Water", "m³", n.chosen(o.watering().cost.fresh), n.chosen(o.watering().cost.water))
                .operating(
                        "drain",
                        "Handling of drain",
                        "m³",
                        n.chosen(o.watering().drained),
                        n.chosen(o.watering().cost.drain))
                .operating("feed", "Feed", "m³", n.chosen(o.watering().cost.fresh), n.chosen(o.watering().cost.feed))
                .operating(
                        "pumping", "Pumping", "kWh", n.chosen(o.watering().pumpEnergy), n.chosen(o.watering().pumping))
                .operating(
                        "care",
                        "Care of the lines",
                        "a year",
                        one(),
                        n.chosen(o.clogging().care().careCost))
                .operating(
                        "replanting",
                        "Planting again after dry plants",
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
                        sum(n.owned().repairs, n.owned().repairs.axes().get(0)))
                .operating(
                        "operating_interest",
                        "Interest on operating capital",
                        "expense",
                        n.chosen(running.interest.expense),
                        n.chosen(running.interest.byWay));
        return items.ownership(
                        n.groups(),
                        n.groupLabel(),
                        n.groups().ofParts(n.owned().recovery),
                        n.chosen(n.owned().wayLabour),
                        n.chosen(n.owned().wayCharges),
                        n.benchMetres())
                .overhead(o.overhead());
    }
}
