package org.benchmetre.farm.operations;

import static org.benchmetre.budget.Formulas.and;
import static org.benchmetre.budget.Formulas.countWhere;
import static org.benchmetre.budget.Formulas.sumWhere;
import static org.benchmetre.budget.Formulas.text;
import static org.benchmetre.budget.Formulas.when;

import java.util.ArrayList;
import java.util.List;
import org.benchmetre.budget.Axis;
import org.benchmetre.budget.BudgetBuilder;
import org.benchmetre.budget.Element;
import org.benchmetre.budget.Formula;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.Rows;
import org.benchmetre.budget.ScheduleBuilder;
import org.benchmetre.budget.unit.Unit;
import org.benchmetre.farm.input.Groups;
import org.benchmetre.farm.input.Sheets;
import org.benchmetre.farm.input.Tables;

/**
 * Work and inputs by group: those of the tasks in order of first use, picking under harvest, packing under packing, then tasks of
 * any other group. Each amount belongs to one group, so groups add to the total.
 */
public final class OperationGroups {

    /** The group that picking counts under. */
    static final String HARVEST = "Harvest";
    /** The group that packing counts under. */
    static final String PACKING = "Packing";

    /** One row for each group. */
    public final Axis axis;
    /** Labels. */
    public final Line label;
    /** Hours a year, h/a. */
    public final Line hours;
    /** Labour cost a year, family labour included, money/a. */
    public final Line cost;
    /** Inputs a year, money/a. */
    public final Line inputs;

    /** Hours and money of the tasks. */
    final TaskWork work;
    /** Picking and packing. */
    final PickingWork fruit;

    private final Groups groups;
    private final Line counted;
    private final Axis tasks;

    /**
     * Declares the lines.
     *
     * @param b where schedules are added
     * @param work the tasks with their hours and money
     * @param fruit picking and packing
     */
    public OperationGroups(BudgetBuilder b, TaskWork work, PickingWork fruit) {
        this.work = work;
        this.fruit = fruit;
        Tasks t = work.tasks;
        tasks = t.axis;
        groups = t.groups;
        axis = Axis.rows("operation", "Group of tasks", groups.keys(), 0);
        ScheduleBuilder s = b.shared(Sheets.OPERATIONS, Tables.TASK_GROUPS);
        ScheduleBuilder byTask = b.shared(Sheets.OPERATIONS, Tables.TASKS);
        label = s.textLine("operation_label", "Group", texts(groups.names()));
        Line key = s.textLine("operation_key", "Key of the group", texts(groups.keys()));
        b.nameRows(axis, label);
        Formula known = when(
                and(t.group.isFilled(), countWhere(key, t.group, axis).isPositive()), t.group, text(groups.otherKey()));
        counted = byTask.textLine("task_group_counted", "Group counted", when(t.driver.isFilled(), known, text("")));

        Unit hoursAYear = Unit.parse("h/a");
        Unit moneyAYear = Unit.parse("money/a");
        PickingWork.Year pick = fruit.picking.year();
        PickingWork.Year pack = fruit.packing.year();
        hours = s.line("operation_hours", "Hours", hoursAYear, rows(work.hours, pick.hours(), pack.hours()));
        cost = s.line("operation_cost", "Labour cost", moneyAYear, rows(work.cost, pick.cost(), pack.cost()));
        inputs = s.line("operation_input_cost", "Inputs", moneyAYear, rows(work.inputs));
    }

    /**
     * Work of the groups of picking and of packing.
     *
     * @return money/a, family labour included
     */
    public Formula harvestAndPacking() {
        return costOf(HARVEST).plus(costOf(PACKING));
    }

    private Formula costOf(String group) {
        return new Element(cost, axis, axis.indexOf(groups.key(group)));
    }

    private Formula texts(List<String> all) {
        return new Rows(axis, all.stream().map(each -> text(each)).toList());
    }

    private Formula rows(Line byTask, Formula picking, Formula packing) {
        return rows(counted, byTask, picking, packing);
    }

    private Formula rows(Line byTask) {
        return rows(counted, byTask);
    }

    /** What tasks come to by group, each counted under a tag, with picking under harvest and packing under packing. */
    Formula rows(Line tags, Line byTask, Formula picking, Formula packing) {
        String harvest = groups.key(HARVEST);
        String packed = groups.key(PACKING);
        List<Formula> rows = new ArrayList<>();
        for (String key : groups.keys()) {
            Formula sum = sumWhere(byTask, tags, text(key), tasks);
            rows.add(key.equals(harvest) ? sum.plus(picking) : key.equals(packed) ? sum.plus(packing) : sum);
        }
        return new Rows(axis, rows);
    }

    /** What tasks come to by group, each counted under a tag. */
    Formula rows(Line tags, Line byTask) {
        return new Rows(
                axis,
                groups.keys().stream()
                        .map(key -> sumWhere(byTask, tags, text(key), tasks))
                        .toList());
    }

    /** The tag of each task, its group, where a condition holds; else none. */
    Formula countedWhere(Formula condition) {
        return when(condition, counted, text(""));
    }
}
