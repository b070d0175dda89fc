package org.benchmetre.farm.operations;

import static org.benchmetre.budget.Formulas.countWhere;
import static org.benchmetre.budget.Formulas.sumWhere;
import static org.benchmetre.budget.Formulas.text;
import static org.benchmetre.budget.Formulas.when;

import java.util.ArrayList;
import java.util.List;
import org.benchmetre.budget.Axis;
import org.benchmetre.budget.BudgetBuilder;
import org.benchmetre.budget.Formula;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.Rows;
import org.benchmetre.budget.ScheduleBuilder;
import org.benchmetre.budget.unit.Unit;
import org.benchmetre.farm.input.GroupLabels;
import org.benchmetre.farm.input.Sheets;

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
    /** Cost of work a year, family work included, money/a. */
    public final Line cost;
    /** Cash cost of work a year, money/a. */
    public final Line cash;
    /** Inputs a year, money/a. */
    public final Line inputs;

    private final List<String> labels;
    private final Line counted;
    private final Axis tasks;

    /**
     * Declares the lines.
     *
     * @param b where schedules are added
     * @param t the tasks as entered
     * @param work their hours and money
     * @param fruit picking and packing
     */
    public OperationGroups(BudgetBuilder b, Tasks t, TaskWork work, Picking fruit) {
        tasks = t.axis;
        labels = labels(t.groups);
        axis = Axis.rows("operation", "Group of work", GroupLabels.keys(labels), 0);
        ScheduleBuilder s = b.schedule(Sheets.OPERATIONS, "Work and inputs by group");
        ScheduleBuilder byTask = b.schedule(Sheets.OPERATIONS, "Tasks: group counted");
        List<Formula> words = labels.stream().map(name -> text(name)).toList();
        label = s.textLine("operation_label", "Group", new Rows(axis, words));
        b.nameRows(axis, label);
        Formula known = when(countWhere(label, t.group, axis).isPositive(), t.group, text(Tasks.OTHER));
        counted = byTask.textLine("task_group_counted", "Group counted", when(t.driver.isFilled(), known, text("")));

        Unit hoursAYear = Unit.parse("h/a");
        Unit moneyAYear = Unit.parse("money/a");
        Picking.Work pick = fruit.picking;
        Picking.Work pack = fruit.packing;
        hours = s.line("operation_hours", "Hours", hoursAYear, rows(work.hours, pick.hours(), pack.hours()));
        cost = s.line("operation_cost", "Cost of work", moneyAYear, rows(work.cost, pick.cost(), pack.cost()));
        cash = s.line("operation_cash_cost", "Cash for work", moneyAYear, rows(work.cash, pick.cash(), pack.cash()));
        inputs = s.line("operation_input_cost", "Inputs", moneyAYear, rows(work.inputs));
    }

    private static List<String> labels(List<String> ofTasks) {
        List<String> all = new ArrayList<>(ofTasks);
        for (String fixed : List.of(HARVEST, PACKING)) {
            if (all.stream().noneMatch(fixed::equalsIgnoreCase)) {
                all.add(fixed);
            }
        }
        all.add(Tasks.OTHER);
        return List.copyOf(all);
    }

    private Formula rows(Line byTask, Formula picking, Formula packing) {
        return new Rows(
                axis,
                labels.stream()
                        .map(group -> row(group, byTask, picking, packing))
                        .toList());
    }

    private Formula rows(Line byTask) {
        return new Rows(
                axis, labels.stream().map(group -> ofTasks(group, byTask)).toList());
    }

    private Formula row(String group, Line byTask, Formula picking, Formula packing) {
        Formula sum = ofTasks(group, byTask);
        if (group.equalsIgnoreCase(HARVEST)) {
            return sum.plus(picking);
        }
        return group.equalsIgnoreCase(PACKING) ? sum.plus(packing) : sum;
    }

    private Formula ofTasks(String group, Line byTask) {
        return sumWhere(byTask, counted, text(group), tasks);
    }
}
