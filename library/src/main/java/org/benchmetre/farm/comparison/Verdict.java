package org.benchmetre.farm.comparison;

import static org.benchmetre.budget.Formulas.joined;
import static org.benchmetre.budget.Formulas.lookup;
import static org.benchmetre.budget.Formulas.one;
import static org.benchmetre.budget.Formulas.shown;
import static org.benchmetre.budget.Formulas.text;
import static org.benchmetre.budget.Formulas.when;

import org.benchmetre.budget.BudgetBuilder;
import org.benchmetre.budget.Formula;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.MinorUnit;
import org.benchmetre.budget.ScheduleBuilder;
import org.benchmetre.budget.unit.Unit;
import org.benchmetre.farm.input.Sheets;
import org.benchmetre.farm.input.Tables;

/**
 * Which irrigation system, and how sure, in a sentence: clear, depends on entries that flip it inside their usual range, or too close
 * to call; that none reaches the uniformity asked for; that the entries choose another one. It is live, and where values of a search
 * have gone out of date it says so.
 */
final class Verdict {

    private static final Unit PER_METRE = Unit.parse("money/(m a)");

    /** What decides. */
    private final Ranking rank;

    private final Names names;
    private final Grounds grounds;
    private final String perMetre;
    private final int decimals;

    /**
     * What the verdict is made of.
     *
     * @param chosen key of the system that the entries choose
     * @param close whether the first and the next are too close to call
     * @param flips at which value of an entry the answer flips
     * @param doubts those inside their usual range
     * @param target the uniformity asked for, %
     */
    record Grounds(Line chosen, CloseCall close, Flips flips, NamedDoubts doubts, Line target) {}

    /**
     * What a reader sees of the systems.
     *
     * @param first that comes first
     * @param next that comes next
     * @param chosen that the entries choose
     */
    record Names(Line first, Line next, Line chosen) {}

    Verdict(BudgetBuilder b, ScheduleBuilder answer, Ranking rank, Names names, Grounds grounds) {
        this.rank = rank;
        this.names = names;
        this.grounds = grounds;
        String currency = b.structure().currency();
        perMetre = " " + PER_METRE.display(currency);
        decimals = MinorUnit.decimals(currency);
        ScheduleBuilder s = b.shared(Sheets.IRRIGATION, Tables.VERDICT);
        Line target = s.textLine("irrigation_target_words", "The uniformity asked for", percent(grounds.target()));
        Line saving = s.line(
                "irrigation_saving_words",
                "What the first saves",
                Unit.ONE,
                joined(shown(grounds.close().saving, decimals), text(perMetre)),
                "as many decimals as the smallest coin has");
        Line alone = s.textLine("irrigation_alone_words", "Where there is no next", alone(target));
        Line both = s.textLine("irrigation_both_words", "First and next", both(saving));
        Formula pair = when(rank.hasNext(), both, alone);
        Line doubt = s.textLine("irrigation_doubt_words", "How sure", doubt());
        Line none = s.textLine(
                "irrigation_target_missed",
                "Where none reaches the target",
                when(
                        rank.reaching.isPositive(),
                        text(""),
                        joined(text(" None reaches "), target, text(" emission uniformity."))));
        Line choice = s.textLine(
                "irrigation_choice_words",
                "Where the entries choose another",
                when(
                        rank.best.is(grounds.chosen()),
                        text(""),
                        joined(text(" The entries still choose "), names.chosen, text("."))));
        answer.textLine("irrigation_uniformity_missed", "The system chosen against the target", missed(target));
        Formula old = when(grounds.flips().state.isOld, text(" Lives and failing outlets as first filled."), text(""));
        answer.textLine(
                "irrigation_verdict",
                "Irrigation system",
                joined(text("Irrigation: "), pair, doubt, text("."), none, choice, old));
    }

    /** A warning where the system that is counted does not reach the target. */
    private Formula missed(Line target) {
        Formula reached = lookup(rank.reaches, rank.ways.key, grounds.chosen());
        return when(
                reached.isPositive(),
                text(""),
                joined(
                        names.chosen,
                        text(" does not reach the emission uniformity asked for, "),
                        target,
                        text(", inside its pressure range.")));
    }

    private static Formula percent(Line share) {
        Formula whole = shown(share, 0);
        return joined(when(share.exceeds(share.wholeDown()), shown(share, 1), whole), text(" %"));
    }

    private Formula both(Line saving) {
        return when(
                grounds.close().isClose,
                joined(
                        names.first,
                        text(" and "),
                        names.next,
                        text(" are too close to call, "),
                        saving,
                        text(" apart")),
                joined(names.first, text(", "), saving, text(" below "), names.next));
    }

    private Formula alone(Line target) {
        return joined(
                names.first,
                when(
                        rank.inUse.exceeds(one()),
                        joined(text(", the only system that reaches "), target, text(" emission uniformity")),
                        text(", the only system entered")));
    }

    private Formula doubt() {
        NamedDoubts doubts = grounds.doubts();
        String clear = grounds.flips().leavesOut
                ? ": clear on entries of the first " + OutletParts.MOST + " systems"
                : ": clear";
        Formula sure = when(
                rank.hasNext(),
                when(doubts.withoutRange.isPositive(), text(clear + " inside the usual ranges given"), text(clear)),
                text(""));
        Formula words = when(doubts.count.isPositive(), joined(text(": depends on "), doubts.names), sure);
        return when(grounds.close().isClose, text(""), words);
    }
}
