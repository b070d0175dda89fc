package org.benchmetre.decision;

import java.util.Map;
import java.util.function.UnaryOperator;
import org.benchmetre.budget.Budget;
import org.benchmetre.budget.BudgetBuilder;
import org.benchmetre.budget.CellRef;
import org.benchmetre.budget.Formula;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.ScheduleBuilder;
import org.benchmetre.budget.entry.Bounds;
import org.benchmetre.budget.entry.Given;
import org.benchmetre.budget.run.Figures;
import org.benchmetre.budget.unit.Unit;

/** A budget of one plain entry and two figures of it, to be searched. */
record Figure(Budget budget, CellRef entry, CellRef left, CellRef right) {

    static Figure of(Bounds bounds, UnaryOperator<Formula> left, UnaryOperator<Formula> right) {
        BudgetBuilder b = new BudgetBuilder("Test", "EUR");
        ScheduleBuilder s = b.schedule("Sheet", "Table");
        Line x = s.entry("entry_value", "Entry", Unit.ONE).within(bounds).given(Given.number(1, Unit.ONE));
        Line one = s.line("left_side", "Left", Unit.ONE, left.apply(x));
        Line other = s.line("right_side", "Right", Unit.ONE, right.apply(x));
        return new Figure(b.build(), new CellRef(x, 0), new CellRef(one, 0), new CellRef(other, 0));
    }

    static Figure of(UnaryOperator<Formula> left, UnaryOperator<Formula> right) {
        return of(Bounds.ANY, left, right);
    }

    BreakEven search() {
        return BreakEven.of(budget, entry, Difference.between(left, right));
    }

    BreakEven searchZero() {
        return BreakEven.of(budget, entry, Difference.of(left));
    }

    /** Left less right with a value put back into the entry. */
    double differenceAt(double value) {
        Figures figures = Figures.of(budget.with(Map.of(entry.line(), Map.of(0, Given.number(value, Unit.ONE)))));
        return figures.number("left_side") - figures.number("right_side");
    }
}
