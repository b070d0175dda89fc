package org.benchmetre.workbook;

/** A chart on a sheet of the model. It shows cells of the sheet, so that it changes with them. */
public sealed interface Chart permits BarChart, LineChart {

    /**
     * Where it stands.
     *
     * @return a sheet, and what it stands under
     */
    ChartPlace place();

    /**
     * What it shows.
     *
     * @return words above the chart
     */
    String title();

    /**
     * How many rows it takes at the end of a sheet.
     *
     * @return more for more bars
     */
    int rows();
}
