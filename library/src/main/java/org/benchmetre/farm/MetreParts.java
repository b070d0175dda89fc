package org.benchmetre.farm;

import java.util.ArrayList;
import java.util.List;
import org.benchmetre.budget.Formula;
import org.benchmetre.budget.Line;
import org.benchmetre.farm.crop.Harvest;
import org.benchmetre.farm.whole.MoneyOfAMetre;

/**
 * The receipts and costs of a year in a dozen parts, each amount in one of them: those of the enterprise budget, gathered by who takes
 * the money.
 */
final class MetreParts {

    private final List<MoneyOfAMetre.Part> all = new ArrayList<>();

    private MetreParts() {}

    /**
     * Gathers the parts.
     *
     * @param o whose costs they are
     * @param running interest on operating capital
     * @param n plants, work by group, and what the chosen way takes
     * @param ownership ownership costs of the enterprise budget, money/a
     */
    static List<MoneyOfAMetre.Part> of(
            RunningCosts.Owners o, RunningCosts running, BudgetContents.Needs n, Line ownership) {
        MetreParts parts = new MetreParts();
        Harvest fruit = o.moves().harvest;
        parts.all.add(new MoneyOfAMetre.Part("fruit_first", "Fruit, first grade", true, fruit.firstGradeReceipts));
        parts.all.add(new MoneyOfAMetre.Part("fruit_second", "Fruit, second grade", true, fruit.secondGradeReceipts));
        Formula atHarvest = n.groups().harvestAndPacking();
        parts.cost(MoneyOfAMetre.HARVEST_LABOUR, "Harvest and packing labour", atHarvest)
                .cost(
                        MoneyOfAMetre.OTHER_LABOUR,
                        "Other labour",
                        o.labour().cost.minus(atHarvest).plus(n.yearly().owned.usedUpLabour))
                .cost("plants", "Plants", n.yearly().plants.all)
                .cost("watering", "Water, nutrient solution, maintenance", running.watering)
                .cost(MoneyOfAMetre.HEAT_AND_POWER, "Heat and power", o.energy().cost().total)
                .cost("selling", "Packs, freight, commission", fruit.yieldCosts)
                .cost("inputs", "Protection, hives, film", o.labour().inputs.plus(n.yearly().owned.usedUpTotal))
                .cost(
                        "ownership",
                        "Ownership and repairs",
                        ownership.minus(n.yearly().plants.recovery).plus(n.yearly().owned.repairsTotal))
                .cost("overhead", "Overhead and interest", o.overhead().total.plus(running.interest.interest));
        return parts.all;
    }

    private MetreParts cost(String key, String label, Formula amount) {
        all.add(new MoneyOfAMetre.Part(key, label, false, amount));
        return this;
    }
}
