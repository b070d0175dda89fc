package org.benchmetre.farm.comparison;

import static org.benchmetre.budget.Formulas.greatest;
import static org.benchmetre.budget.Formulas.joined;
import static org.benchmetre.budget.Formulas.lookup;
import static org.benchmetre.budget.Formulas.not;
import static org.benchmetre.budget.Formulas.text;
import static org.benchmetre.budget.Formulas.when;

import org.benchmetre.budget.BudgetBuilder;
import org.benchmetre.budget.Formula;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.ScheduleBuilder;
import org.benchmetre.budget.unit.Unit;
import org.benchmetre.farm.input.Sheets;
import org.benchmetre.farm.input.Tables;
import org.benchmetre.farm.irrigation.hydraulics.Ways;

/** What the partial budget and the picture of the causes show, in a sentence each: the system chosen, its rival, the largest cause. */
final class PairWords {

    private static final String LARGEST = "largest";

    /** What a reader sees of the system chosen. */
    final Line chosen;

    PairWords(BudgetBuilder b, ScheduleBuilder answer, Ways ways, Pair pair, Causes causes) {
        Formula isAlone = pair.rival().is(pair.chosen());
        Line rival = answer.textLine(
                "rival_label",
                "Compared with",
                when(isAlone, text("no other system"), lookup(ways.label, ways.key, pair.rival())));
        chosen = b.shared(Sheets.IRRIGATION, Tables.VERDICT)
                .textLine("chosen_label", "Chosen", lookup(ways.label, ways.key, pair.chosen()));
        answer.textLine(
                "partial_title",
                "Partial budget",
                when(
                        isAlone,
                        text("There is no other system to change to."),
                        joined(text("From "), chosen, text(" to "), rival)));
        Line size = b.shared(Sheets.IRRIGATION, Tables.CAUSES)
                .line("cause_apart", "Without its sign", causes.cost.unit(), causes.more.plus(causes.less));
        ScheduleBuilder s = b.shared(Sheets.IRRIGATION, Tables.VERDICT);
        Line most = s.line("cause_most_apart", "How large", size.unit(), greatest(size, causes.axis));
        Line mark = b.shared(Sheets.IRRIGATION, Tables.CAUSES)
                .line(
                        "cause_largest",
                        "Mark",
                        Unit.ONE,
                        when(Sizes.isMore(most, size), text(""), text(LARGEST)),
                        Sizes.SOURCE);
        Line largest = s.textLine("cause_largest_label", "Which", lookup(causes.label, mark, text(LARGEST)));
        Formula between = joined(text("Where "), chosen, text(" and "), rival, text(" differ most: "));
        answer.textLine(
                "cause_title",
                "What differs",
                when(not(most.isPositive()), text("Yearly cost by cause"), joined(between, largest, text("."))));
    }
}
