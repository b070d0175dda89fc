package org.benchmetre.workbook;

import java.util.List;
import org.benchmetre.budget.Axis;
import org.benchmetre.budget.Kind;
import org.benchmetre.budget.Line;

/**
 * A chart of bars. One line along one axis gives one series; one line along two gives a series for each filled row of the other
 * axis; several lines along one axis give a series each.
 *
 * @param place where it stands
 * @param title what it shows
 * @param values number lines along the categories, all of one unit
 * @param categories the axis with one group of bars for each row
 * @param shown how many of the first rows are shown
 * @param shape how the bars lie
 */
public record BarChart(ChartPlace place, String title, List<Line> values, Axis categories, int shown, Shape shape)
        implements Chart {

    /** How the bars lie. */
    public enum Shape {
        /** Bars from left to right, beside each other. */
        BARS,
        /** Bars from left to right, one series behind the other. */
        STACKED_BARS,
        /** Upright, beside each other. */
        COLUMNS
    }

    private static final int FEWEST_ROWS = 16;

    /** Refuses lines that are not numbers of one unit along the categories. */
    public BarChart {
        values = List.copyOf(values);
        for (Line line : values) {
            boolean fits = line.kind() == Kind.NUMBER
                    && line.axes().contains(categories)
                    && line.unit().equals(values.get(0).unit());
            if (!fits) {
                throw new IllegalArgumentException("Chart '" + title + "' wants numbers of one unit along " + categories
                        + ", but found line " + line + ".");
            }
        }
        if (values.isEmpty()
                || values.size() > 1
                        && values.stream().anyMatch(line -> line.axes().size() > 1)) {
            throw new IllegalArgumentException(
                    "Chart '" + title + "' wants one line, or several lines along " + categories + " alone.");
        }
    }

    /**
     * Bars of one line at the end of a sheet.
     *
     * @param sheet the sheet it stands on
     * @param title what it shows
     * @param values a number line along the categories
     * @param categories the axis with one group of bars for each row
     * @param onlyFilled whether the spare rows are left out
     */
    public BarChart(String sheet, String title, Line values, Axis categories, boolean onlyFilled) {
        this(
                ChartPlace.endOf(sheet),
                title,
                List.of(values),
                categories,
                onlyFilled ? categories.filled() : categories.size(),
                Shape.BARS);
    }

    @Override
    public int rows() {
        return FEWEST_ROWS + (shape == Shape.COLUMNS ? 4 : shown);
    }
}
