package org.benchmetre.farm.comparison;

import static org.benchmetre.budget.Formulas.and;
import static org.benchmetre.budget.Formulas.none;
import static org.benchmetre.budget.Formulas.not;
import static org.benchmetre.budget.Formulas.number;
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
import org.benchmetre.farm.input.Sheets;

/**
 * At which value of each doubtful entry the answer flips: where the way recommended and another one cost the same. The value is found
 * by a search and filled in; whether it lies inside the plausible range, and how far it is from the entry, are formulas beside it.
 */
public final class Flips {

    private static final Unit PER_METRE = Unit.parse("money/(m a)");

    /**
     * One doubtful entry.
     *
     * @param key of its row
     * @param label what a reader sees
     * @param address the entry's cell, as one types it: {@code line} or {@code line[key]}
     * @param unit unit of the entry, a text
     * @param current its value, as a plain number
     * @param low low end of the plausible range, as a plain number; 0 for none
     * @param high high end of the plausible range, as a plain number; 0 for none
     */
    public record Doubtful(
            String key, String label, String address, Formula unit, Formula current, Formula low, Formula high) {}

    /**
     * Declares the lines.
     *
     * @param b where schedules are added
     * @param rank how the ways rank
     * @param pages tables opened early
     * @param entries the doubtful entries
     */
    public Flips(BudgetBuilder b, Ranking rank, Pages pages, List<Doubtful> entries) {
        Axis axis =
                Axis.rows("flip", "Entry", entries.stream().map(Doubtful::key).toList(), 0);
        ScheduleBuilder table = pages.flips();
        table.note(
                "A value in the plausible range is a real doubt. Where no value flips the answer, that is a result too. The "
                        + "margin of safety is how far the entry may move before the answer flips.");
        b.nameRows(axis, table.textLine("flip_label", "Entry", words(axis, entries, d -> text(d.label()))));
        Line current = table.line("flip_current", "Now", ONE, words(axis, entries, Doubtful::current));
        table.textLine("flip_unit", "Unit", words(axis, entries, Doubtful::unit));
        Line low = table.line("flip_low", "Plausible, low", ONE, words(axis, entries, Doubtful::low));
        Line high = table.line("flip_high", "Plausible, high", ONE, words(axis, entries, Doubtful::high));
        Line value = table.solved(
                "flip_value",
                "Flips at",
                ONE,
                "the value nearest to the entry at which both ways cost the same, by a search",
                axis);
        table.solved("flip_to", "Flips to", ONE, "the way that then costs as much as the one recommended", axis);
        Formula at = value.numberOr(none(ONE));
        Formula inside = and(value.hasNumber(), and(not(low.exceeds(at)), not(at.exceeds(high))));
        table.textLine(
                "flip_finding",
                "Finding",
                when(
                        value.hasNumber(),
                        when(
                                high.isPositive(),
                                when(inside, text("inside the plausible range"), text("outside the plausible range")),
                                text("no plausible range is given")),
                        text("see the value")));
        table.line(
                "flip_margin",
                "Margin of safety",
                Unit.parse("%"),
                onlyWhen(
                        and(value.hasNumber(), current.isPositive()),
                        at.minus(current)
                                .over(when(current.isPositive(), current, one()))
                                .in(Unit.parse("%")),
                        "none"));
        table.textLine("flip_address", "Entry, as one types it", words(axis, entries, d -> text(d.address())));
        Line doubt = b.schedule(Sheets.IRRIGATION, "Flip values inside the plausible range")
                .line("flip_inside", "1 when inside", ONE, when(and(high.isPositive(), inside), one(), none(ONE)));
        stale(b, rank, pages.answer(), sum(doubt, axis));
    }

    private static void stale(BudgetBuilder b, Ranking rank, ScheduleBuilder answer, Formula insideCount) {
        ScheduleBuilder s = b.schedule(Sheets.IRRIGATION, "What the search balanced");
        Line first = s.line("balance_first", "The way recommended, now", PER_METRE, rank.bestCost);
        Line next = s.line("balance_next", "The next, now", PER_METRE, rank.nextCost);
        Line firstThen = s.solvedNumber(
                "balance_first_filled",
                "The way recommended, as filled",
                PER_METRE,
                "on the entries the search began with");
        Line nextThen = s.solvedNumber(
                "balance_next_filled", "The next, as filled", PER_METRE, "on the entries the search began with");
        Formula moved = or(
                or(first.exceeds(firstThen), firstThen.exceeds(first)),
                or(next.exceeds(nextThen), nextThen.exceeds(next)));
        answer.textLine(
                "flip_state",
                "Flip values",
                when(
                        moved,
                        text("out of date: entries have changed since they were filled; write the workbook again"),
                        text("as filled on these entries")));
        Line inside =
                s.line("flips_inside", "Entries that flip the answer inside their plausible range", ONE, insideCount);
        answer.textLine(
                "irrigation_doubt_flips",
                "Doubts",
                when(
                        inside.isPositive(),
                        text("A doubtful entry flips the answer inside its plausible range: see at which value."),
                        text("No doubtful entry flips the answer inside its plausible range, as filled.")));
    }

    private static Formula words(Axis axis, List<Doubtful> entries, Function<Doubtful, Formula> word) {
        return new Rows(axis, entries.stream().map(word).toList());
    }

    /** A plain number from a bound that may be missing. */
    static Formula bound(double value) {
        return Double.isFinite(value) ? number(value, ONE) : none(ONE);
    }
}
