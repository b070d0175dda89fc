package org.benchmetre.farm.finance;

import static org.benchmetre.budget.Formulas.one;
import static org.benchmetre.farm.input.TradeUnits.ONE;

import org.benchmetre.budget.Formula;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.ScheduleBuilder;

/** What changes to the plan make of its amounts, by month or year alike. */
public final class Changes {

    private final Shocks shocks;
    private final Line receipts;
    private final Line selling;

    /**
     * Takes what may change.
     *
     * @param s where the two factors are added
     * @param shocks the changes
     * @param commission share of the costs of selling that moves with the price too
     */
    Changes(ScheduleBuilder s, Shocks shocks, Line commission) {
        this.shocks = shocks;
        receipts = s.line(
                "receipts_factor",
                "Receipts against those planned",
                ONE,
                one().plus(shocks.price).times(one().plus(shocks.yield)),
                "price times fruit: plain arithmetic");
        selling = s.line(
                "selling_factor",
                "Costs of selling against those planned",
                ONE,
                one().plus(shocks.yield).times(one().plus(shocks.price.times(commission))),
                "all move with fruit, commission with its price too: plain arithmetic");
    }

    /**
     * What receipts become.
     *
     * @param planned before changes
     * @return the same while nothing is changed
     */
    public Formula receipts(Formula planned) {
        return planned.times(receipts);
    }

    /**
     * What the costs of selling become: all move with fruit, commission with its price too.
     *
     * @param planned before changes
     * @return the same while nothing is changed
     */
    public Formula selling(Formula planned) {
        return planned.times(selling);
    }

    /**
     * What hired labour becomes.
     *
     * @param planned before changes
     * @return the same while nothing is changed
     */
    public Formula labour(Formula planned) {
        return planned.times(one().plus(shocks.wage));
    }

    /**
     * What heat and electricity become.
     *
     * @param planned before changes
     * @return the same while nothing is changed
     */
    public Formula energy(Formula planned) {
        return planned.times(one().plus(shocks.energy));
    }
}
