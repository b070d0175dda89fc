package org.benchmetre.farm.comparison;

import static org.benchmetre.budget.Formulas.and;
import static org.benchmetre.budget.Formulas.greater;
import static org.benchmetre.budget.Formulas.greatest;
import static org.benchmetre.budget.Formulas.least;
import static org.benchmetre.budget.Formulas.lookup;
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
import org.benchmetre.budget.unit.Unit;
import org.benchmetre.farm.input.Sheets;
import org.benchmetre.farm.input.Tables;
import org.benchmetre.farm.irrigation.hydraulics.Ways;

/**
 * Which irrigation system comes first: the one of least yearly cost, lost fruit counted, among those that reach the target uniformity; when
 * none does, among all. The rule is ours and stands beside its result.
 */
public final class Ranking {

    private static final Unit PER_METRE = Unit.parse("money/(m a)");
    private static final String FIRST = "recommended";
    private static final String NEXT = "next";
    private static final String RULE = "the rule is ours: least yearly cost among the systems that reach the target";

    /** Irrigation systems. */
    final Ways ways;
    /** Yearly cost per metre, lost fruit counted, by way. */
    final Line yearly;
    /** The word {@code recommended} or {@code next}, by way. */
    final Line place;
    /** 1 for each way that reaches the target. */
    final Line reaches;
    /** How many ways reach the target. */
    final Line reaching;
    /** Ways in use, ranked or not. */
    final Line inUse;
    /** 1 for each ranked way but the one that comes first. */
    final Line rival;
    /** How many rivals there are. */
    final Line rivals;
    /** Key of the way that comes first. */
    final Line best;
    /** Key of the way that comes next; empty when there is no other. */
    final Line next;
    /** Cost of the way that comes first. */
    final Line bestCost;
    /** Cost of the way that comes next; more than that of any way when there is none. */
    final Line nextCost;

    /**
     * Declares the lines.
     *
     * @param b where schedules are added
     * @param ways irrigation systems
     * @param yearly yearly cost per metre by way, lost fruit counted
     * @param uniformity emission uniformity by way
     * @param target the uniformity wanted
     */
    public Ranking(BudgetBuilder b, Ways ways, Line yearly, Line uniformity, Line target) {
        this.ways = ways;
        this.yearly = yearly;
        ScheduleBuilder table = b.shared(Sheets.IRRIGATION, Tables.RANKING);
        table.note(
                "Least yearly cost, lost fruit counted, among the systems that reach the target uniformity; when none does, "
                        + "among all. A system that is left out counts as more than twice the dearest.");
        ScheduleBuilder s = b.schedule(Sheets.IRRIGATION, "Ranking, in figures");
        Line used = table.line("way_in_use", "In use, 1 or 0", ONE, when(ways.key.isFilled(), one(), none(ONE)));
        inUse = s.line("ways_in_use", "Systems in use", ONE, sum(used, ways.axis));
        reaches = table.line(
                "way_reaches_target",
                "Reaches the target, 1 or 0",
                ONE,
                when(and(ways.key.isFilled(), not(target.exceeds(uniformity))), one(), none(ONE)));
        reaching = s.line("ways_reaching_target", "Systems that reach the target", ONE, sum(reaches, ways.axis));
        Formula counts = and(ways.key.isFilled(), or(reaches.isPositive(), not(reaching.isPositive())));
        Line out = s.line(
                "left_out_cost",
                "Stands for a system left out",
                PER_METRE,
                greater(greatest(yearly, ways.axis), none(PER_METRE))
                        .times(number(2, ONE))
                        .plus(number(1, PER_METRE)),
                "more than any system costs, at any size of cost");
        Line ranked = table.line("way_ranked_cost", "Cost as ranked", PER_METRE, when(counts, yearly, out), RULE);
        bestCost =
                s.line("recommended_cost_per_metre", "Yearly cost of the first", PER_METRE, least(ranked, ways.axis));
        Line first = table.line(
                "way_first", "First", ONE, when(Sizes.isMore(ranked, bestCost), text(""), text(FIRST)), Sizes.SOURCE);
        best = s.textLine("recommended_way", "First, by its key", lookup(ways.key, first, text(FIRST)));
        Line others =
                table.line("way_other_cost", "Cost of the others", PER_METRE, when(ways.key.is(best), out, ranked));
        rival = table.line(
                "way_is_rival",
                "Ranked behind the first, 1 or 0",
                ONE,
                when(Sizes.isMore(out, others), one(), none(ONE)),
                Sizes.SOURCE);
        rivals = s.line("ways_ranked_behind", "Systems ranked behind the first", ONE, sum(rival, ways.axis));
        nextCost = s.line("next_cost_per_metre", "Yearly cost of the next", PER_METRE, least(others, ways.axis));
        Formula isNext = and(rival.isPositive(), not(Sizes.isMore(others, nextCost)));
        place = table.line(
                "way_place",
                "Place",
                ONE,
                when(ways.key.is(best), text(FIRST), when(isNext, text(NEXT), text(""))),
                Sizes.SOURCE);
        next = s.textLine(
                "next_way", "Next, by its key", when(hasNext(), lookup(ways.key, place, text(NEXT)), text("")));
    }

    /** Whether there is a second way. */
    Formula hasNext() {
        return rivals.isPositive();
    }

    /** A figure of the way that comes first. */
    Formula ofFirst(Line byWay) {
        return lookup(byWay, ways.key, best);
    }

    /** A figure of the way that comes next; guard it by {@link #hasNext}. */
    Formula ofNext(Line byWay) {
        return lookup(byWay, ways.key, next);
    }
}
