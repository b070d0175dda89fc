package org.benchmetre.batch;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.benchmetre.budget.Axis;
import org.benchmetre.budget.CellRef;
import org.benchmetre.budget.Kind;
import org.benchmetre.budget.Line;
import org.benchmetre.page.Across;
import org.benchmetre.page.Column;
import org.benchmetre.page.Criterion;
import org.benchmetre.page.Decimals;
import org.benchmetre.page.Tone;
import org.benchmetre.page.shown.ShownCells;

/** What is compared side by side, criteria down: each criterion with its unit and one number of decimals. */
final class AcrossText {

    private final ShownCells cells;
    private final Across block;
    private final List<Integer> compared;

    AcrossText(ShownCells cells, Across block) {
        this.cells = cells;
        this.block = block;
        this.compared = IntStream.range(0, block.axis().size())
                .filter(row -> block.axis().isSpare(row) ? isFilledIn(row) : row >= block.from() && row < block.to())
                .boxed()
                .toList();
    }

    @Override
    public String toString() {
        List<String> header = new ArrayList<>(List.of(""));
        compared.forEach(row -> header.add(name(row)));
        TextTable text = new TextTable(header, 1);
        IntStream.range(1, header.size()).forEach(text::right);
        for (Criterion criterion : block.rows()) {
            if (!criterion.heading().isEmpty()) {
                text.heading(criterion.heading());
            }
            if (criterion.tone() == Tone.TOTAL) {
                text.total(row(criterion));
            } else {
                text.row(row(criterion));
            }
        }
        return text.toString();
    }

    private List<String> row(Criterion criterion) {
        Line line = criterion.line();
        List<CellRef> shown = compared.stream()
                .map(row -> Column.of("", line).cell(block.axis(), row))
                .toList();
        Decimals decimals = cells.decimals(shown);
        String label = line.kind() == Kind.TEXT ? criterion.label() : cells.withUnit(criterion.label(), line.unit());
        List<String> words = new ArrayList<>(List.of(label));
        shown.forEach(cell -> words.add(cells.shown(cell, decimals)));
        return words;
    }

    /** A spare row that somebody has filled stands after the last of the others. */
    private boolean isFilledIn(int row) {
        return block.to() == block.axis().filled() && !name(row).isEmpty();
    }

    /** What a row of the axis is called; empty for a spare row that nobody has filled. */
    private String name(int row) {
        Axis axis = block.axis();
        Optional<Line> names = cells.figures().budget().rowName(axis);
        return names.map(line -> cells.figures().text(line, row))
                .orElse(axis.isSpare(row) ? "" : axis.keys().get(row));
    }
}
