package org.benchmetre.farm.crop;

import static org.benchmetre.budget.Formulas.joined;
import static org.benchmetre.budget.Formulas.previous;
import static org.benchmetre.budget.Formulas.text;
import static org.benchmetre.budget.Formulas.when;

import org.benchmetre.budget.BudgetBuilder;
import org.benchmetre.budget.Element;
import org.benchmetre.budget.Formula;
import org.benchmetre.budget.Kind;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.ScheduleBuilder;
import org.benchmetre.budget.unit.Unit;

/** Months of the calendar that something holds for, by name and one after the other: {@code Jan, Feb, Dec}. */
final class MonthList {

    private final BudgetBuilder b;
    private final Line names;

    /**
     * Begins lists.
     *
     * @param b where lines are defined
     * @param names of the months, along them
     */
    MonthList(BudgetBuilder b, Line names) {
        this.b = b;
        this.names = names;
    }

    /**
     * Adds a list, which grows from month to month.
     *
     * @param s where its line is added
     * @param id identifier
     * @param label heading
     * @param holds a truth along the months, and another axis perhaps
     * @return the whole list, a text; empty where it holds for none
     */
    Formula of(ScheduleBuilder s, String id, String label, Formula holds) {
        Line list = s.declare(id, label, Unit.ONE, Kind.TEXT, holds.axes(), "");
        Formula before = previous(list, text(""));
        Formula comma = when(before.isFilled(), text(", "), text(""));
        b.define(list, when(holds, joined(before, comma, names), before));
        return new Element(list, names.axes().get(0), names.size() - 1);
    }
}
