package org.benchmetre.farm.irrigation.clogging;

import static org.benchmetre.budget.Formulas.and;
import static org.benchmetre.budget.Formulas.greater;
import static org.benchmetre.budget.Formulas.none;
import static org.benchmetre.budget.Formulas.number;
import static org.benchmetre.budget.Formulas.one;
import static org.benchmetre.budget.Formulas.onlyWhen;
import static org.benchmetre.budget.Formulas.when;
import static org.benchmetre.farm.input.TradeUnits.ONE;

import org.benchmetre.budget.Line;
import org.benchmetre.budget.ScheduleBuilder;
import org.benchmetre.farm.irrigation.hydraulics.Ways;

/**
 * The chance that a plant has no working outlet left.
 *
 * <pre>
 * P = (1 - s) f^n + s f
 * P  chance that none is left      f  share of outlets that have failed      n  whole outlets in reach of a plant
 * s  share of failures of common cause, which take all outlets of a plant at once
 * </pre>
 *
 * The independent and the common part mixed linearly: exact arithmetic of chances. A plant with no outlet in reach has none left from
 * the start: chance 1.
 */
final class NoOutletLeft {

    /** Whole outlets that a plant lives on, by way. */
    final Line livesOn;
    /** Chance that a plant has no working outlet left, by way. */
    final Line chance;

    NoOutletLeft(ScheduleBuilder s, Ways ways, Line failed, Line common, Line inReach) {
        livesOn = s.line(
                "way_outlets_lived_on",
                "Whole outlets that a plant lives on",
                inReach.unit(),
                when(
                        inReach.isPositive(),
                        greater(inReach.wholeDown(), number(1, inReach.unit())),
                        none(inReach.unit())),
                "the fewest in reach; an outlet that several plants share is one outlet to each of them");
        Line independent = s.line(
                "way_all_failed",
                "Chance that all of them fail each by itself",
                ONE,
                ways.whereFilled(when(livesOn.isPositive(), failed.power(livesOn.counting(ONE)), one())),
                "failed share to the power of the outlets lived on: chances of independent failures multiplied");
        chance = s.line(
                "way_no_outlet_left",
                "Chance of no working outlet, at repair or end of life",
                ONE,
                ways.whereFilled(when(
                        livesOn.isPositive(),
                        one().minus(common).times(independent).plus(common.times(failed)),
                        one())),
                "(1 - s) f^n + s f, f the failed share, n the outlets lived on, s the share of common cause; 1 with no outlet in reach");
        s.line(
                "way_standing_reserve",
                "Fewer dry plants than with one outlet in reach, times",
                ONE,
                onlyWhen(and(livesOn.isPositive(), chance.isPositive()), failed.over(chance), "none"),
                "f over the chance above: what a second outlet in reach holds in reserve");
    }
}
