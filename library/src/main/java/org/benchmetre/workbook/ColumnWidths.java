package org.benchmetre.workbook;

import java.util.Map;
import java.util.TreeMap;
import org.benchmetre.budget.Kind;
import org.benchmetre.budget.Line;

/** Which column holds what, and how wide it is in characters. Width belongs to the kind of column, not to its contents. */
final class ColumnWidths {

    static final int LIST_VALUE = 1;
    static final int LIST_UNIT = 2;
    static final int LIST_ENTRY = 3;
    static final int LIST_ENTRY_UNIT = 4;
    static final int LIST_LOW = 5;
    static final int LIST_HIGH = 6;
    static final int LIST_SOURCE = 7;
    static final int PERIOD_FIRST = 2;

    static final double LABEL = 38;
    static final double UNIT = 13;
    static final double NUMBER = 15;
    static final double SPARE = 6;
    static final double TEXT = 20;
    static final double SOURCE = 48;

    static final double LIST_SOURCE_ALONE = 60;

    static final Map<Integer, Double> LIST_WIDTHS = new TreeMap<>(Map.of(
            0,
            LABEL,
            LIST_VALUE,
            20.0,
            LIST_UNIT,
            UNIT,
            LIST_ENTRY,
            NUMBER,
            LIST_ENTRY_UNIT,
            UNIT,
            LIST_LOW,
            UNIT,
            LIST_HIGH,
            UNIT,
            LIST_SOURCE,
            NUMBER));

    private ColumnWidths() {}

    static double width(Line line) {
        if (line.kind() != Kind.TEXT) {
            return NUMBER;
        }
        return isSource(line) ? SOURCE : TEXT;
    }

    static boolean isSource(Line line) {
        return line.id().endsWith("_source");
    }
}
