package org.benchmetre.farm.comparison;

import static org.benchmetre.budget.Formulas.and;
import static org.benchmetre.budget.Formulas.lookup;
import static org.benchmetre.budget.Formulas.none;
import static org.benchmetre.budget.Formulas.not;
import static org.benchmetre.budget.Formulas.one;
import static org.benchmetre.budget.Formulas.onlyWhen;
import static org.benchmetre.budget.Formulas.or;
import static org.benchmetre.budget.Formulas.sum;
import static org.benchmetre.budget.Formulas.text;
import static org.benchmetre.budget.Formulas.when;
import static org.benchmetre.farm.input.TradeUnits.ONE;

import java.util.List;
import java.util.function.Function;
import org.benchmetre.budget.Axis;
import org.benchmetre.budget.BudgetBuilder;
import org.benchmetre.budget.Formula;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.Rows;
import org.benchmetre.budget.ScheduleBuilder;
import org.benchmetre.budget.unit.Unit;
import org.benchmetre.decision.Standing;
import org.benchmetre.farm.input.Sheets;

/**
 * At which value of each doubtful entry the answer flips: where the way recommended and another one cost the same; whether that value
 * lies inside the plausible range, and how far it is from the entry. Values that a search found, of lives and of failing outlets,
 * stay as they were filled; beside them stands whether the entries have changed since.
 */
final class Flips {

    private static final Unit PER_METRE = Unit.parse("money/(m a)");
    private static final Unit PERCENT = Unit.parse("%");
    private static final String FIRST_ONLY = " Only the parts and outlets of the first " + OutletParts.MOST
            + " systems of the table are looked at: list those in question first.";

    private final BudgetBuilder b;
    private final Ranking rank;
    private final List<Doubtful> entries;
    private final Axis axis;
    private final boolean leavesOut;

    /**
     * Declares the lines.
     *
     * @param b where schedules are added
     * @param rank how the ways rank
     * @param pages tables opened early
     * @param doubtful the doubtful entries
     */
    Flips(BudgetBuilder b, Ranking rank, Pages pages, DoubtfulEntries doubtful) {
        this.b = b;
        this.rank = rank;
        this.entries = doubtful.all();
        this.leavesOut = doubtful.leavesOutWays();
        List<String> keys = entries.subList(0, entries.size() - doubtful.spare()).stream()
                .map(Doubtful::key)
                .toList();
        this.axis = Axis.rows("flip", "Entry", keys, doubtful.spare());
        ScheduleBuilder table = pages.flips();
        table.note(
                "A value in the plausible range is a real doubt. Where no value flips the answer, that is a result too. The "
                        + "margin of safety is how far the entry may move before the answer flips. Values of lives and of failing "
                        + "outlets are found by a search and stay as filled; all others are live."
                        + (leavesOut ? FIRST_ONLY : ""));
        Line label = table.textLine("flip_label", "Entry", rows(d -> d.words().label()));
        b.nameRows(axis, label);
        Line current =
                table.line("flip_current", "Now", ONE, rows(d -> d.values().current()));
        table.textLine("flip_unit", "Unit", rows(d -> d.words().unit()));
        Line low = table.line(
                "flip_low", "Plausible, low", ONE, rows(d -> d.values().low()));
        Line high = table.line(
                "flip_high", "Plausible, high", ONE, rows(d -> d.values().high()));
        FlipValues values = new FlipValues(b, rank, entries, current, high, low);
        Line value = table.line(
                "flip_value",
                "Flips at",
                ONE,
                onlyWhen(values.to.isFilled(), values.at, whyNone(label)),
                "the value nearest to the entry at which both systems cost the same");
        table.textLine("flip_to", "Flips to", when(label.isFilled(), way(values), text("")));
        Formula within = and(high.isPositive(), not(low.exceeds(values.at)), not(values.at.exceeds(high)));
        Line inside = b.schedule(Sheets.IRRIGATION, "Flip values inside the plausible range")
                .line(
                        "flip_inside",
                        "Inside its plausible range, 1 or 0",
                        ONE,
                        when(and(value.hasNumber(), within), one(), none(ONE)));
        Formula place =
                when(inside.isPositive(), text("inside the plausible range"), text("outside the plausible range"));
        table.textLine(
                "flip_finding",
                "Finding",
                when(
                        value.hasNumber(),
                        when(high.isPositive(), place, text("no plausible range is given")),
                        when(label.isFilled(), text("see the value"), text(""))));
        table.line(
                "flip_margin",
                "Margin of safety",
                PERCENT,
                onlyWhen(
                        and(value.hasNumber(), current.isPositive()),
                        values.at
                                .minus(current)
                                .over(when(current.isPositive(), current, one()))
                                .in(PERCENT),
                        "none"));
        table.textLine(
                "flip_address", "Entry, as one types it", rows(d -> d.words().address()));
        answer(pages.answer(), inside);
    }

