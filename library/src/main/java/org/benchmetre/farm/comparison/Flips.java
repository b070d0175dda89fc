package org.benchmetre.farm.comparison;

import static org.benchmetre.budget.Formulas.and;
import static org.benchmetre.budget.Formulas.lookup;
import static org.benchmetre.budget.Formulas.one;
import static org.benchmetre.budget.Formulas.onlyWhen;
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
import org.benchmetre.farm.input.Tables;

/**
 * At which value of each doubtful entry the answer flips: where the system recommended and another one cost the same; whether that value
 * lies inside the plausible range, and how far it is from the entry. Values that a search found, of lives and of failing outlets,
 * stay as they were filled; beside them stands whether the entries have changed since.
 */
final class Flips {

    private static final Unit PER_METRE = Unit.parse("money/(m a)");
    private static final Unit PERCENT = Unit.parse("%");
    private static final String FIRST_ONLY = " Only the parts and outlets of the first " + OutletParts.MOST
            + " systems of the table are looked at: list those in question first.";

    /** One row for each doubtful entry. */
    final Axis axis;
    /** What a reader sees of it, empty while it is not in use. */
    final Line label;
    /** Its unit, a text. */
    final Line unit;
    /** Its value now, a plain number. */
    final Line current;
    /** The value at which the answer flips, 0 for none. */
    final Line at;
    /** Key of the system it flips to, empty for none. */
    final Line to;
    /** Its usual range, and what of it flips. */
    final Usual usual;
    /** Whether what a search found still holds. */
    final SearchState state;
    /** Whether systems in use stand in rows that are not looked at. */
    final boolean leavesOut;

    private final BudgetBuilder b;
    private final Ranking rank;
    private final List<Doubtful> entries;

    /**
     * The usual range of each doubtful entry, and what of it flips; low and high are 0 where none is known.
     *
     * @param flips whether some value flips the answer, a truth
     * @param at the value, 0 for none
     * @param low low end
     * @param high high end
     * @param wayAt the value at which each system costs as much as the first, by entry and system
     */
    record Usual(Formula flips, Line at, Line low, Line high, Line wayAt) {}

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
                        + firstOnly());
        label = table.textLine("flip_label", "Entry", rows(d -> d.words().label()));
        b.nameRows(axis, label);
        current = table.line("flip_current", "Now", ONE, rows(d -> d.values().current()));
        unit = table.textLine("flip_unit", "Unit", rows(d -> d.words().unit()));
        Line low = table.line(
                "flip_low", "Plausible, low", ONE, rows(d -> d.values().low()));
        Line high = table.line(
                "flip_high", "Plausible, high", ONE, rows(d -> d.values().high()));
        FlipValues values = new FlipValues(b, rank, entries, current, high, low);
        Line value = table.line(
                "flip_value",
                "Flips at",
                ONE,
                onlyWhen(values.to.isFilled(), values.at, whyNone()),
                "the value nearest to the entry at which both systems cost the same");
        table.textLine("flip_to", "Flips to", when(label.isFilled(), way(values), text("")));
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
        usual = new Usual(value.hasNumber(), values.at, low, high, values.wayAt);
        to = values.to;
        at = values.at;
        state = new SearchState(b, rank, pages.answer());
    }

    /** Why no value flips the answer, in each row in use. */
    private Formula whyNone() {
        Line words = b.shared(Sheets.IRRIGATION, Tables.VERDICT)
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
        return when(label.isFilled(), words, text(""));
    }

    /** What is said where systems in use stand in rows that are not looked at, or the empty text. */
    String firstOnly() {
        return leavesOut ? FIRST_ONLY : "";
    }

    private Formula way(FlipValues values) {
        return when(values.to.isFilled(), lookup(rank.ways.label, rank.ways.key, values.to), text("–"));
    }

    private Formula rows(Function<Doubtful, Formula> formula) {
        return new Rows(axis, entries.stream().map(formula).toList());
    }
}
