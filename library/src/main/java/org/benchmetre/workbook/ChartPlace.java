package org.benchmetre.workbook;

import org.benchmetre.budget.Line;

/**
 * Where a chart stands.
 *
 * @param sheet name of a sheet of the budget
 * @param under a line of the schedule under which it stands, which must leave room, or null for the end of the sheet
 */
public record ChartPlace(String sheet, Line under) {

    /**
     * The end of a sheet.
     *
     * @param sheet name of a sheet of the budget
     * @return the place below all of its tables
     */
    public static ChartPlace endOf(String sheet) {
        return new ChartPlace(sheet, null);
    }
}
