package org.benchmetre.farm.irrigation.hydraulics;

import static org.benchmetre.budget.Formulas.none;
import static org.benchmetre.budget.Formulas.when;
import static org.benchmetre.farm.input.TradeUnits.ONE;

import org.benchmetre.budget.Line;
import org.benchmetre.budget.ScheduleBuilder;

/**
 * Rise of a lateral for each metre, below zero where it falls. A line fed in the middle of a slope is two laterals: one rises and
 * has the lowest pressure, the other falls, and on average they lie level. Plain geometry.
 */
final class Slope {

    /** Rise of the lateral with the lowest pressure. */
    final Line steepest;
    /** Rise of the lateral with the highest pressure. */
    final Line kindest;
    /** Rise that counts for the average pressure. */
    final Line average;

    Slope(ScheduleBuilder s, Outlets from, Conditions water) {
        steepest = s.line(
                "way_rise",
                "Rise a metre of the lateral with the lowest pressure",
                ONE,
                when(from.isFedInTheMiddle(), water.steepness, water.rise));
        kindest = s.line(
                "way_kindest_rise",
                "Rise a metre of the lateral with the highest pressure",
                ONE,
                when(from.isFedInTheMiddle(), none(ONE).minus(water.steepness), water.rise));
        average = s.line(
                "way_average_rise",
                "Rise a metre on average",
                ONE,
                when(from.isFedInTheMiddle(), none(ONE), water.rise));
    }
}
