package org.benchmetre.batch;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.benchmetre.budget.Axis;
import org.benchmetre.budget.CellRef;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.Position;
import org.benchmetre.page.CaseTable;
import org.benchmetre.page.Decimals;
import org.benchmetre.page.shown.ShownCells;

/** A figure over steps of two entries, the real values of both on the edges and the plan as entered in brackets. */
final class CaseText {

    /** Steps are shares of an entry: what is nearer than this to it is the entry itself. */
    private static final double SAME = 1e-9;

    private final ShownCells cells;
    private final CaseTable block;
    private final Axis downwards;
    private final Axis sideways;
    private boolean marked;

    CaseText(ShownCells cells, CaseTable block) {
        this.cells = cells;
        this.block = block;
        this.downwards = block.down().axes().get(0);
        this.sideways = block.across().axes().get(0);
    }

    @Override
    public String toString() {
        List<String> header = new ArrayList<>(List.of(""));
        edge(block.across()).forEach(step -> header.add(step + " "));
        TextTable text = new TextTable(header, 1);
        IntStream.range(0, header.size()).forEach(text::right);
        Decimals decimals = cells.decimals(all(block.values()));
        List<String> down = edge(block.down());
        for (int row = 0; row < downwards.size(); row++) {
            List<String> words = new ArrayList<>(List.of(down.get(row)));
            for (int column = 0; column < sideways.size(); column++) {
                words.add(value(row, column, decimals));
            }
            text.row(words);
        }
        return title() + text + legend();
    }

    private String title() {
        String unit = cells.withUnit(block.title(), block.values().unit());
        String edges = "Down: " + named(block.nowDown()) + ". Across: " + named(block.nowAcross()) + ".";
        return (block.title().isEmpty() ? "" : TextTable.wrapped(unit)) + TextTable.wrapped(edges);
    }

    private String legend() {
        return (marked ? "In brackets: the plan as entered. " : "") + "A minus is a loss.\n";
    }

    /** A value; brackets stand around the plan as entered, and room for one behind all others. */
    private String value(int row, int column, Decimals decimals) {
        Position at = Position.NONE.with(downwards, row).with(sideways, column);
        CellRef cell = new CellRef(block.values(), block.values().cellAt(at));
        String shown = cells.shown(cell, decimals);
        boolean now = isNow(block.down(), row, block.nowDown()) && isNow(block.across(), column, block.nowAcross());
        marked |= now;
        return now ? "[" + shown + "]" : shown + " ";
    }

    private boolean isNow(Line steps, int step, Line now) {
        double value = cells.figures().number(steps, step);
        double entered = cells.figures().number(now, 0);
        return Math.abs(value - entered) <= SAME * Math.abs(entered);
    }

    private List<String> edge(Line steps) {
        List<CellRef> shown = all(steps);
        Decimals decimals = cells.decimals(shown);
        return shown.stream().map(cell -> cells.shown(cell, decimals)).toList();
    }

    private String named(Line entry) {
        return cells.withUnit(entry.label(), entry.unit());
    }

    private static List<CellRef> all(Line line) {
        return IntStream.range(0, line.size())
                .mapToObj(cell -> new CellRef(line, cell))
                .toList();
    }
}
