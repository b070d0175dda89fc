package org.benchmetre.budget;

import java.util.ArrayList;
import java.util.List;
import org.benchmetre.budget.unit.Unit;

/**
 * A formula of its own for each row of a table, such as the table of drivers or the groups of cost.
 *
 * @param axis the table
 * @param formulas one for each row, all of one unit and kind
 */
public record Rows(Axis axis, List<Formula> formulas) implements Formula {

    /** Refuses a wrong count and rows of different units. */
    public Rows {
        formulas = List.copyOf(formulas);
        if (formulas.size() != axis.size()) {
            throw new FormulaException(
                    "Table " + axis + " has " + axis.size() + " rows, but found " + formulas.size() + " formulas.");
        }
        Formula first = formulas.get(0);
        for (Formula formula : formulas) {
            if (!formula.unit().equals(first.unit()) || formula.kind() != first.kind()) {
                throw new FormulaException("Rows of table " + axis + " differ: " + first.kind() + " in " + first.unit()
                        + " and " + formula.kind() + " in " + formula.unit() + ".");
            }
        }
    }

    @Override
    public Unit unit() {
        return formulas.get(0).unit();
    }

    @Override
    public Kind kind() {
        return formulas.get(0).kind();
    }

    @Override
    public List<Axis> axes() {
        List<Axis> others = new ArrayList<>(Formula.axesOf(formulas));
        others.remove(axis);
        others.add(0, axis);
        return List.copyOf(others);
    }

    @Override
    public <R> R walk(Walk<R> walk) {
        return walk.rows(this);
    }
}
