package org.benchmetre.bench;

import org.benchmetre.budget.Rounding;

/** House, planting, trough and blend by hand: the amounts of all drivers that no irrigation system changes. */
final class HandWrittenLayout {

    /** Amounts of drivers, in the order of {@link HandWritten#DRIVERS}, then a zero. */
    final double[] drivers = new double[HandWritten.NO_DRIVER + 1];

    double benchCount;
    double benchLength;
    double benchMetres;
    double houseArea;
    double plants;

    private final double rows;
    private final int count;
    private final int length;
    private final int houseLength;
    private final int houseWidth;
    private final int zones;
    private final int header;
    private final int spacing;
    private final int margin;
    private final int top;
    private final int bottom;
    private final int depth;
    private final int freeboard;
    private final int gap;
    private final int lap;
    private final int stockWidth;
    private final int coir;
    private final int peat;
    private final int perlite;
    private final int other;
    private final int mixing;
    private final int settlement;

    HandWrittenLayout(HandWritten.Cells at) {
        rows = at.text("planting_pattern").equals("two_row") ? 2 : 1;
        count = at.first("bench_count");
        length = at.first("bench_length");
        houseLength = at.first("house_length");
        houseWidth = at.first("house_width");
        zones = at.first("zone_count");
        header = at.first("header_length");
        spacing = at.first("plant_spacing");
        margin = at.first("end_margin");
        top = at.first("trough_top_width");
        bottom = at.first("trough_bottom_width");
        depth = at.first("trough_depth");
        freeboard = at.first("trough_freeboard");
        gap = at.first("air_gap");
        lap = at.first("mulch_lap");
        stockWidth = at.first("mulch_stock_width");
        coir = at.first("coir_parts");
        peat = at.first("peat_parts");
        perlite = at.first("perlite_parts");
        other = at.first("other_parts");
        mixing = at.first("mixing_shrinkage");
        settlement = at.first("substrate_settlement");
    }

    void run(double[] x) {
        benchCount = x[count];
        benchLength = x[length];
        benchMetres = benchCount * benchLength;
        houseArea = x[houseLength] * x[houseWidth];
        double room = Math.max(benchLength - 2 * x[margin], 0);
        plants = benchCount * (rows * (Rounding.wholeDown(room / x[spacing]) + 1));

        double height = Math.max(x[depth] - x[freeboard] - x[gap], 0);
        double slope = (x[top] - x[bottom]) / x[depth];
        double sectionMm2 = height * (x[bottom] + slope * (x[gap] + 0.5 * height));
        double litres = sectionMm2 / 1000 * benchMetres;
        double loose = litres / (1 - x[mixing]) / (1 - x[settlement]);
        double partsOfBlend = x[coir] + x[peat] + x[perlite] + x[other];
        double strips = Math.max(Rounding.wholeDown(x[stockWidth] / (x[top] + 2 * x[lap])), 1);

        drivers[0] = 1;
        drivers[1] = benchMetres;
        drivers[2] = benchCount;
        drivers[3] = plants;
        drivers[4] = houseArea;
        drivers[5] = litres;
        drivers[6] = loose;
        drivers[7] = loose * x[coir] / partsOfBlend;
        drivers[8] = loose * x[peat] / partsOfBlend;
        drivers[9] = loose * x[perlite] / partsOfBlend;
        drivers[10] = loose * x[other] / partsOfBlend;
        drivers[11] = benchMetres / strips;
        drivers[12] = x[zones];
        drivers[13] = x[header];
    }
}
