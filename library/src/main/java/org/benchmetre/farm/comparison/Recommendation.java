package org.benchmetre.farm.comparison;

import static org.benchmetre.budget.Formulas.joined;
import static org.benchmetre.budget.Formulas.none;
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

/** The first and the next system by name, and what is to be said of the first. Each sentence is live. */
public final class Recommendation {

    private static final Unit PER_METRE = Unit.parse("money/(m a)");

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
     * @param pulses what pulses cost each way
     */
    Recommendation(BudgetBuilder b, ScheduleBuilder s, Ranking rank, PulsesCompared pulses) {
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
        s.textLine("irrigation_reason_pulses", "Pulses", pulses(b, rank, pulses));
    }

    private static Formula pulses(BudgetBuilder b, Ranking rank, PulsesCompared pulses) {
        ScheduleBuilder s = b.shared(Sheets.IRRIGATION, Tables.VERDICT);
        Line drained = s.line(
                "irrigation_drained_first",
                "Drained after shut-off, the first",
                pulses.drainedShare.unit(),
                rank.ofFirst(pulses.drainedShare));
        Line even = s.line(
                "irrigation_pulsed_first",
                "Uniformity over whole pulses, the first",
                pulses.uniformity.unit(),
                rank.ofFirst(pulses.uniformity));
        Line saving = s.line(
                "irrigation_valve_saving_first",
                "What check valves would save, the first",
                PER_METRE,
                rank.ofFirst(pulses.saving));
        String currency = b.structure().currency();
        Line valves = s.textLine(
                "irrigation_valve_words",
                "What check valves are worth",
                when(
                        saving.exceeds(none(PER_METRE)),
                        joined(
                                text(" Check valves save "),
                                shown(saving, MinorUnit.decimals(currency)),
                                text(" " + PER_METRE.display(currency) + ", their price not counted.")),
                        text(" The drain planned covers it.")));
        Line bound = s.textLine(
                "irrigation_pulse_words",
                "What drains, in words",
                joined(
                        shown(drained, 0),
                        text(" % of a pulse drains from the lines after it: over whole pulses uniformity is "),
                        shown(even, 0),
                        text(" % at most (a bound derived here, not published).")));
        return when(
                drained.isPositive(),
                when(even.isPositive(), joined(bound, valves), text("")),
                text("Nothing of a pulse drains from the lines before the next."));
    }
}
