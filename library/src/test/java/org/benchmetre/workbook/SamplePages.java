package org.benchmetre.workbook;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.benchmetre.budget.Axis;
import org.benchmetre.budget.Budget;
import org.benchmetre.budget.Line;
import org.benchmetre.page.Block;
import org.benchmetre.page.Chart;
import org.benchmetre.page.ChartLook;
import org.benchmetre.page.Column;
import org.benchmetre.page.EntryList;
import org.benchmetre.page.EntryTable;
import org.benchmetre.page.FigureList;
import org.benchmetre.page.FigureRow;
import org.benchmetre.page.Levers;
import org.benchmetre.page.Page;
import org.benchmetre.page.Sentence;
import org.benchmetre.page.Sentences;
import org.benchmetre.page.Table;
import org.benchmetre.page.Tone;

/** Pages over the budget of the tests: every kind of block that draws cells of its own. */
final class SamplePages {

    private SamplePages() {}

    static Setup setup(Budget budget) {
        Line sentence = budget.line("way_sentence");
        Line cost = budget.line("part_cost");
        Axis part = cost.axes().get(0);
        Page answer = Page.answer("Shelf", "What does a shelf cost?")
                .head(new Sentences(List.of(new Sentence(sentence, Tone.LEAD))))
                .left(
                        List.of(30, 12, 12),
                        new Levers(
                                "Change here",
                                List.of(
                                        FigureRow.of(budget.line("shelf_length")),
                                        FigureRow.of(budget.line("way_choice")))),
                        new FigureList(
                                "Cost",
                                List.of(
                                        FigureRow.of(budget.line("parts_cost")),
                                        FigureRow.total("In all", budget.line("total_cost")))))
                .right(
                        List.of(30, 12, 12),
                        Table.of("Parts", part, Column.of("Part", budget.line("part_name")), Column.of("Cost", cost))
                                .largestFirst(cost))
                .foot(charts(budget, part, cost).toArray(Block[]::new));
        Page entries = Page.entries("Values", "What is entered?")
                .left(
                        List.of(),
                        new EntryList(
                                "Single values",
                                Stream.of("shelf_length", "hourly_wage", "glue_temperature", "finish_kind")
                                        .map(budget::line)
                                        .toList()));
        Page table = Page.entries("Things", "What is bought?")
                .left(
                        List.of(),
                        new EntryTable(
                                "Parts",
                                part,
                                Stream.of(
                                                "part_name",
                                                "part_group",
                                                "part_rate",
                                                "part_pack",
                                                "part_price",
                                                "part_source")
                                        .map(id -> Column.of(budget.line(id).label(), budget.line(id)))
                                        .toList()));
        return new Setup(List.of(answer, entries, table), budget.line("way_note"), Paper.LETTER);
    }

    private static List<Chart> charts(Budget budget, Axis part, Line cost) {
        Line renewal = budget.line("part_renewal");
        Axis year = renewal.axes().get(1);
        return List.of(
                chart(budget, Chart.Shape.BARS, cost, part, Optional.of(cost)),
                chart(budget, Chart.Shape.SWINGS, cost, part, Optional.of(cost)),
                chart(budget, Chart.Shape.STACKED_BARS, renewal, year, Optional.empty()),
                chart(budget, Chart.Shape.COLUMNS, renewal, year, Optional.empty()),
                chart(budget, Chart.Shape.STACKED_COLUMNS, renewal, year, Optional.empty()),
                chart(budget, Chart.Shape.CURVES, renewal, year, Optional.empty()));
    }

    private static Chart chart(Budget budget, Chart.Shape shape, Line values, Axis along, Optional<Line> order) {
        return new Chart(
                budget.line("way_sentence"),
                shape,
                List.of(values),
                along,
                new ChartLook(12, "Costs of parts as " + shape, order));
    }
}
