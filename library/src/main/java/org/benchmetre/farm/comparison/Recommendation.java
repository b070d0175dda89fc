package org.benchmetre.farm.comparison;

import static org.benchmetre.budget.Formulas.and;
import static org.benchmetre.budget.Formulas.joined;
import static org.benchmetre.budget.Formulas.number;
import static org.benchmetre.budget.Formulas.onlyWhen;
import static org.benchmetre.budget.Formulas.text;
import static org.benchmetre.budget.Formulas.when;

import org.benchmetre.budget.Formula;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.ScheduleBuilder;
import org.benchmetre.budget.unit.Unit;
import org.benchmetre.farm.irrigation.hydraulics.Ways;

/** The answer in a sentence, with its reasons and its doubts. Each sentence is a live formula and changes with the entries. */
public final class Recommendation {

    /** Common practice, no source. */
    private static final double MUCH_OF_A_PULSE = 30;

    private static final Unit PER_METRE = Unit.parse("money/(m a)");

    /**
     * What the reasons speak of, each by way and per metre or house and year.
     *
     * @param ownership what the line costs to own and lay
     * @param upkeep water, feed, pumping and care
     * @param lost value of fruit lost to dry plants
     * @param frictionNote whether friction decides, in words
     * @param drained what drains from the lines between pulses, share of a pulse
     */
    public record Grounds(Line ownership, Line upkeep, Line lost, Line frictionNote, Line drained) {}

    /**
     * Declares the sentences.
     *
     * @param s where they are added: the first schedule of its sheet
     * @param ways ways to water
     * @param rank how the ways rank
     * @param chosen key of the way that is counted
     * @param g what the reasons speak of
     */
    public Recommendation(ScheduleBuilder s, Ways ways, Ranking rank, Line chosen, Grounds g) {
        Formula first = rank.ofFirst(ways.label);
        Formula next = when(rank.hasNext(), rank.ofNext(ways.label), text("no other way"));
        Formula even = rank.reaching.isPositive();
        s.textLine(
                "irrigation_recommendation",
                "Recommendation",
                joined(
                        first,
                        when(
                                even,
                                text(": least yearly cost per metre of the ways that reach the target uniformity."),
                                text(": least yearly cost per metre, but no way reaches the target uniformity."))));
        s.textLine("recommended_label", "The way recommended", first);
        s.line(
                "recommended_saving_per_metre",
                "Saves against the next",
                PER_METRE,
                onlyWhen(rank.hasNext(), rank.nextCost.minus(rank.bestCost), "no other way"));
        s.textLine("irrigation_next", "The next", next);
        s.textLine(
                "irrigation_reason_evenness",
                "Evenness",
                when(
                        even,
                        text(
                                "While it runs full it waters the far end evenly enough: its design emission uniformity reaches the target."),
                        text(
                                "No way reaches the target uniformity: shorten the run, feed the bench from the middle, or take a larger bore.")));
        s.textLine(
                "irrigation_reason_pulses",
                "Pulses",
                when(
                        rank.ofFirst(g.drained())
                                .exceeds(number(MUCH_OF_A_PULSE, g.drained().unit())),
                        text(
                                "More than 30 % of each pulse drains from the lines before the next, most of it at the low end: fewer "
                                        + "and longer pulses, or check valves, keep plants even."),
                        text("Little of each pulse drains from the lines before the next.")));
        reason(
                s,
                rank,
                "ownership",
                "Owning the line",
                g.ownership(),
                "The line costs less to own and lay than with: ",
                "The line costs more to own and lay than with: ",
                next);
        reason(
                s,
                rank,
                "upkeep",
                "Running it",
                g.upkeep(),
                "Water, feed, pumping, care and interest on them cost less than with: ",
                "Water, feed, pumping, care and interest on them cost more than with: ",
                next);
        reason(
                s,
                rank,
                "clogging",
                "Clogging",
                g.lost(),
                "Less fruit is lost to dry plants than with: ",
                "More fruit is lost to dry plants than with: ",
                next);
        s.textLine("irrigation_reason_friction", "Friction", rank.ofFirst(g.frictionNote()));
        s.textLine(
                "irrigation_choice_differs",
                "The choice",
                when(
                        rank.best.is(chosen),
                        text("The entries choose this way."),
                        text(
                                "The entries choose another way: set irrigation_choice on the sheet of entries to change it.")));
        s.textLine(
                "irrigation_doubt_prices",
                "Sources",
                text(
                        "Prices, lives and clogging without a published source are to be replaced by your own before you buy."));
    }

    private static void reason(
            ScheduleBuilder s,
            Ranking rank,
            String name,
            String label,
            Line amount,
            String less,
            String more,
            Formula next) {
        Formula first = rank.ofFirst(amount);
        Formula second = rank.ofNext(amount);
        Formula cheaper =
                and(rank.hasNext(), when(rank.hasNext(), second, first).exceeds(first));
        Formula dearer = and(rank.hasNext(), first.exceeds(when(rank.hasNext(), second, first)));
        s.textLine(
                "irrigation_reason_" + name,
                label,
                when(
                        rank.hasNext(),
                        joined(
                                when(cheaper, text(less), when(dearer, text(more), text("No difference from: "))),
                                next,
                                text(".")),
                        text("No other way is in the ranking.")));
    }
}
