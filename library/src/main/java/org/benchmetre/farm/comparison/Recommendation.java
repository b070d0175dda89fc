package org.benchmetre.farm.comparison;

import static org.benchmetre.budget.Formulas.number;
import static org.benchmetre.budget.Formulas.text;
import static org.benchmetre.budget.Formulas.when;
import static org.benchmetre.farm.input.TradeUnits.COMMON;

import org.benchmetre.budget.BudgetBuilder;
import org.benchmetre.budget.Formula;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.ScheduleBuilder;
import org.benchmetre.budget.unit.Unit;
import org.benchmetre.farm.input.Sheets;
import org.benchmetre.farm.input.Tables;

/** The first and the next system by name, and what is to be said of the first. Each sentence is live. */
public final class Recommendation {

    /** Common practice, no source. */
    private static final double MUCH_OF_A_PULSE = 30;

    /** What a reader sees of the one that comes first. */
    final Line firstLabel;
    /** What a reader sees of the one that comes next. */
    final Line nextLabel;

    /**
     * Declares the sentences.
     *
     * @param b where workings are added
     * @param s where they are added: the first schedule of its sheet
     * @param rank how the ways rank
     * @param drainedShare what drains from the lines between pulses, share of a pulse, by way
     */
    public Recommendation(BudgetBuilder b, ScheduleBuilder s, Ranking rank, Line drainedShare) {
        Formula first = rank.ofFirst(rank.ways.label);
        Formula next = when(rank.hasNext(), rank.ofNext(rank.ways.label), text("no other system"));
        Formula even = rank.reaching.isPositive();
        firstLabel = s.textLine("recommended_label", "The system recommended", first);
        nextLabel = s.textLine("irrigation_next", "The next", next);
        s.textLine(
                "irrigation_reason_evenness",
                "Evenness",
                when(
                        even,
                        text(
                                "While it runs full it waters the far end evenly enough: its design emission uniformity reaches the target."),
                        text(
                                "No system reaches the target uniformity: shorten the run, feed the bench from the middle, or take a larger bore.")));
        Line drained = b.shared(Sheets.IRRIGATION, Tables.VERDICT)
                .line(
                        "irrigation_drained_first",
                        "Drained between pulses, the first",
                        drainedShare.unit(),
                        rank.ofFirst(drainedShare));
        s.line(
                "irrigation_reason_pulses",
                "Pulses",
                Unit.ONE,
                when(
                        drained.exceeds(number(MUCH_OF_A_PULSE, drained.unit())),
                        text(
                                "More than 30 % of each pulse drains from the lines before the next, most at the low end: fewer, longer "
                                        + "pulses or check valves help."),
                        text("Little of each pulse drains from the lines before the next.")),
                "much from 30 % of a pulse on: " + COMMON);
    }
}
