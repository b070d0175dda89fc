package org.benchmetre.farm.comparison;

import static org.benchmetre.budget.Formulas.and;
import static org.benchmetre.budget.Formulas.greater;
import static org.benchmetre.budget.Formulas.joined;
import static org.benchmetre.budget.Formulas.lesser;
import static org.benchmetre.budget.Formulas.lookup;
import static org.benchmetre.budget.Formulas.none;
import static org.benchmetre.budget.Formulas.not;
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
import org.benchmetre.farm.input.Sheets;
import org.benchmetre.farm.input.Tables;

/**
 * At which usual values the answer changes, in a sentence; and that no usual value makes it the system which the entries choose, or,
 * where they choose the first, the one they compare it with. Between today's value and the usual range a change counts too.
 */
final class FlipSentence {

    private final Ranking rank;
    private final Flips flips;
    private final NamedDoubts doubts;

    FlipSentence(BudgetBuilder b, ScheduleBuilder answer, Ranking rank, Pair pair, Flips flips, NamedDoubts doubts) {
        this.rank = rank;
        this.flips = flips;
        this.doubts = doubts;
        ScheduleBuilder s = b.shared(Sheets.IRRIGATION, Tables.VERDICT);
        Line other = s.textLine(
                "flip_other",
                "That system, by its key",
                when(rank.best.is(pair.chosen()), pair.rival(), pair.chosen()));
        Line ranked = s.line("flip_other_ranked", "Is ranked, 1 or 0", ONE, lookup(rank.rival, rank.ways.key, other));
        Formula at = lookup(flips.usual.wayAt(), rank.ways.key, other);
        Formula from = lesser(flips.current, flips.usual.low());
        Formula upTo = greater(flips.current, flips.usual.high());
        Line reached = b.shared(Sheets.IRRIGATION, Tables.FLIP_WORKINGS)
                .line(
                        "flip_other_reached",
                        "Is a usual value, 1 or 0",
                        ONE,
                        when(or(from.exceeds(at), at.exceeds(upTo)), none(ONE), one()));
        Line never = s.textLine(
                "flip_never_words",
                "Where no usual value makes it that system",
                when(
                        and(ranked.isPositive(), not(sumOf(s, reached).isPositive())),
                        joined(
                                text(" No usual value makes it "),
                                lookup(rank.ways.label, rank.ways.key, other),
                                text(".")),
                        text("")));
        Line system = s.textLine("flip_system_words", "What a usual value makes it", system());
        Line change = s.line(
                "flip_change_words", "Where a usual value changes it", ONE, change(system), NamedDoubts.FIRST_THREE);
        answer.textLine(
                "irrigation_flips",
                "Changes at",
                when(
                        doubts.count.isPositive(),
                        joined(change, never),
                        when(rank.hasNext(), text(unchanged()), text(""))));
    }

    private Line sumOf(ScheduleBuilder s, Line reached) {
        return s.line("flip_other_count", "Usual values that make it that system", ONE, sum(reached, flips.axis));
    }

    private Formula change(Line system) {
        return joined(
                text("It would be "),
                system,
                text(" at: "),
                doubts.namesAndValues,
                when(doubts.areMore(), text(". More below."), text(".")));
    }

    /** By its name where all that are named lead to one. */
    private Formula system() {
        return when(
                doubts.allToOne(), lookup(rank.ways.label, rank.ways.key, doubts.firstTo()), text("another system"));
    }

    private String unchanged() {
        return flips.leavesOut
                ? "No usual value of an entry of the first " + OutletParts.MOST + " systems changes it."
                : "No usual value of an entry changes it.";
    }
}
