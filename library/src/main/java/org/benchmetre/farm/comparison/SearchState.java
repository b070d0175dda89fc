package org.benchmetre.farm.comparison;

import static org.benchmetre.budget.Formulas.joined;
import static org.benchmetre.budget.Formulas.none;
import static org.benchmetre.budget.Formulas.one;
import static org.benchmetre.budget.Formulas.or;
import static org.benchmetre.budget.Formulas.text;
import static org.benchmetre.budget.Formulas.when;
import static org.benchmetre.farm.input.TradeUnits.ONE;

import org.benchmetre.budget.BudgetBuilder;
import org.benchmetre.budget.Formula;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.ScheduleBuilder;
import org.benchmetre.budget.unit.Unit;
import org.benchmetre.decision.Standing;
import org.benchmetre.farm.input.Sheets;

/**
 * Whether the values that a search found still hold: the search balanced the costs of the first and the next, so that it is out of
 * date once either has moved.
 */
final class SearchState {

    private static final Unit PER_METRE = Unit.parse("money/(m a)");

    /** Whether entries have changed since the search, a truth. */
    final Formula isOld;

    SearchState(BudgetBuilder b, Ranking rank, ScheduleBuilder answer) {
        ScheduleBuilder s = b.schedule(Sheets.IRRIGATION, "What the search balanced");
        Line first = s.line("balance_first", "The system recommended, now", PER_METRE, rank.bestCost);
        Line next = s.line("balance_next", "The next, now", PER_METRE, rank.nextCost);
        Line firstMoved = moved(s, first, "The system recommended");
        Line nextMoved = moved(s, next, "The next");
        isOld = or(firstMoved.isPositive(), nextMoved.isPositive());
        Line words = answer.textLine(
                "flip_state",
                "Flip values by search",
                when(
                        isOld,
                        text(
                                "out of date for lives and failing outlets: entries have changed since they were filled; write the "
                                        + "workbook again"),
                        text("as filled on these entries")));
        answer.textLine(
                "flip_note",
                "Values found by a search",
                joined(text("Lives and failing outlets are found by a search: "), words, text(".")));
    }

    private static Line moved(ScheduleBuilder s, Line now, String what) {
        Line then = s.solvedNumber(
                now.id() + "_filled",
                what + ", as filled",
                PER_METRE,
                "on the entries the search began with",
                new Standing(now));
        return s.line(
                now.id() + "_moved",
                "Has moved since, 1 or 0",
                ONE,
                when(Sizes.differ(now, then), one(), none(ONE)),
                Sizes.SOURCE);
    }
}
