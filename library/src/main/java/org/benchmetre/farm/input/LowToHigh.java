package org.benchmetre.farm.input;

import org.benchmetre.scenario.Bounds;
import org.benchmetre.scenario.Faults;
import org.benchmetre.scenario.Row;

/** Checks that the ends of a plausible range lie on both sides of the value they belong to, all three in one row of a file. */
public final class LowToHigh {

    private static final Bounds NOT_NEGATIVE = Bounds.atLeast(0);

    private LowToHigh() {}

    /**
     * Reports an end that lies on the wrong side. Cells that are blank or no numbers are left out.
     *
     * @param row where they stand
     * @param low column of the low end
     * @param middle column of the value
     * @param high column of the high end
     * @param faults where faults are collected
     */
    public static void check(Row row, String low, String middle, String high, Faults faults) {
        double value = quietly(row, middle, NOT_NEGATIVE);
        String shown = " the value in " + middle + ", " + row.text(middle);
        if (quietly(row, low, NOT_NEGATIVE) > value) {
            faults.add(row.place(low), "\"" + row.text(low) + "\"", "at most" + shown);
        }
        if (quietly(row, high, NOT_NEGATIVE) < value) {
            faults.add(row.place(high), "\"" + row.text(high) + "\"", "at least" + shown);
        }
    }

    /**
     * A number that has been reported already if it is not one.
     *
     * @param row where it stands
     * @param column its column
     * @param bounds hard bounds, in the unit of the column
     * @return the number; NaN where it is none, so that no comparison holds
     */
    public static double quietly(Row row, String column, Bounds bounds) {
        return row.number(column, bounds, "", new Faults());
    }
}
