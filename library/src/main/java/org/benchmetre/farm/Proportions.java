package org.benchmetre.farm;

import static org.benchmetre.budget.Formulas.none;
import static org.benchmetre.budget.Formulas.when;

import java.util.Map;
import org.benchmetre.budget.BudgetBuilder;
import org.benchmetre.budget.Formula;
import org.benchmetre.budget.Line;
import org.benchmetre.farm.crop.Harvest;
import org.benchmetre.farm.input.Sheets;
import org.benchmetre.farm.input.Tables;
import org.benchmetre.farm.layout.House;
import org.benchmetre.farm.operations.PickingWork;
import org.benchmetre.farm.ownership.EnterpriseBudget;
import org.benchmetre.farm.ownership.MostOfTotal;
import org.benchmetre.farm.ownership.UsualTotals;
import org.benchmetre.farm.ownership.YearlyCost;
import org.benchmetre.farm.profile.CropProfile;
import org.benchmetre.farm.takeoff.FirstCost;
import org.benchmetre.farm.whole.BesidePublished;

/** What is watched of the results: one row that is most of a total, and figures far from what is usual or published. */
final class Proportions {

    /**
     * The results.
     *
     * @param first first cost
     * @param yearly yearly cost
     * @param budget the enterprise budget
     * @param harvest fruit
     * @param house floor
     * @param work hours
     */
    record Results(
            FirstCost first, YearlyCost yearly, EnterpriseBudget budget, Harvest harvest, House house, Work work) {}

    /**
     * Hours of a year.
     *
     * @param fruit picking and packing
     * @param hours all of them, h/a
     */
    record Work(PickingWork fruit, Line hours) {}

    private Proportions() {}

    static void watch(BudgetBuilder b, CropProfile profile, Results r) {
        House house = r.house;
        Harvest harvest = r.harvest;
        MostOfTotal most = new MostOfTotal(b);
        most.watch(
                "Part",
                new MostOfTotal.Rows(
                        "first_cost_part",
                        b.shared(Sheets.MATERIALS, Tables.PARTS_BOUGHT),
                        r.first.parts.takeOff().exact,
                        r.first.total),
                "This part is most of first cost: check its price, its pack and its rate for a factor of ten or a hundred.");
        most.watch(
                "Row of the enterprise budget",
                new MostOfTotal.Rows(
                        "yearly_row", b.shared(Sheets.BUDGET, Tables.BUDGET), r.budget.costs, r.budget.total),
                "This row is most of the yearly cost: check its price, its hours and its life for a factor of ten or a hundred.");
        new UsualTotals(b, profile)
                .watch(r.first.perArea, "Check prices, packs and rates of parts, and the size of the house.")
                .watch(
                        "operating_cost_per_area",
                        "Operating costs per m² of floor",
                        r.budget.operating.over(house.houseArea),
                        "Check hours, wages, plants, heat, and the size of the house.")
                .watch(r.yearly.perKg, "Check wages, hours, lives of parts, and the yield.")
                .watch(
                        "fruit_per_area",
                        "Marketable fruit per m² of floor",
                        harvest.yield.over(house.houseArea),
                        "Check yield_per_plant, plant_spacing and the size of the house.");
        BesidePublished.of(b, profile, asPublished(r));
    }

    private static Map<String, Formula> asPublished(Results r) {
        Line floor = r.house.houseArea;
        Line hours = r.work.hours;
        Line fruit = r.harvest.yield;
        Formula fruitWork = r.work.fruit
                .picking
                .year()
                .hours()
                .plus(r.work.fruit.packing.year().hours());
        return Map.of(
                "first_cost", r.first.perArea,
                "hours_per_area", hours.over(floor),
                "hours_per_kg", over(hours, fruit),
                "fruit_work_share", over(fruitWork, hours),
                "fruit_per_area", fruit.over(floor),
                "cost_per_kg", over(r.budget.total, fruit));
    }

    private static Formula over(Formula amount, Line by) {
        return when(by.isPositive(), amount.over(by), none(amount.unit().over(by.unit())));
    }
}
