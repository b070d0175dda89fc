package org.benchmetre.budget;

import java.util.List;
import org.benchmetre.budget.unit.Unit;

/**
 * One fixed row or period of a line, such as the balance of the last year.
 *
 * @param line the line
 * @param axis the axis that is fixed
 * @param index the row, from 0
 */
public record Element(Line line, Axis axis, int index) implements Formula {

    /** Refuses an axis the line does not have and a row the axis does not have. */
    public Element {
        if (!line.axes().contains(axis) || index < 0 || index >= axis.size()) {
            throw new FormulaException("Line " + line + " has no row " + index + " along " + axis + ".");
        }
    }

    @Override
    public Unit unit() {
        return line.unit();
    }

    @Override
    public Kind kind() {
        return line.kind();
    }

    @Override
    public List<Axis> axes() {
        return line.axes().stream().filter(other -> other != axis).toList();
    }

    @Override
    public <R> R walk(Walk<R> walk) {
        return walk.element(this);
    }
}
