package org.benchmetre.farm.pages;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;
import org.benchmetre.budget.CellRef;
import org.benchmetre.budget.Line;
import org.benchmetre.page.Across;
import org.benchmetre.page.BlockVisitor;
import org.benchmetre.page.BySize;
import org.benchmetre.page.CaseTable;
import org.benchmetre.page.CautionList;
import org.benchmetre.page.Chart;
import org.benchmetre.page.Column;
import org.benchmetre.page.Criterion;
import org.benchmetre.page.EntryList;
import org.benchmetre.page.EntryTable;
import org.benchmetre.page.Evidence;
import org.benchmetre.page.FigureList;
import org.benchmetre.page.FigureRow;
import org.benchmetre.page.FixedWords;
import org.benchmetre.page.Levers;
import org.benchmetre.page.Page;
import org.benchmetre.page.Sentence;
import org.benchmetre.page.Sentences;
import org.benchmetre.page.Table;

/** The lines that each kind of block places on a page. */
final class LinesOf implements BlockVisitor<Stream<Line>> {

    private LinesOf() {}

    /** All lines on some pages. */
    static List<Line> pages(List<Page> pages) {
        return pages.stream()
                .flatMap(page -> page.blocks().stream())
                .flatMap(block -> block.show(new LinesOf()))
                .distinct()
                .toList();
    }

    @Override
    public Stream<Line> sentences(Sentences block) {
        return block.rows().stream().map(Sentence::text);
    }

    @Override
    public Stream<Line> levers(Levers block) {
        return block.rows().stream().map(FigureRow::line);
    }

    @Override
    public Stream<Line> figures(FigureList block) {
        return block.rows().stream().map(FigureRow::line);
    }

    @Override
    public Stream<Line> table(Table block) {
        Stream<Line> placed = block.rows().stream()
                .flatMap(row -> row.cells().stream())
                .filter(Objects::nonNull)
                .map(CellRef::line);
        Stream<Line> order = block.bySize().map(BySize::line).stream();
        return Stream.of(block.columns().stream().map(Column::line), placed, order)
                .flatMap(lines -> lines);
    }

    @Override
    public Stream<Line> across(Across block) {
        return block.rows().stream().map(Criterion::line);
    }

    @Override
    public Stream<Line> cases(CaseTable block) {
        return Stream.of(block.values(), block.down(), block.across(), block.nowDown(), block.nowAcross());
    }

    @Override
    public Stream<Line> chart(Chart block) {
        List<Line> lines = new ArrayList<>(block.values());
        lines.add(block.sentence());
        block.look().largestFirst().ifPresent(lines::add);
        return lines.stream();
    }

    @Override
    public Stream<Line> words(FixedWords block) {
        return Stream.empty();
    }

    @Override
    public Stream<Line> entries(EntryList block) {
        return block.entries().stream();
    }

    @Override
    public Stream<Line> entryTable(EntryTable block) {
        return block.columns().stream().map(Column::line);
    }

    @Override
    public Stream<Line> cautions(CautionList block) {
        return Stream.empty();
    }

    @Override
    public Stream<Line> evidence(Evidence block) {
        return Stream.empty();
    }
}
