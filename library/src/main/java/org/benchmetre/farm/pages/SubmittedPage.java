package org.benchmetre.farm.pages;

import java.util.List;
import java.util.stream.IntStream;
import org.benchmetre.budget.Axis;
import org.benchmetre.budget.Budget;
import org.benchmetre.budget.Line;
import org.benchmetre.page.Column;
import org.benchmetre.page.FigureList;
import org.benchmetre.page.FigureRow;
import org.benchmetre.page.Levers;
import org.benchmetre.page.Page;
import org.benchmetre.page.Sentence;
import org.benchmetre.page.Sentences;
import org.benchmetre.page.Table;
import org.benchmetre.page.TableRow;
import org.benchmetre.page.Tone;

/** What was submitted, whether it has changed since, and whether it is complete. */
final class SubmittedPage {

    private static final List<Integer> LEFT = List.of(30, 24, 14, 13, 8);
    private static final List<Integer> RIGHT = List.of(36, 13);

    /** First of the rows that are of years, not of the start. */
    private static final String FIRST_OF_YEARS = "sales";

    private SubmittedPage() {}

    static Page of(Budget budget) {
        Axis expected = budget.line("expected_label").axes().get(0);
        int years = expected.indexOf(FIRST_OF_YEARS);
        return Page.answer("Submitted", "What was submitted, is it complete, and has it changed since?")
                .head(new Sentences(List.of(
                        sentence(budget, "submitted_sentence", Tone.LEAD),
                        sentence(budget, "prepared_sentence", Tone.PLAIN),
                        sentence(budget, "ask_sentence", Tone.PLAIN),
                        sentence(budget, "expected_sentence", Tone.PLAIN))))
                .left(LEFT, handed(budget), figures(budget), coverage(budget))
                .right(
                        RIGHT,
                        expected(budget, "Uses of funds a lender expects", 0, years),
                        expected(budget, "Rows of a year a lender expects", years, expected.size()));
    }

    private static Sentence sentence(Budget budget, String id, Tone tone) {
        return new Sentence(budget.line(id), tone);
    }

    private static Levers handed(Budget budget) {
        return new Levers(
                "Enter here",
                List.of(
                        FigureRow.of("Prepared by", budget.line("prepared_by")),
                        FigureRow.of("Prepared for", budget.line("prepared_for")),
                        FigureRow.of("Submitted on, as 2026-03-31", budget.line("submitted_on"))));
    }

    private static List<TableRow> rows(int from, int to) {
        return IntStream.range(from, to).mapToObj(TableRow::at).toList();
    }

    private static Table figures(Budget budget) {
        Line label = budget.line("submitted_label");
        return Table.of(
                        "Money, " + budget.currency(),
                        label.axes().get(0),
                        Column.of("Figure", label),
                        Column.of("As submitted", budget.line("submitted_then")),
                        Column.of("Now", budget.line("submitted_now")),
                        Column.of("Difference", budget.line("submitted_change")),
                        Column.of("", budget.line("submitted_state")))
                .note("As submitted is what stood here when this workbook was written; it stays when entries change.");
    }

    private static FigureList coverage(Budget budget) {
        return new FigureList(
                "Lowest coverage of debt in any year, 0 without debt",
                List.of(
                        FigureRow.of("As submitted", budget.line("submitted_coverage_then")),
                        FigureRow.of("Now", budget.line("submitted_coverage_now")),
                        FigureRow.of("Difference", budget.line("submitted_coverage_change"))));
    }

    private static Table expected(Budget budget, String title, int from, int to) {
        Line label = budget.line("expected_label");
        return Table.of(title, label.axes().get(0), Column.of("", label), Column.of("", budget.line("expected_state")))
                .rows(rows(from, to));
    }
}
