package org.benchmetre.farm.operations;

import static org.benchmetre.budget.Formulas.and;
import static org.benchmetre.budget.Formulas.none;
import static org.benchmetre.budget.Formulas.not;
import static org.benchmetre.budget.Formulas.sumWhere;
import static org.benchmetre.budget.Formulas.text;
import static org.benchmetre.budget.Formulas.when;

import org.benchmetre.budget.BudgetBuilder;
import org.benchmetre.budget.Formula;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.ScheduleBuilder;
import org.benchmetre.budget.unit.Unit;
import org.benchmetre.farm.input.Sheets;
import org.benchmetre.farm.input.Tables;

/**
 * Hired work by group and work of the family, apart: hours, money, and what of the money moves with yield. Of picking and packing that
 * is all but walking along the benches; of tasks, those counted by fruit. Plain sums.
 */
public final class PaidWork {

    private static final Unit HOURS_A_YEAR = Unit.parse("h/a");
    private static final Unit MONEY_A_YEAR = Unit.parse("money/a");

    /** Labels of the groups of work. */
    public final Line label;
    /** Hours hired a year by group, h/a. */
    public final Line hours;
    /** What they cost, money/a. */
    public final Line cost;
    /** What of that moves with yield, money/a. */
    public final Line moves;
    /** Inputs a year by group, money/a. */
    public final Line inputs;
    /** What of those moves with yield, money/a. */
    public final Line inputsMove;
    /** Hours of the family. */
    public final Family family;
    /** What of their worth moves with yield, money/a. */
    public final Line familyMoves;

    private final PickingWork fruit;

    /**
     * Work of the family.
     *
     * @param hours hours a year, h/a
     * @param worth what they would earn elsewhere, money/a
     */
    public record Family(Line hours, Line worth) {}

    /**
     * Declares the lines.
     *
     * @param b where schedules are added
     * @param groups work and inputs by group
     * @param wages classes of work
     * @param family labour of the family
     */
    PaidWork(BudgetBuilder b, OperationGroups groups, Wages wages, Family family) {
        this.family = family;
        fruit = groups.fruit;
        TaskWork work = groups.work;
        ScheduleBuilder t = b.shared(Sheets.OPERATIONS, Tables.TASKS);
        ScheduleBuilder s = b.shared(Sheets.OPERATIONS, Tables.TASK_GROUPS);
        ScheduleBuilder f = b.schedule(Sheets.OPERATIONS, "Family labour that moves with yield");
        Formula isHired = not(work.doneBy.is(Wages.FAMILY));
        Formula byFruit = work.tasks.driver.is(TaskDrivers.YIELD);
        Line hired = t.textLine("task_group_hired", "Group, where hired", groups.countedWhere(isHired));
        Line hiredMoving = t.textLine(
                "task_group_hired_moving",
                "Group, where hired and counted by fruit",
                groups.countedWhere(and(isHired, byFruit)));
        Line moving = t.textLine("task_group_moving", "Group, where counted by fruit", groups.countedWhere(byFruit));
        label = groups.label;
        inputs = groups.inputs;
        hours = s.line(
                "operation_hired_hours",
                "Hours hired",
                HOURS_A_YEAR,
                groups.rows(
                        hired,
                        work.hours,
                        paid(fruit.picking, fruit.picking.year().hours()),
                        paid(fruit.packing, fruit.packing.year().hours())));
        cost = s.line(
                "operation_cash_cost",
                "Labour paid in cash",
                MONEY_A_YEAR,
                groups.rows(
                        hired,
                        work.cost,
                        paid(fruit.picking, fruit.picking.year().cost()),
                        paid(fruit.packing, fruit.packing.year().cost())));
        moves = s.line(
                "operation_cash_moves",
                "Hired labour that moves with yield",
                MONEY_A_YEAR,
                groups.rows(
                        hiredMoving,
                        work.cost,
                        moves(fruit.picking, fruit.pickingMoves, false),
                        moves(fruit.packing, fruit.packingMoves, false)));
        inputsMove = s.line(
                "operation_inputs_move", "Inputs that move with yield", MONEY_A_YEAR, groups.rows(moving, work.inputs));
        familyMoves = f.line(
                "family_wage_moves",
                "Family labour that moves with yield",
                MONEY_A_YEAR,
                sumWhere(
                                work.cost,
                                work.classAndDriver,
                                wages.joined(text(Wages.FAMILY), text(TaskDrivers.YIELD)),
                                work.tasks.axis)
                        .plus(moves(fruit.picking, fruit.pickingMoves, true))
                        .plus(moves(fruit.packing, fruit.packingMoves, true)));
    }

    private static Formula paid(PickingWork.Work work, Line amount) {
        return when(work.wageClass().is(Wages.FAMILY), none(amount.unit()), amount);
    }

    private Formula moves(PickingWork.Work work, Line perKg, boolean ofFamily) {
        Formula all = fruit.marketable.times(perKg);
        Formula nothing = none(MONEY_A_YEAR);
        Formula isFamily = work.wageClass().is(Wages.FAMILY);
        return ofFamily ? when(isFamily, all, nothing) : when(isFamily, nothing, all);
    }
}
