package org.benchmetre.workbook;

import org.benchmetre.budget.entry.Numbers;
import org.benchmetre.budget.unit.Ratio;
import org.benchmetre.budget.unit.Unit;

/**
 * The spreadsheet formula from an entry in the unit it was typed in to the line's unit: a plain factor, for temperatures with the
 * distance between the zeros (32 degF is 0 degC).
 */
final class Conversion {

    private static final double TIDY = 1e-11;

    private Conversion() {}

    static String of(String cell, Unit typedIn, Unit target) {
        double shift = typedIn.convertLevel(0, target);
        if (shift == 0) {
            return scaled(cell, typedIn, target);
        }
        double origin = target.convertLevel(0, typedIn);
        double tidy = Math.rint(origin * 1e6) / 1e6;
        if (Math.abs(tidy - origin) < TIDY) {
            return scaled("(" + cell + signed(-tidy) + ")", typedIn, target);
        }
        double plain = Math.rint(shift * 1e6) / 1e6;
        return scaled(cell, typedIn, target) + signed(Math.abs(plain - shift) < TIDY ? plain : shift);
    }

    /** Multiplied or divided, whichever factor is written with fewer digits. */
    private static String scaled(String term, Unit typedIn, Unit target) {
        Ratio factor = typedIn.factorTo(target);
        String times = Numbers.plain(factor.toDouble());
        String over = Numbers.plain(Ratio.ONE.over(factor).toDouble());
        if (times.equals("1")) {
            return term;
        }
        return over.length() < times.length() ? term + "/" + over : term + "*" + times;
    }

    private static String signed(double number) {
        return (number < 0 ? "-" : "+") + Numbers.plain(Math.abs(number));
    }
}
