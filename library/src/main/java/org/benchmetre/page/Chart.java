package org.benchmetre.page;

import java.util.List;
import org.benchmetre.budget.Axis;
import org.benchmetre.budget.Kind;
import org.benchmetre.budget.Line;

/**
 * A picture of lines. Several lines along the categories give a series each; one line along the categories and another axis gives a
 * series for each filled row of the other axis.
 *
 * @param sentence a single text line: what the picture shows, its title
 * @param shape how it is drawn
 * @param values number lines of one unit along the categories
 * @param categories the axis with one group for each row
 * @param look its height, its order and its words for whoever cannot see it
 */
public record Chart(Line sentence, Shape shape, List<Line> values, Axis categories, ChartLook look) implements Block {

    /** How it is drawn. */
    public enum Shape {
        /** Bars from left to right, series after series on one bar. */
        STACKED_BARS,
        /** Bars from left to right, beside each other. */
        BARS,
        /** Bars that leave the base line to both sides, series over each other. */
        SWINGS,
        /** Upright bars, beside each other. */
        COLUMNS,
        /** Upright bars, series after series on one bar. */
        STACKED_COLUMNS,
        /** Curves over periods. */
        CURVES
    }

    /** Refuses lines that are not numbers of one unit along the categories. */
    public Chart {
        values = List.copyOf(values);
        Line first = values.isEmpty() ? sentence : values.get(0);
        boolean fits = !values.isEmpty()
                && sentence.kind() == Kind.TEXT
                && values.stream()
                        .allMatch(line -> line.kind() == Kind.NUMBER
                                && line.axes().contains(categories)
                                && line.unit().equals(first.unit()));
        if (!fits) {
            throw new IllegalArgumentException(
                    "A chart wants a text and numbers of one unit along " + categories + ", but found " + values + ".");
        }
    }

    @Override
    public String title() {
        return "";
    }

    @Override
    public <R> R show(BlockVisitor<R> visitor) {
        return visitor.chart(this);
    }
}
