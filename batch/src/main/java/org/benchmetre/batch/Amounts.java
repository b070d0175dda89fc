package org.benchmetre.batch;

import java.util.Locale;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.MinorUnit;
import org.benchmetre.budget.run.Figures;
import org.benchmetre.budget.unit.Unit;

/**
 * Numbers with a fixed count of decimals, as a console shows them: two, but money those of its currency (none of the yen, three of some
 * dinars). Money for each metre, plant or the like keeps two at least while it is below a hundred.
 *
 * @param figures the farm, computed
 */
record Amounts(Figures figures) {

    private static final int DECIMALS = 2;
    private static final double MANY = 100;

    /** A single figure. */
    String of(String id) {
        return of(figures.budget().line(id), 0);
    }

    /** A cell of a line, which has a number. */
    String of(Line line, int cell) {
        double number = figures.number(line, cell);
        return fixed(number, decimals(number, line.unit()));
    }

    /** Decimals of a number in a unit. */
    private int decimals(double number, Unit unit) {
        if (!unit.hasMoney()) {
            return DECIMALS;
        }
        int minor = MinorUnit.decimals(figures.budget().currency());
        boolean small = number != 0 && Math.abs(number) < MANY;
        return small && !isPaid(unit) ? Math.max(minor, DECIMALS) : minor;
    }

    /** Whether a unit is money as it is paid, not money for each of something. */
    private static boolean isPaid(Unit unit) {
        return unit.equals(Unit.MONEY) || unit.equals(Unit.MONEY_NOMINAL);
    }

    static String fixed(double number, int decimals) {
        String shown = String.format(Locale.ROOT, "%." + decimals + "f", number);
        boolean zero = shown.startsWith("-") && shown.chars().allMatch(sign -> "-0.".indexOf(sign) >= 0);
        return zero ? shown.substring(1) : shown;
    }
}
