package org.benchmetre.farm.loans;

import java.util.List;
import org.benchmetre.budget.Axis;
import org.benchmetre.budget.BudgetBuilder;
import org.benchmetre.budget.Formula;
import org.benchmetre.budget.Kind;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.ScheduleBuilder;
import org.benchmetre.budget.unit.Unit;

/**
 * A schedule of loans and a run of periods, all of whose lines run along the loans first.
 *
 * @param b where lines are defined
 * @param schedule where they are added
 * @param axes loans, then the periods
 */
record LoanTable(BudgetBuilder b, ScheduleBuilder schedule, List<Axis> axes) {

    /** Adds a figure with its formula. */
    Line line(String id, String label, Unit unit, Formula formula, String source) {
        Line line = schedule.declare(id, label, unit, formula.kind(), axes, source);
        b.define(line, formula);
        return line;
    }

    /** Adds an amount of money whose formula follows. */
    Line money(String id, String label, String source) {
        return schedule.declare(id, label, Unit.MONEY_NOMINAL, Kind.NUMBER, axes, source);
    }

    /** Adds an amount of money with its formula. */
    Line money(String id, String label, Formula formula, String source) {
        return line(id, label, Unit.MONEY_NOMINAL, formula, source);
    }
}
