package org.benchmetre.batch;

import java.util.ArrayList;
import java.util.List;
import org.benchmetre.budget.CellRef;
import org.benchmetre.budget.Kind;
import org.benchmetre.budget.entry.Quoted;
import org.benchmetre.page.Levers;

/** Levers in two columns side by side, read down the first and then down the second: label, value, unit. */
final class LeverText {

    private static final int GAP = 4;
    private static final int HALF = (TextTable.WIDTH - GAP) / 2;
    private static final int WIDEST_UNIT = 12;
    private static final int NARROWEST_LABEL = 12;

    /** A lever in words. */
    private record Lever(String label, String value, String unit, boolean isText) {}

    private final List<Lever> levers;

    LeverText(EntryText entries, Levers block) {
        this.levers = block.entries().stream()
                .map(line -> new CellRef(line, 0))
                .map(cell -> new Lever(
                        Quoted.visible(cell.line().label()),
                        Quoted.visible(entries.value(cell)),
                        cell.line().kind() == Kind.TEXT ? "" : entries.unit(cell),
                        cell.line().kind() == Kind.TEXT))
                .toList();
    }

    @Override
    public String toString() {
        int rows = (levers.size() + 1) / 2;
        List<String> first = column(levers.subList(0, rows));
        List<String> second = column(levers.subList(rows, levers.size()));
        StringBuilder text = new StringBuilder();
        for (int i = 0; i < Math.max(first.size(), second.size()); i++) {
            String left = i < first.size() ? first.get(i) : "";
            String right = i < second.size() ? second.get(i) : "";
            String padded = left + " ".repeat(HALF + GAP - left.length()) + right;
            text.append(padded.stripTrailing()).append('\n');
        }
        return text.toString();
    }

    /** Lines of at most half a page; numbers end in one column, their units follow, choices end at the right edge. */
    private static List<String> column(List<Lever> levers) {
        int units = levers.stream()
                .mapToInt(lever -> lever.unit().length())
                .filter(length -> length <= WIDEST_UNIT)
                .max()
                .orElse(0);
        return levers.stream().flatMap(lever -> lines(lever, units).stream()).toList();
    }

    private static List<String> lines(Lever lever, int units) {
        int behind = lever.isText() || units == 0
                ? 0
                : Math.max(0, units - lever.unit().length());
        String unit = lever.unit().isEmpty() ? "" : " " + lever.unit();
        boolean inColumn = !lever.isText() && units > 0 && unit.isEmpty();
        String value = lever.value() + unit + " ".repeat(behind + (inColumn ? 1 : 0));
        int room = HALF - 2 - value.length();
        if (room < NARROWEST_LABEL) {
            return TextTable.lines(lever.label() + ": " + value.strip(), HALF);
        }
        List<String> label = TextTable.lines(lever.label(), room);
        String first = label.get(0) + " ".repeat(HALF - label.get(0).length() - value.length()) + value;
        List<String> all = new ArrayList<>(label);
        all.set(0, first);
        return all;
    }
}
