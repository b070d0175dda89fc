package org.benchmetre.farm.ownership;

import static org.benchmetre.budget.Formulas.and;
import static org.benchmetre.budget.Formulas.one;
import static org.benchmetre.budget.Formulas.when;
import static org.benchmetre.farm.input.TradeUnits.ONE;

import org.benchmetre.budget.BudgetBuilder;
import org.benchmetre.budget.Formula;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.ScheduleBuilder;
import org.benchmetre.farm.input.FarmEntries;
import org.benchmetre.farm.input.Sheets;

/**
 * Both ends of the usual range of the yield, against the yield entered. Fruit follows the yield entered in proportion, so what moves with
 * fruit moves by the same share, but for what full channels pass on ({@link YieldBends}); the rest of a year's money stays. That is exact
 * for any fruit at all: only walking along the benches to pick would fall away where there is none.
 */
public final class YieldRange {

    private static final String AGAINST =
            "end of the usual range over the yield entered; as entered where one of them is not known";

    /** Fruit per plant and crop, as entered, g/(plant crop). */
    final Line entered;
    /** Low end of the usual range, g/(plant crop). */
    final Line low;
    /** High end of the usual range, g/(plant crop). */
    final Line high;
    /** Fruit at the low end against fruit as entered. */
    final Line lowShare;
    /** Fruit at the high end against fruit as entered. */
    final Line highShare;

    /**
     * Declares the lines.
     *
     * @param b where schedules are added
     * @param entries keeps both ends in the row of the entry
     * @param perPlant fruit per plant and crop, as entered
     */
    public YieldRange(BudgetBuilder b, FarmEntries entries, Line perPlant) {
        ScheduleBuilder s = b.schedule(Sheets.BUDGET, "Low and high yield");
        entered = perPlant;
        FarmEntries.Range range = entries.range(b, s, perPlant);
        low = range.low();
        high = range.high();
        lowShare = s.line("low_yield_share", "Low yield against the yield entered", ONE, share(low), AGAINST);
        highShare = s.line("high_yield_share", "High yield against the yield entered", ONE, share(high), AGAINST);
    }

    private Formula share(Line end) {
        return when(and(entered.isPositive(), end.isPositive()), end.over(entered), one());
    }
}
