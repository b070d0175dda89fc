package org.benchmetre.workbook;

import org.benchmetre.budget.Axis;
import org.benchmetre.budget.Kind;
import org.benchmetre.budget.Line;

/**
 * One chart of horizontal bars under the tables of a sheet. A line along one axis gives one series; a line along two gives a
 * series for each filled row of the other axis.
 *
 * @param sheet the sheet it stands on
 * @param title what it shows
 * @param values a number line along the categories
 * @param categories the axis with one group of bars for each row
 * @param onlyFilled whether the spare rows are left out
 */
public record BarChart(String sheet, String title, Line values, Axis categories, boolean onlyFilled) {

    /** Refuses lines that are not numbers along the categories. */
    public BarChart {
        if (values.kind() != Kind.NUMBER || !values.axes().contains(categories)) {
            throw new IllegalArgumentException(
                    "Chart '" + title + "' wants a number along " + categories + ", but found line " + values + ".");
        }
    }

    int size() {
        return onlyFilled ? categories.filled() : categories.size();
    }
}
