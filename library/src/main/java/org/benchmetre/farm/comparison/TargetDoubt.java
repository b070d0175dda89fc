package org.benchmetre.farm.comparison;

import static org.benchmetre.budget.Formulas.and;
import static org.benchmetre.budget.Formulas.greatest;
import static org.benchmetre.budget.Formulas.none;
import static org.benchmetre.budget.Formulas.not;
import static org.benchmetre.budget.Formulas.number;
import static org.benchmetre.budget.Formulas.one;
import static org.benchmetre.budget.Formulas.or;
import static org.benchmetre.budget.Formulas.sum;
import static org.benchmetre.budget.Formulas.text;
import static org.benchmetre.budget.Formulas.when;
import static org.benchmetre.farm.input.TradeUnits.ONE;

import org.benchmetre.budget.BudgetBuilder;
import org.benchmetre.budget.Formula;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.ScheduleBuilder;
import org.benchmetre.farm.input.FarmEntries;
import org.benchmetre.farm.input.Sheets;
import org.benchmetre.farm.input.Tables;

/**
 * Whether the uniformity asked for decides inside its usual range. It changes no cost; it lets systems in and leaves them out. Another
 * system would come first at some usual target where
 *
 * <ul>
 *   <li>it costs less than the first and is left out today, and it reaches the low end of the range, or no system reaches the high
 *       end, so that cost alone ranks, or
 *   <li>it is evener than the first, and a usual target is above what the first reaches: the high end where some system reaches the
 *       target of today, else any that the other one reaches.
 * </ul>
 *
 * Both follow from the rule of the {@link Ranking}.
 */
final class TargetDoubt {

    private static final double NEVER = 101;
    private static final String ABOVE_ALL = "101 % stands for never: nothing is evener than even";

    /** How many systems would come first at some usual target, a plain number. */
    final Line flips;

    TargetDoubt(BudgetBuilder b, Pages pages, Ranking rank, Target target) {
        Line uniformity = target.uniformity();
        ScheduleBuilder t = pages.target();
        Line firstReaches = t.line(
                "target_flip",
                "Above this the first system no longer reaches it",
                uniformity.unit(),
                rank.ofFirst(uniformity));
        t.textLine(
                "target_finding",
                "Finding",
                when(
                        and(rank.reaching.isPositive(), not(target.asked().exceeds(firstReaches))),
                        text("a target above the uniformity of the system recommended would leave it out."),
                        text("no system reaches it; the ranking is of cost alone.")));
        Line low = target.range().low();
        Line high = target.range().high();
        Line evenest = t.line(
                "target_reached_by_any",
                "Above this none reaches it",
                uniformity.unit(),
                greatest(uniformity, rank.ways.axis));
        Formula never = number(NEVER, uniformity.unit());
        Line cheaperFrom = t.line(
                "target_cheaper_from",
                "What a cheaper system, left out today, reaches to come first at a usual target",
                uniformity.unit(),
                when(high.isPositive(), when(high.exceeds(evenest), none(uniformity.unit()), low), never),
                ABOVE_ALL);
        Line evenerFrom = t.line(
                "target_evener_from",
                "What an evener system reaches to come first at a usual target",
                uniformity.unit(),
                when(
                        and(high.isPositive(), or(high.exceeds(firstReaches), not(rank.reaching.isPositive()))),
                        when(rank.reaching.isPositive(), firstReaches, low),
                        never),
                ABOVE_ALL);
        ScheduleBuilder s = b.shared(Sheets.IRRIGATION, Tables.RANKING);
        Line cheaper = s.line(
                "way_costs_less",
                "Costs less than the first, 1 or 0",
                ONE,
                when(and(rank.ways.key.isFilled(), Sizes.isMore(rank.bestCost, rank.yearly)), one(), none(ONE)),
                Sizes.SOURCE);
        Formula isLetIn = and(cheaper.isPositive(), not(cheaperFrom.exceeds(uniformity)));
        Formula isEvener = and(uniformity.exceeds(firstReaches), not(evenerFrom.exceeds(uniformity)));
        Line letsIn = s.line(
                "way_target_flips", "Would come first, 1 or 0", ONE, when(or(isLetIn, isEvener), one(), none(ONE)));
        flips = b.shared(Sheets.IRRIGATION, Tables.VERDICT)
                .line("target_flips", "How many", ONE, sum(letsIn, rank.ways.axis));
    }

    /**
     * What is asked for and reached.
     *
     * @param asked the uniformity asked for, %
     * @param range its usual range
     * @param uniformity what each system reaches inside its pressure range, %
     */
    record Target(Line asked, FarmEntries.Range range, Line uniformity) {}
}
