package org.benchmetre.workbook;

import java.util.List;
import org.benchmetre.budget.Axis;
import org.benchmetre.budget.Kind;
import org.benchmetre.budget.Line;

/**
 * A chart of curves over a distance: for each line along two axes a curve for each filled row of the other axis.
 *
 * @param place where it stands
 * @param title what it shows
 * @param across what runs from left to right: a number line along the points, and along the rows as well when each has its own
 * @param values number lines along rows and points, all of one unit
 * @param points the axis of points
 */
public record LineChart(ChartPlace place, String title, Line across, List<Line> values, Axis points) implements Chart {

    private static final int ROWS = 22;

    /** Refuses lines that are not numbers of one unit along the points. */
    public LineChart {
        values = List.copyOf(values);
        for (Line line : values) {
            boolean fits = line.kind() == Kind.NUMBER
                    && line.axes().contains(points)
                    && line.unit().equals(values.get(0).unit());
            if (!fits) {
                throw new IllegalArgumentException("Chart '" + title + "' wants numbers of one unit along " + points
                        + ", but found line " + line + ".");
            }
        }
        if (values.isEmpty() || !across.axes().contains(points)) {
            throw new IllegalArgumentException("Chart '" + title + "' wants lines along " + points + ".");
        }
    }

    @Override
    public int rows() {
        return ROWS;
    }
}