    /** Why no value flips the answer, in each row in use. */
    private Line whyNone(Line label) {
        Line words = b.schedule(Sheets.IRRIGATION, "Where no value flips the answer")
                .textLine(
                        "no_flip_reason",
                        "Why not",
                        when(
                                rank.hasNext(),
                                text("no value flips it"),
                                when(
                                        rank.inUse.exceeds(one()),
                                        text("no other system reaches the target"),
                                        text("only one system"))));
        return b.schedule(Sheets.IRRIGATION, "Where no value flips the answer, by entry")
                .textLine("flip_none_reason", "Why not", when(label.isFilled(), words, text("")));
    }

    private Formula way(FlipValues values) {
        return when(values.to.isFilled(), lookup(rank.ways.label, rank.ways.key, values.to), text("-"));
    }

    private void answer(ScheduleBuilder answer, Line inside) {
        ScheduleBuilder s = b.schedule(Sheets.IRRIGATION, "What the search balanced");
        Line first = s.line("balance_first", "The system recommended, now", PER_METRE, rank.bestCost);
        Line next = s.line("balance_next", "The next, now", PER_METRE, rank.nextCost);
        Line firstMoved = s.line(
                "balance_first_moved",
                "Has moved since, 1 or 0",
                ONE,
                moved(first, asFilled(s, first, "The system recommended")),
                Sizes.SOURCE);
        Line nextMoved = s.line(
                "balance_next_moved",
                "Has moved since, 1 or 0",
                ONE,
                moved(next, asFilled(s, next, "The next")),
                Sizes.SOURCE);
        answer.textLine(
                "flip_state",
                "Flip values by search",
                when(
                        or(firstMoved.isPositive(), nextMoved.isPositive()),
                        text(
                                "out of date for lives and failing outlets: entries have changed since they were filled; write the "
                                        + "workbook again"),
                        text("as filled on these entries")));
        Line count = s.line(
                "flips_inside", "Entries that flip the answer inside their plausible range", ONE, sum(inside, axis));
        answer.textLine(
                "irrigation_doubt_flips",
                "Doubts",
                when(
                        count.isPositive(),
                        text("A doubtful entry flips the answer inside its plausible range: see at which value."),
                        text("No doubtful entry flips the answer inside its plausible range, as filled."
                                + (leavesOut ? FIRST_ONLY : ""))));
    }

    private static Line asFilled(ScheduleBuilder s, Line now, String what) {
        return s.solvedNumber(
                now.id() + "_filled",
                what + ", as filled",
                PER_METRE,
                "on the entries the search began with",
                new Standing(now));
    }

    private static Formula moved(Line now, Line then) {
        return when(Sizes.differ(now, then), one(), none(ONE));
    }

    private Formula rows(Function<Doubtful, Formula> formula) {
        return new Rows(axis, entries.stream().map(formula).toList());
    }
}
