package org.benchmetre.farm.pages;

import java.util.List;
import org.benchmetre.budget.Budget;
import org.benchmetre.budget.Line;
import org.benchmetre.page.Column;
import org.benchmetre.page.FigureRow;
import org.benchmetre.page.Levers;
import org.benchmetre.page.Page;
import org.benchmetre.page.Sentence;
import org.benchmetre.page.Sentences;
import org.benchmetre.page.Table;
import org.benchmetre.page.Tone;

/** What should be doubted, and how much hangs on it: assumptions with ranges, evidence and effects, the heaviest first. */
final class ChallengePage {

    private static final List<Integer> WIDTHS = List.of(23, 17, 22, 11, 11, 11, 9, 21, 28);

    /** As many as one sheet of paper and one screen hold; all of them are in the workings. */
    private static final int SHOWN = 20;

    private ChallengePage() {}

    static Page of(Budget budget) {
        return Page.answer("Challenge", "What should be doubted, and how much hangs on it?")
                .head(new Sentences(List.of(
                        new Sentence(budget.line("challenge_sentence"), Tone.LEAD),
                        new Sentence(budget.line("challenge_evidence_sentence"), Tone.PLAIN),
                        new Sentence(budget.line("contract_sentence"), Tone.PLAIN),
                        new Sentence(budget.line("quotations_sentence"), Tone.WARNING))))
                .left(WIDTHS, assumptions(budget), contracts(budget));
    }

    private static Table assumptions(Budget budget) {
        Line label = budget.line("challenge_label");
        return Table.of(
                        "Each assumption alone, at both ends of its usual range",
                        label.axes().get(0),
                        Column.of("Assumption", label),
                        Column.of("As entered", budget.line("challenge_value")),
                        Column.of("Usual range", budget.line("challenge_range")),
                        Column.of("Worth moves, at low", budget.line("challenge_worth_low")),
                        Column.of("Worth moves, at high", budget.line("challenge_worth_high")),
                        Column.of("Coverage moves, at low", budget.line("challenge_coverage_low")),
                        Column.of("Coverage moves, at high", budget.line("challenge_coverage_high")),
                        Column.of("Evidence", budget.line("challenge_evidence")),
                        Column.of("Source", budget.line("challenge_source")))
                .largestFirst(budget.line("challenge_weight"))
                .most(SHOWN)
                .ofRatios()
                .note(
                        "Changes against the plan as it was when this was written; values as entered are live. The order is that of the larger "
                                + "change, each as a share of the largest.");
    }

    private static Levers contracts(Budget budget) {
        return new Levers(
                "Sales under contract",
                List.of(
                        FigureRow.of("Share of sales", budget.line("contract_share")),
                        FigureRow.of("With whom", budget.line("contract_with"))));
    }
}
