package org.benchmetre.bench;

import java.util.List;
import org.benchmetre.budget.Rounding;

/** Outlets and metres of line of each irrigation system, by hand. */
final class HandWrittenWays {

    private static final int OUTLETS = HandWritten.DRIVERS.indexOf("outlet_count");
    private static final int LINE_METRES = HandWritten.DRIVERS.indexOf("line_metres");

    private final List<String> keys;
    private final int chosen;
    private final int lines;
    private final int perPlant;
    private final int spacing;
    private final int tail;

    HandWrittenWays(HandWritten.Cells at) {
        keys = at.texts("way_key");
        chosen = keys.indexOf(at.text("irrigation_choice"));
        lines = at.first("way_lines");
        perPlant = at.first("way_outlets_per_plant");
        spacing = at.first("way_outlet_spacing");
        tail = at.first("way_tail");
    }

    List<String> keys() {
        return keys;
    }

    int chosen() {
        return chosen;
    }

    /** Puts the two drivers of a way among the others. */
    void count(double[] x, int way, HandWrittenLayout layout) {
        double allLines = layout.benchCount * x[lines + way];
        double apart = x[spacing + way];
        layout.drivers[OUTLETS] = apart > 0
                ? allLines * Rounding.wholeDown(layout.benchLength / apart)
                : layout.plants * x[perPlant + way];
        layout.drivers[LINE_METRES] = allLines * (layout.benchLength + x[tail + way]);
    }
}
