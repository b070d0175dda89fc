package org.benchmetre.workbook;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.util.HashSet;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.benchmetre.ScenarioException;
import org.benchmetre.budget.Budget;
import org.benchmetre.budget.Line;
import org.benchmetre.farm.Sample;
import org.junit.jupiter.api.Test;

/** What the referees' fifty adjustments reach: every lever of the first page, and every choice by the label that a reader picks. */
class AdjustmentsTest {

    private static final int SEEDS = 50;

    @Test
    void every_lever_is_typed_over_and_a_choice_by_each_of_its_labels() throws IOException, ScenarioException {
        OpenedBook book = OpenedBook.of(Sample.TROUGH_HOUSE, Paper.A4);
        Budget budget = book.plan().budget();
        Spot choice = book.plan().typedSpot(budget.line("irrigation_choice"), 0);
        Set<Spot> typed = new HashSet<>();
        Set<Object> chosen = new HashSet<>();
        for (int seed = 1; seed <= SEEDS; seed++) {
            for (Typing typing : Typing.of(book.plan(), Adjustments.seeded(budget, seed))) {
                typed.add(typing.spot());
                if (typing.spot().equals(choice)) {
                    chosen.add(typing.value());
                }
            }
        }
        PagePlan first = book.plan().pages().get(0);
        Set<Spot> levers = first.cells().stream()
                .filter(cell -> cell.content() instanceof PageCell.Typed)
                .map(cell -> new Spot(first.name(), cell.row(), cell.column()))
                .collect(Collectors.toSet());
        assertThat(levers).hasSizeGreaterThan(8).contains(choice);
        assertThat(typed).containsAll(levers);
        Line labels = budget.line("way_label");
        assertThat(chosen)
                .isEqualTo(IntStream.range(0, labels.axes().get(0).filled())
                        .mapToObj(row -> book.written().figures().text(labels, row))
                        .collect(Collectors.toSet()));
    }
}
