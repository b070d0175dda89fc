package org.benchmetre.workbook;

import java.util.List;
import org.benchmetre.budget.Axis;
import org.benchmetre.budget.Schedule;

/** How the lines of a schedule lie on a sheet. */
enum Layout {
    /** Single values, one a row. */
    LIST,
    /** Lines along the rows of a table or a long run of periods, one a column. */
    TABLE,
    /** Lines along a short run of periods, one a row. */
    PERIODS,
    /** Lines along two axes, a block each, one below the other. */
    BLOCKS;

    /** The longest run of periods that is shown across a sheet; the months of a loan run down. */
    static final int MOST_ACROSS = 40;

    static Layout of(Schedule schedule) {
        List<Axis> axes = schedule.axes();
        return switch (axes.size()) {
            case 0 -> LIST;
            case 1 -> runsAcross(axes.get(0)) ? PERIODS : TABLE;
            default -> BLOCKS;
        };
    }

    /** Whether an axis runs across a sheet by itself; where two meet, one of them always does. */
    static boolean runsAcross(Axis axis) {
        return axis.isOrdered() && axis.size() <= MOST_ACROSS;
    }

    /** The axis that runs across where two meet: a short run of periods before any other, and a long one never if it can be helped. */
    static Axis across(List<Axis> axes) {
        boolean isFirst = runsAcross(axes.get(0)) || axes.get(1).isOrdered() && !runsAcross(axes.get(1));
        return axes.get(isFirst ? 0 : 1);
    }

    /** The axis that runs down where two meet. */
    static Axis down(List<Axis> axes) {
        return across(axes) == axes.get(0) ? axes.get(1) : axes.get(0);
    }
}
