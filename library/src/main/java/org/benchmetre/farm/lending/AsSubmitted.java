package org.benchmetre.farm.lending;

import static org.benchmetre.budget.Formulas.countWhere;
import static org.benchmetre.budget.Formulas.joined;
import static org.benchmetre.budget.Formulas.none;
import static org.benchmetre.budget.Formulas.not;
import static org.benchmetre.budget.Formulas.number;
import static org.benchmetre.budget.Formulas.one;
import static org.benchmetre.budget.Formulas.or;
import static org.benchmetre.budget.Formulas.shown;
import static org.benchmetre.budget.Formulas.text;
import static org.benchmetre.budget.Formulas.when;
import static org.benchmetre.farm.input.TradeUnits.MONEY;
import static org.benchmetre.farm.input.TradeUnits.ONE;

import java.util.Map;
import org.benchmetre.budget.Axis;
import org.benchmetre.budget.BudgetBuilder;
import org.benchmetre.budget.Formula;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.Rows;
import org.benchmetre.budget.ScheduleBuilder;
import org.benchmetre.decision.Standing;
import org.benchmetre.farm.input.Sheets;

/** Figures that a lender decides by, as they stood when the plan was written, beside the live ones. */
final class AsSubmitted {

    private static final String MOVED = "moved";

    /** Two runs of the same arithmetic differ by less, and no figure of a plan is told to more than two decimals. */
    private static final double TOLD = 0.005;

    AsSubmitted(BudgetBuilder b, Map<Line, String> money, Line coverage) {
        Axis axis = Axis.rows(
                "submitted", "Figure", money.keySet().stream().map(Line::id).toList(), 0);
        ScheduleBuilder s = b.schedule(Sheets.SUBMISSION, "Money as submitted");
        ScheduleBuilder single = b.schedule(Sheets.SUBMISSION, "Coverage as submitted, and what has moved");
        Line label = s.textLine(
                "submitted_label",
                "Figure",
                new Rows(
                        axis,
                        money.values().stream()
                                .<Formula>map(words -> text(words))
                                .toList()));
        b.nameRows(axis, label);
        Formula now = new Rows(
                axis, money.keySet().stream().map(line -> line.counting(MONEY)).toList());
        Line moved = pair(s, new Pair("submitted", "", s.line("submitted_now", "Now", MONEY, now), axis));
        Line state = s.textLine("submitted_state", "State", when(isNothing(moved), text(""), text(MOVED)));
        Formula counted = when(number(Repayment.NO_DEBT, ONE).exceeds(coverage), coverage, none(ONE));
        Line covered = single.line(
                "submitted_coverage_now",
                "Lowest coverage now, 0 without debt",
                ONE,
                counted,
                "1000 stands for no debt: our choice, no source");
        Line coverageMoved = pair(single, new Pair("submitted_coverage", "Lowest coverage, ", covered));
        Line count = single.line(
                "submitted_moved",
                "Figures that have moved",
                ONE,
                countWhere(state, text(MOVED), axis).plus(when(isNothing(coverageMoved), none(ONE), one())));
        single.textLine(
                "submitted_sentence",
                "Whether figures have moved",
                when(
                        count.isPositive(),
                        joined(
                                shown(count, 0),
                                text(" of " + (axis.size() + 1) + " figures"),
                                when(count.exceeds(one()), text(" have"), text(" has")),
                                text(" moved since this was written.")),
                        text("None of these figures has moved since this was written.")));
    }

    /** A live line of which a copy is kept. */
    private record Pair(String id, String label, Line now, Axis... axes) {}

    /** Adds the figure as it stood and the difference, which is given back. */
    private static Line pair(ScheduleBuilder s, Pair of) {
        Line now = of.now();
        Line then = s.solvedNumber(
                of.id() + "_then",
                of.label() + "as submitted",
                now.unit(),
                "the figure when the plan was written",
                new Standing(now),
                of.axes());
        Formula told = number(TOLD, now.unit());
        return s.line(
                of.id() + "_change",
                of.label() + "difference",
                now.unit(),
                when(
                        or(
                                now.minus(then).minus(told).isPositive(),
                                then.minus(now).minus(told).isPositive()),
                        now.minus(then),
                        none(now.unit())),
                "differences below half a hundredth are left out, since no figure is told closer: our choice, no source");
    }

    private static Formula isNothing(Line change) {
        return not(or(change.isPositive(), none(change.unit()).minus(change).isPositive()));
    }
}
