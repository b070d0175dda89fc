package org.benchmetre.batch;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.benchmetre.budget.CellRef;
import org.benchmetre.budget.Kind;
import org.benchmetre.budget.entry.Quoted;
import org.benchmetre.page.FigureRow;
import org.benchmetre.page.Levers;

/** Levers in two columns side by side, read down the first and then down the second: label, then value with its unit. */
final class LeverText {

    private static final int GAP = 3;
    private static final int BETWEEN = 2;
    private static final int BOTH = TextTable.WIDTH - GAP;
    private static final int HALF = BOTH / 2;
    private static final int NARROWEST_LABEL = 18;

    /** A lever in words. */
    private record Lever(String label, String value) {}

    private final List<Lever> levers;

    LeverText(EntryText entries, Levers block) {
        this.levers = block.rows().stream().map(row -> lever(entries, row)).toList();
    }

    private static Lever lever(EntryText entries, FigureRow row) {
        CellRef cell = new CellRef(row.line(), 0);
        return new Lever(Quoted.visible(row.label()), Quoted.visible(entries.value(cell) + unit(entries, cell)));
    }

    private static String unit(EntryText entries, CellRef cell) {
        String unit = cell.line().kind() == Kind.TEXT ? "" : entries.unit(cell);
        return unit.isEmpty() ? "" : " " + unit;
    }

    @Override
    public String toString() {
        int rows = (levers.size() + 1) / 2;
        int width = firstWidth(levers.subList(0, rows), levers.subList(rows, levers.size()));
        List<String> first = column(levers.subList(0, rows), width);
        List<String> second = column(levers.subList(rows, levers.size()), BOTH - width);
        StringBuilder text = new StringBuilder();
        for (int i = 0; i < Math.max(first.size(), second.size()); i++) {
            String line = padded(at(first, i), width + GAP) + at(second, i);
            text.append(line.stripTrailing()).append('\n');
        }
        return text.toString();
    }

    /** Half of the page, or more or less of it where one column is wide and the other leaves it room. */
    private static int firstWidth(List<Lever> first, List<Lever> second) {
        int room = BOTH - wanted(second);
        return wanted(first) > HALF
                ? Math.min(wanted(first), Math.max(HALF, room))
                : Math.min(HALF, Math.max(wanted(first), room));
    }

    private static int wanted(List<Lever> levers) {
        return widest(levers.stream().map(Lever::label))
                + BETWEEN
                + widest(levers.stream().map(Lever::value));
    }

    /** Lines of at most so many letters; values begin below each other. */
    private static List<String> column(List<Lever> levers, int width) {
        int values = widest(levers.stream().map(Lever::value));
        int labels = Math.min(
                widest(levers.stream().map(Lever::label)), Math.max(NARROWEST_LABEL, width - BETWEEN - values));
        List<String> all = new ArrayList<>();
        for (Lever lever : levers) {
            List<String> label = TextTable.lines(lever.label(), labels);
            List<String> value = TextTable.lines(lever.value(), width - labels - BETWEEN);
            for (int i = 0; i < Math.max(label.size(), value.size()); i++) {
                all.add(padded(at(label, i), labels + BETWEEN) + at(value, i));
            }
        }
        return all;
    }

    private static int widest(Stream<String> texts) {
        return texts.mapToInt(String::length).max().orElse(0);
    }

    private static String at(List<String> lines, int line) {
        return line < lines.size() ? lines.get(line) : "";
    }

    private static String padded(String text, int width) {
        return text + " ".repeat(width - text.length());
    }
}
