package org.benchmetre.farm.crop;

import static org.benchmetre.budget.Formulas.none;
import static org.benchmetre.budget.Formulas.when;

import org.benchmetre.budget.BudgetBuilder;
import org.benchmetre.budget.Formula;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.unit.Unit;
import org.benchmetre.farm.input.FarmEntries;
import org.benchmetre.farm.input.Months;

/**
 * The plants of the crops of a year.
 *
 * @param crops the crops
 * @param stock kinds of plant stock
 * @param growth how each kind grows
 * @param types types of plant
 * @param year month of planting of the plan, and the months of the calendar
 */
public record CropPlants(Crops crops, PlantStock stock, StockGrowth growth, PlantTypes types, CropYear year) {

    private static final Unit WEEKS_A_YEAR = Unit.parse("wk/a");

    /**
     * The plants of a plan.
     *
     * @param b where schedules are added
     * @param entries gives entries their values
     * @param months the months
     * @param year month of planting, and the months of the calendar
     * @param stock kinds of plant stock
     * @param choice key of the kind that counts where a crop names none
     * @return its crops and what they are made of
     */
    public static CropPlants of(
            BudgetBuilder b, FarmEntries entries, Months months, CropYear year, PlantStock stock, Line choice) {
        StockGrowth growth = new StockGrowth(b, entries, stock);
        PlantTypes types = new PlantTypes(b, entries, months);
        Crops crops = new Crops(b, months, new CropRows.Plan(stock, growth, choice, types, year));
        return new CropPlants(crops, stock, growth, types, year);
    }

    /**
     * What a plant of the house has of a sum over the new plants of all crops.
     *
     * @param ofAllCrops the sum, for each plant of the house
     * @return the average over the crops with new plants
     */
    public Formula eachOf(Formula ofAllCrops) {
        return when(crops.allNew.isPositive(), ofAllCrops.over(crops.allNew), none(ofAllCrops.unit()));
    }

    /**
     * Weeks of a year in which each crop stands on the benches, by its plant stock.
     *
     * @return weeks a year along the crops, wk/a
     */
    public Formula benchWeeks() {
        return crops.ofKind(growth.benchWeeks).times(crops.perYear).in(WEEKS_A_YEAR);
    }
}
