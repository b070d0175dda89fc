package org.benchmetre.farm.finance;

import static org.benchmetre.budget.Formulas.one;

import org.benchmetre.budget.Formula;
import org.benchmetre.budget.Line;

/** What changes to the plan make of its amounts, by month or year alike. */
public final class Changes {

    private final Shocks shocks;
    private final Line commission;

    /**
     * Takes what may change.
     *
     * @param shocks the changes
     * @param commission share of the costs of selling that moves with the price too
     */
    Changes(Shocks shocks, Line commission) {
        this.shocks = shocks;
        this.commission = commission;
    }

    /**
     * What receipts become.
     *
     * @param planned before changes
     * @return the same while nothing is changed
     */
    public Formula receipts(Formula planned) {
        return planned.times(one().plus(shocks.price)).times(one().plus(shocks.yield));
    }

    /**
     * What the costs of selling become: all move with fruit, commission with its price too.
     *
     * @param planned before changes
     * @return the same while nothing is changed
     */
    public Formula selling(Formula planned) {
        return planned.times(one().plus(shocks.yield)).times(one().plus(shocks.price.times(commission)));
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
