package org.benchmetre.farm.ownership;

import static org.benchmetre.budget.Formulas.lookup;
import static org.benchmetre.budget.Formulas.none;
import static org.benchmetre.budget.Formulas.one;
import static org.benchmetre.budget.Formulas.when;

import org.benchmetre.budget.BudgetBuilder;
import org.benchmetre.budget.Formula;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.ScheduleBuilder;
import org.benchmetre.budget.unit.Unit;
import org.benchmetre.farm.crop.PlantStock;
import org.benchmetre.farm.input.Sheets;
import org.benchmetre.farm.input.Tables;

/** What plants cost in a year: used up where they live a year or less, see {@link UsedUp}; recovered over their life where they last. */
public final class PlantsYearly {

    private static final Unit YEARLY = Unit.parse("money/a");
    private static final Unit YEARS = Unit.parse("a");

    /** Plants of each kind of plant stock, a year, money/a. */
    public final Line byStock;
    /** Life of the chosen plants, in years. */
    public final Line life;
    /** Plants of the chosen stock, a year, money/a. */
    public final Line all;
    /** Plants that are used up within a year, money/a; 0 where they last. */
    public final Line usedUp;
    /** Plants that last, recovered over their life, money/a; 0 where they are used up. */
    public final Line recovery;

    /**
     * Declares the lines.
     *
     * @param b where schedules are added
     * @param rates rates and rules
     * @param stock the kinds
     * @param choice key of the kind that is counted
     * @param cropsPerYear crops in a year
     */
    public PlantsYearly(BudgetBuilder b, OwnershipRates rates, PlantStock stock, Line choice, Line cropsPerYear) {
        ScheduleBuilder kinds = b.shared(Sheets.CROP, Tables.STOCK_GROWTH);
        Line stockLife = kinds.line(
                "stock_life_years",
                "Life",
                YEARS,
                OwnershipRates.years(stock.life, stock.lifeUnit, cropsPerYear),
                OwnershipRates.LIFE);
        byStock = kinds.line(
                "stock_yearly_cost",
                "A year, used up or recovered over their life",
                YEARLY,
                stock.firstCost.times(
                        when(stockLife.exceeds(UsedUp.YEAR), rates.ofCost(stockLife), one().over(stockLife))),
                UsedUp.EACH);
        ScheduleBuilder chosen = b.shared(Sheets.CROP, Tables.PLANTS);
        life = chosen.line(
                "plants_life_years", "Life of the chosen stock", YEARS, lookup(stockLife, stock.key, choice));
        Formula first = lookup(stock.firstCost, stock.key, choice);
        usedUp = chosen.line(
                "plants_used_up",
                "Plants used up within a year",
                YEARLY,
                when(life.exceeds(UsedUp.YEAR), none(YEARLY), first.over(life)),
                UsedUp.RULE);
        recovery = chosen.line(
                "plants_recovery",
                "Plants that last, recovered over their life",
                YEARLY,
                when(life.exceeds(UsedUp.YEAR), first.times(rates.ofCost(life)), none(YEARLY)),
                OwnershipRates.RECOVERED);
        all = chosen.line("plants_yearly_cost", "Plants, a year", YEARLY, usedUp.plus(recovery));
    }
}
