package org.benchmetre.farm.ownership;

import org.benchmetre.budget.BudgetBuilder;
import org.benchmetre.budget.Formula;
import org.benchmetre.budget.Line;
import org.benchmetre.farm.crop.Harvest;
import org.benchmetre.farm.crop.Overflow;

/**
 * What selling comes to at low and high yield beside what moves in proportion to fruit: channels pass on less of a small harvest and more
 * of a large one. Nothing where no channel has a limit. Plain arithmetic.
 */
public final class YieldBends {

    private final Line level;
    private final YieldRange yields;
    private final Overflow.Money plan;
    private final Overflow.Money low;
    private final Overflow.Money high;

    /**
     * Amounts beside those in proportion to fruit.
     *
     * @param low at low yield, money/a
     * @param high at high yield, money/a
     */
    public record Bend(Formula low, Formula high) {}

    /** An amount of passing on. */
    private interface Amount {
        Formula of(Overflow.Money money);
    }

    /**
     * Declares what channels pass on at both yields.
     *
     * @param b where schedules are added
     * @param level all prices of fruit against those entered
     * @param h fruit of the plan and how channels pass it on
     * @param yields low and high yield
     */
    public YieldBends(BudgetBuilder b, Line level, Harvest h, YieldRange yields) {
        this.level = level;
        this.yields = yields;
        plan = h.moved;
        low = h.overflow
                .at("low_", ", low yield", h.monthYield.times(yields.lowShare))
                .money();
        high = h.overflow
                .at("high_", ", high yield", h.monthYield.times(yields.highShare))
                .money();
    }

    /** Receipts of first grade. */
    Bend first() {
        return bend(money -> money.first().times(level));
    }

    /** Receipts of second grade. */
    Bend second() {
        return bend(money -> money.receipts().minus(money.first()).times(level));
    }

    /** Commission. */
    Bend commission() {
        return bend(money -> money.commission().times(level));
    }

    /** Packs. */
    Bend packs() {
        return bend(Overflow.Money::packs);
    }

    /** Freight. */
    Bend freight() {
        return bend(Overflow.Money::freight);
    }

    private Bend bend(Amount amount) {
        return new Bend(
                amount.of(low).minus(amount.of(plan).times(yields.lowShare)),
                amount.of(high).minus(amount.of(plan).times(yields.highShare)));
    }
}
