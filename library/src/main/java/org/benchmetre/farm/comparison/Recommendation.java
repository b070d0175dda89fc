package org.benchmetre.farm.comparison;

import static org.benchmetre.budget.Formulas.joined;
import static org.benchmetre.budget.Formulas.none;
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

/** The answer in a sentence, with its reasons and its doubts. Each sentence is a live formula and changes with the entries. */
public final class Recommendation {

    /** Common practice, no source. */
    private static final double MUCH_OF_A_PULSE = 30;

    /**
     * What the reasons speak of, each by way and per metre or house and year.
     *
     * @param lost value of fruit lost to dry plants
     * @param drained what drains from the lines between pulses, share of a pulse
     */
    public record Grounds(Line lost, Line drained) {}

    private record Reason(String name, String label, String less, String more) {}

    /** What a reader sees of the one that comes first. */
    final Line firstLabel;
    /** What a reader sees of the one that comes next. */
    final Line nextLabel;

    private final Ranking rank;
    private final ScheduleBuilder weighed;

    /**
     * Declares the sentences.
     *
     * @param b where workings are added
     * @param s where they are added: the first schedule of its sheet
     * @param rank how the ways rank
     * @param g what the reasons speak of
     */
    public Recommendation(BudgetBuilder b, ScheduleBuilder s, Ranking rank, Grounds g) {
        this.rank = rank;
        weighed = b.schedule(Sheets.IRRIGATION, "What the reasons weigh: the first and the next");
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
        Line drained = weighed.line(
                "irrigation_drained_first",
                "Drained between pulses, the first",
                g.drained().unit(),
                rank.ofFirst(g.drained()));
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
        Reason clogs = new Reason(
                "clogging",
                "Clogging",
                "Less fruit is lost to dry plants than with: ",
                "More fruit is lost to dry plants than with: ");
        reason(s, clogs, g.lost());
    }

    private void reason(ScheduleBuilder s, Reason reason, Line amount) {
        Line first =
                weighed.line(reason.name + "_first", reason.label + ", the first", amount.unit(), rank.ofFirst(amount));
        Line next = weighed.line(
                reason.name + "_next",
                reason.label + ", the next",
                amount.unit(),
                when(rank.hasNext(), rank.ofNext(amount), none(amount.unit())));
        Line more = weighed.line(
                reason.name + "_apart",
                reason.label + ", the next less the first, 0 where alike",
                amount.unit(),
                when(Sizes.differ(next, first), next.minus(first), none(amount.unit())),
                Sizes.SOURCE);
        Formula less = none(amount.unit()).minus(more);
        Formula words = when(
                more.isPositive(),
                text(reason.less),
                when(less.isPositive(), text(reason.more), text("No difference from: ")));
        s.textLine(
                "irrigation_reason_" + reason.name,
                reason.label,
                when(rank.hasNext(), joined(words, nextLabel, text(".")), text("No other system is in the ranking.")));
    }
}
