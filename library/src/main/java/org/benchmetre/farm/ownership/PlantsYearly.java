package org.benchmetre.farm.ownership;

import static org.benchmetre.budget.Formulas.none;
import static org.benchmetre.budget.Formulas.one;
import static org.benchmetre.budget.Formulas.sum;
import static org.benchmetre.budget.Formulas.when;

import org.benchmetre.budget.BudgetBuilder;
import org.benchmetre.budget.Formula;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.ScheduleBuilder;
import org.benchmetre.budget.unit.Unit;
import org.benchmetre.farm.crop.Crops;
import org.benchmetre.farm.crop.PlantOrder;
import org.benchmetre.farm.crop.PlantStock;
import org.benchmetre.farm.input.Sheets;
import org.benchmetre.farm.input.Tables;

/** What plants cost in a year: used up where they live a year or less, see {@link UsedUp}; recovered over their life where they last. */
public final class PlantsYearly {

    private static final Unit YEARLY = Unit.parse("money/a");
    private static final Unit YEARS = Unit.parse("a");
    private static final Unit PLANT = Unit.parse("plant");
    private static final Unit PLANTS_A_YEAR = Unit.parse("plant/a");

    /** Plants of each kind of plant stock as if all crops were of it, a year, money/a. */
    public final Line byStock;
    /** Life of the plants of each crop, in years. */
    public final Line life;
    /** Plants of all crops, a year, money/a. */
    public final Line all;
    /** Plants that are used up within a year, money/a. */
    public final Line usedUp;
    /** Plants that last, recovered over their life, money/a. */
    public final Line recovery;
    /** How many are used up in a year, plant/a. */
    public final Line usedUpPlants;
    /** How many stand that last. */
    public final Line lastingPlants;

    /**
     * Declares the lines.
     *
     * @param b where schedules are added
     * @param rates rates and rules
     * @param order plants of the crops
     */
    public PlantsYearly(BudgetBuilder b, OwnershipRates rates, PlantOrder order) {
        Crops crops = order.grown.crops();
        PlantStock stock = order.grown.stock();
        Line stockLife = crops.stockYears;
        byStock = b.shared(Sheets.CROP, Tables.STOCK_GROWTH)
                .line(
                        "stock_yearly_cost",
                        "A year, used up or recovered over their life",
                        YEARLY,
                        stock.firstCost
                                .times(crops.allNew)
                                .times(when(
                                        stockLife.exceeds(UsedUp.YEAR),
                                        rates.ofCost(stockLife),
                                        one().over(stockLife))),
                        UsedUp.EACH);
        ScheduleBuilder c = b.shared(Sheets.CROP, Tables.CROPS);
        life = c.line("crop_plants_life", "Life of the plants", YEARS, crops.yearsOfPlants());
        Line first = order.exactByCrop;
        Line usedUpOf = c.line(
                "crop_plants_used_up",
                "Plants used up within a year",
                YEARLY,
                onceAYear(first.over(life)),
                UsedUp.RULE);
        Line recoveryOf = c.line(
                "crop_plants_recovery",
                "Plants that last, recovered over their life",
                YEARLY,
                lasting(first.times(rates.ofCost(life))),
                OwnershipRates.RECOVERED);
        Line countOf = c.line(
                "crop_plants_a_year",
                "Plants used up in a year",
                PLANTS_A_YEAR,
                onceAYear(order.boughtByCrop.over(life)));
        Line lastOf = c.line("crop_plants_lasting", "Plants that last", PLANT, lasting(order.boughtByCrop));
        ScheduleBuilder s = b.shared(Sheets.CROP, Tables.PLANTS);
        usedUp = s.line("plants_used_up", "Plants used up within a year", YEARLY, sum(usedUpOf, crops.axis));
        recovery = s.line(
                "plants_recovery", "Plants that last, recovered over their life", YEARLY, sum(recoveryOf, crops.axis));
        all = s.line("plants_yearly_cost", "Plants, a year", YEARLY, usedUp.plus(recovery));
        usedUpPlants = s.line("plants_a_year", "Plants used up in a year", PLANTS_A_YEAR, sum(countOf, crops.axis));
        lastingPlants = s.line("plants_lasting", "Plants that last", PLANT, sum(lastOf, crops.axis));
    }

    private Formula onceAYear(Formula formula) {
        return when(life.exceeds(UsedUp.YEAR), none(formula.unit()), formula);
    }

    private Formula lasting(Formula formula) {
        return when(life.exceeds(UsedUp.YEAR), formula, none(formula.unit()));
    }
}
