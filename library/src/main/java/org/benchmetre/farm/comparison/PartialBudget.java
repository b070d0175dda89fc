package org.benchmetre.farm.comparison;

import org.benchmetre.budget.Formula;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.ScheduleBuilder;
import org.benchmetre.budget.unit.Unit;

/**
 * A change in four boxes, and what it gains: added returns and reduced costs, less reduced returns and added costs, as in any text of
 * farm management.
 */
public final class PartialBudget {

    /** What the change gains. */
    final Line net;

    /**
     * What the change moves, all in one unit of money and none below zero.
     *
     * @param addedReturns returns that come with the change
     * @param reducedCosts costs that fall away with it
     * @param reducedReturns returns that fall away with it
     * @param addedCosts costs that come with it
     */
    public record Boxes(Formula addedReturns, Formula reducedCosts, Formula reducedReturns, Formula addedCosts) {}

    /**
     * Declares the lines.
     *
     * @param s where they are added
     * @param name in front of the names of the lines
     * @param change what the gain is of, such as {@code Gain of the change}
     * @param boxes what the change moves
     */
    public PartialBudget(ScheduleBuilder s, String name, String change, Boxes boxes) {
        Unit unit = boxes.addedReturns().unit();
        Line addedReturns = s.line(name + "_added_returns", "Added returns", unit, boxes.addedReturns());
        Line reducedCosts = s.line(name + "_reduced_costs", "Reduced costs", unit, boxes.reducedCosts());
        Line better = s.line(name + "_better", "What is better, in total", unit, addedReturns.plus(reducedCosts));
        Line addedCosts = s.line(name + "_added_costs", "Added costs", unit, boxes.addedCosts());
        Line reducedReturns = s.line(name + "_reduced_returns", "Reduced returns", unit, boxes.reducedReturns());
        Line worse = s.line(name + "_worse", "What is worse, in total", unit, reducedReturns.plus(addedCosts));
        net = s.line(
                name + "_net",
                change,
                unit,
                better.minus(worse),
                "added returns and reduced costs, less reduced returns and added costs");
    }
}
