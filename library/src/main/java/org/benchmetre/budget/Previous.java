package org.benchmetre.budget;

import java.util.List;
import org.benchmetre.budget.unit.Unit;

/**
 * The value of a line one period back, and a formula for the first period: how balances are carried.
 *
 * @param line a line along periods
 * @param initial what stands before the first period; single or along the line's other axis
 */
public record Previous(Line line, Formula initial) implements Formula {

    /** Refuses lines without periods and an initial value of another unit. */
    public Previous {
        if (line.axes().stream().noneMatch(Axis::isOrdered)) {
            throw new FormulaException("Line " + line + " has no periods to look back along.");
        }
        if (!initial.unit().equals(line.unit()) || initial.kind() != line.kind()) {
            throw new FormulaException("Line " + line + " is in " + line.unit() + ", but before its first period found "
                    + initial.unit() + ".");
        }
        if (initial.axes().stream().anyMatch(Axis::isOrdered)) {
            throw new FormulaException("What stands before the first period of " + line + " cannot vary by period.");
        }
    }

    /**
     * The run of periods.
     *
     * @return the line's axis of periods
     */
    public Axis axis() {
        return line.axes().stream().filter(Axis::isOrdered).findFirst().orElseThrow();
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
        return line.axes();
    }

    @Override
    public <R> R walk(Walk<R> walk) {
        return walk.previous(this);
    }
}
