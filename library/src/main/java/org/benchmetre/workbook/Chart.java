package org.benchmetre.workbook;

import org.benchmetre.budget.Line;

/** A chart on a sheet of the model. It shows cells of the sheet, so that it changes with them. */
public sealed interface Chart permits BarChart, LineChart {

    /**
     * The sheet it stands on.
     *
     * @return name of a sheet of the budget
     */
    String sheet();

    /**
     * What it shows.
     *
     * @return words above the chart
     */
    String title();

    /**
     * A line of the schedule under which it stands; that schedule must leave room.
     *
     * @return the line, or null for the end of the sheet
     */
    Line under();

    /**
     * How many rows it takes at the end of a sheet.
     *
     * @return more for more bars
     */
    int rows();
}
