package org.benchmetre.budget;

import java.util.List;
import org.benchmetre.budget.unit.Unit;

/**
 * A line, or two lines row by row, gathered along one axis into one value.
 *
 * @param gather how
 * @param axis along which axis
 * @param lines the line gathered; for a sum of products the two factors; for a filtered fold the tags come last
 * @param tag the tag wanted; for a present value the rate, for a rate of return a first guess; null when there is none
 */
public record Fold(Gather gather, Axis axis, List<Line> lines, Formula tag) implements Formula {

    /** Refuses lines that do not run along the axis, and anything but numbers and texts in their places. */
    public Fold {
        lines = List.copyOf(lines);
        for (Line line : lines) {
            if (!line.axes().contains(axis)) {
                throw new FormulaException(
                        "Line " + line + " does not run along " + axis + " and cannot be gathered there.");
            }
        }
        gather.check(lines, tag);
    }

    /**
     * The line whose texts are compared with the tag.
     *
     * @return the last line
     */
    public Line tags() {
        return lines.get(lines.size() - 1);
    }

    @Override
    public Unit unit() {
        return gather.unit(lines);
    }

    @Override
    public Kind kind() {
        return Kind.NUMBER;
    }

    @Override
    public List<Axis> axes() {
        List<Axis> kept =
                Formula.axesOf(lines).stream().filter(other -> other != axis).toList();
        return tag == null ? kept : Axis.union(List.of(kept, tag.axes()));
    }

    @Override
    public <R> R walk(Walk<R> walk) {
        return walk.fold(this);
    }
}
