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

    /** The entry that moves the fruit of all crops. */
    final Line entered;
    /** Low end of its usual range. */
    final Line low;
    /** High end of its usual range. */
    final Line high;
    /** Fruit per plant and crop as told, average over the crops, g/(plant crop). */
    final Line planned;
    /** Fruit at the low end against fruit as entered. */
    final Line lowShare;
    /** Fruit at the high end against fruit as entered. */
    final Line highShare;

    /**
     * Declares the lines.
     *
     * @param b where schedules are added
     * @param entries keeps both ends in the row of the entry
     * @param fruit the entry that moves the fruit of all crops in proportion
     * @param planned fruit per plant and crop as told, average over the crops
     */
    public YieldRange(BudgetBuilder b, FarmEntries entries, Line fruit, Line planned) {
        ScheduleBuilder s = b.schedule(Sheets.BUDGET, "Low and high yield");
        entered = fruit;
        this.planned = planned;
        FarmEntries.Range range = entries.range(b, s, fruit);
        low = range.low();
        high = range.high();
        lowShare = s.line("low_yield_share", "Low yield against the yield entered", ONE, share(low), AGAINST);
        highShare = s.line("high_yield_share", "High yield against the yield entered", ONE, share(high), AGAINST);
    }

    private Formula share(Line end) {
        return when(and(entered.isPositive(), end.isPositive()), end.over(entered), one());
    }
}
