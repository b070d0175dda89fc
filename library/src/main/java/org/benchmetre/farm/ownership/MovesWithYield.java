package org.benchmetre.farm.ownership;

import static org.benchmetre.budget.Formulas.none;
import static org.benchmetre.budget.Formulas.when;

import org.benchmetre.budget.BudgetBuilder;
import org.benchmetre.budget.Formula;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.ScheduleBuilder;
import org.benchmetre.budget.unit.Unit;
import org.benchmetre.farm.crop.Harvest;
import org.benchmetre.farm.input.Sheets;

/**
 * All that moves with yield: what one more kilogram picked and packed costs in work, tasks counted by fruit, packs, freight,
 * commission. Break-evens move it; the rest of the year's cost stays. Plain sums.
 */
public final class MovesWithYield {

    private static final Unit PER_KG = Unit.parse("money/kg");
    private static final Unit YEARLY = Unit.parse("money/a");

    /** Fruit, receipts and what selling takes. */
    public final Harvest harvest;
    /** Work that moves with yield, money/a. */
    public final Line work;
    /** That work for a kilogram, money/kg. */
    public final Line workPerKg;
    /** All that moves with yield, money/a. */
    final Line total;
    /** The same for a kilogram, without commission, money/kg. */
    final Line perKg;
    /** What a further kilogram leaves, money/kg. */
    public final Line left;

    /**
     * Declares the lines.
     *
     * @param b where schedules are added
     * @param h fruit, receipts and what selling takes
     * @param picking what picking one more kilogram costs
     * @param packing what packing it costs
     * @param tasks work and inputs of tasks counted by fruit, a year
     */
    public MovesWithYield(BudgetBuilder b, Harvest h, Line picking, Line packing, Formula tasks) {
        harvest = h;
        ScheduleBuilder s = b.schedule(Sheets.CROP, "All that moves with yield");
        Line byTasks = s.line(
                "yield_tasks_per_kg",
                "Tasks counted by fruit",
                PER_KG,
                when(h.yield.isPositive(), tasks, none(PER_KG)));
        s.line(
                "yield_tasks_cost",
                "Labour and inputs of tasks counted by fruit",
                YEARLY,
                byTasks.times(h.yield),
                "moves with yield, as picking and packing do");
        workPerKg = s.line(
                "work_per_kg",
                "Picking, packing and tasks counted by fruit",
                PER_KG,
                picking.plus(packing).plus(byTasks));
        work = s.line("yield_work_total", "The same, a year", YEARLY, h.yield.times(workPerKg));
        total = s.line("moves_with_yield_total", "All that moves with yield, a year", YEARLY, h.yieldCosts.plus(work));
        perKg = s.line("moves_per_kg", "All that moves with yield but commission", PER_KG, h.perKg.plus(workPerKg));
        left = s.line("left_per_kg", "Returns of a further kg after all of it", PER_KG, h.netPerKg.minus(workPerKg));
    }
}
