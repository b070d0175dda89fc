package org.benchmetre.workbook;

import org.benchmetre.page.Chart;

/**
 * A chart on a page.
 *
 * @param chart what it shows
 * @param row its first row, from 0
 * @param column its first column
 * @param last its last column
 */
record PlacedChart(Chart chart, int row, int column, int last) {

    /** The first row below it. */
    int end() {
        return row + chart.look().rows();
    }
}
