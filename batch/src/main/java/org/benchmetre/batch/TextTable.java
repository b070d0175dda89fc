package org.benchmetre.batch;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.benchmetre.budget.entry.Quoted;

/**
 * A table in plain text whose columns line up. No line is longer than {@link #WIDTH}: long cells go on in the next line, and columns
 * that do not fit follow in a further table that repeats the first column. Nothing is cut off. Lengths are counted in characters as
 * Java has them, so that letters of double width may stand out.
 */
final class TextTable {

    static final int WIDTH = 100;

    private static final String GAP = "  ";
    private static final int WIDEST = 40;
    private static final int WIDEST_NUMBER = 14;
    private static final int NARROWEST = 20;

    private final List<String> header;
    private final int repeated;
    private final Set<Integer> right = new HashSet<>();
    private final List<Row> rows = new ArrayList<>();
    private boolean tight;

    /** Cells beside each other, or a heading over all columns. */
    private record Row(List<String> cells, boolean ruled, boolean heading) {}

    /**
     * An empty table.
     *
     * @param header headings of the columns; empty for none
     * @param repeated how many columns stand at the left of every part when the table does not fit beside itself
     */
    TextTable(List<String> header, int repeated) {
        this.header = visible(header);
        this.repeated = repeated;
    }

    /** Sets columns flush right. */
    TextTable right(int... columns) {
        IntStream.of(columns).forEach(right::add);
        return this;
    }

    /** Has no rule under its headings, each of which stands in one line where there is room for that. */
    TextTable tight() {
        tight = true;
        return this;
    }

    TextTable row(List<String> cells) {
        return add(cells, false, false);
    }

    /** A row under a rule, with what follows it. */
    TextTable total(List<String> cells) {
        return add(cells, true, false);
    }

    /** Words over all columns, above the rows that follow. */
    TextTable heading(String words) {
        return add(List.of(words), false, true);
    }

    /** Whether there is no row yet. */
    boolean isEmpty() {
        return rows.isEmpty();
    }

    private TextTable add(List<String> cells, boolean ruled, boolean heading) {
        rows.add(new Row(visible(cells), ruled, heading));
        return this;
    }

    /** A text broken into lines that fit, each ending in a line feed. */
    static String wrapped(String text) {
        return String.join("\n", lines(visible(text), WIDTH)) + "\n";
    }

    @Override
    public String toString() {
        List<Integer> widths = widths();
        StringBuilder text = new StringBuilder();
        for (List<Integer> part : parts(widths)) {
            text.append(text.isEmpty() ? "" : "\n");
            appendPart(text, part, widths);
        }
        return text.toString();
    }

    private void appendPart(StringBuilder text, List<Integer> part, List<Integer> widths) {
        if (!header.isEmpty()) {
            append(text, header, part, widths);
            if (!tight) {
                appendRule(text, part, widths);
            }
        }
        for (Row row : rows) {
            boolean first = row == rows.get(0) && !header.isEmpty();
            if (row.ruled() && !first) {
                appendRule(text, part, widths);
            }
            if (row.heading()) {
                lines(row.cells().get(0), WIDTH)
                        .forEach(line -> text.append(line).append('\n'));
            } else {
                append(text, row.cells(), part, widths);
            }
        }
    }

    private List<Integer> widths() {
        int columns = cells().mapToInt(List::size).max().orElse(0);
        List<Integer> all =
                IntStream.range(0, Math.max(columns, header.size())).boxed().toList();
        List<Integer> wanted = all.stream().map(this::width).toList();
        List<Integer> whole = all.stream()
                .map(column -> Math.max(wanted.get(column), cell(header, column).length()))
                .toList();
        return tight && length(all, whole) <= WIDTH ? whole : narrowed(wanted).orElse(wanted);
    }

    /** Narrows the widest texts until the table fits; empty when it would still not. */
    private Optional<List<Integer>> narrowed(List<Integer> wanted) {
        List<Integer> widths = new ArrayList<>(wanted);
        List<Integer> all = IntStream.range(0, widths.size()).boxed().toList();
        while (length(all, widths) > WIDTH) {
            Optional<Integer> widest = all.stream()
                    .filter(column -> widths.get(column) > narrowest(column))
                    .max(Comparator.comparing((Integer column) -> isHeadingWide(column, widths.get(column)))
                            .thenComparing(column -> widths.get(column)));
            if (widest.isEmpty()) {
                return Optional.empty();
            }
            widths.set(widest.get(), widths.get(widest.get()) - 1);
        }
        return Optional.of(widths);
    }

    /** Whether a column of numbers is wide for its heading alone; such are narrowed first. */
    private boolean isHeadingWide(int column, int width) {
        return right.contains(column) && width <= WIDEST_NUMBER;
    }

    /** Numbers stay whole; texts flush right and headings above numbers may be broken between words, before other texts are. */
    private int narrowest(int column) {
        if (!right.contains(column)) {
            return NARROWEST;
        }
        int inCells =
                cells().mapToInt(row -> longestWord(cell(row, column))).max().orElse(0);
        return Math.max(inCells, Math.min(longestWord(cell(header, column)), WIDEST_NUMBER));
    }

    private static int longestWord(String text) {
        return Stream.of(text.split(" ")).mapToInt(String::length).max().orElse(0);
    }

    private Stream<List<String>> cells() {
        return rows.stream().filter(row -> !row.heading()).map(Row::cells);
    }

    private int width(int column) {
        int widest = cells().mapToInt(row -> cell(row, column).length()).max().orElse(0);
        int heading = cell(header, column).length();
        return right.contains(column)
                ? Math.max(Math.min(widest, WIDEST), Math.min(heading, WIDEST_NUMBER))
                : Math.min(WIDEST, Math.max(widest, heading));
    }

    /** Columns that stand beside one another, part by part. */
    private List<List<Integer>> parts(List<Integer> widths) {
        List<Integer> first =
                IntStream.range(0, Math.min(repeated, widths.size())).boxed().toList();
        List<List<Integer>> parts = new ArrayList<>();
        List<Integer> part = new ArrayList<>(first);
        for (int column = first.size(); column < widths.size(); column++) {
            if (length(part, widths) + GAP.length() + widths.get(column) > WIDTH && part.size() > first.size()) {
                parts.add(part);
                part = new ArrayList<>(first);
            }
            part.add(column);
        }
        parts.add(part);
        return parts;
    }

    private static int length(List<Integer> part, List<Integer> widths) {
        return part.stream().mapToInt(widths::get).sum() + GAP.length() * Math.max(0, part.size() - 1);
    }

    private static void appendRule(StringBuilder text, List<Integer> part, List<Integer> widths) {
        text.append("-".repeat(length(part, widths))).append('\n');
    }

    private void append(StringBuilder text, List<String> row, List<Integer> part, List<Integer> widths) {
        List<List<String>> cells = part.stream()
                .map(column -> lines(cell(row, column), widths.get(column)))
                .toList();
        int height = cells.stream().mapToInt(List::size).max().orElse(1);
        for (int line = 0; line < height; line++) {
            StringBuilder printed = new StringBuilder();
            for (int i = 0; i < part.size(); i++) {
                String piece = line < cells.get(i).size() ? cells.get(i).get(line) : "";
                String room = " ".repeat(Math.max(0, widths.get(part.get(i)) - piece.length()));
                printed.append(i == 0 ? "" : GAP).append(right.contains(part.get(i)) ? room + piece : piece + room);
            }
            text.append(printed.toString().stripTrailing()).append('\n');
        }
    }

    private static List<String> visible(List<String> cells) {
        return cells.stream().map(TextTable::visible).toList();
    }

    private static String visible(String text) {
        return Quoted.visible(text.replace('\n', ' ').replace('\t', ' '));
    }

    private static String cell(List<String> row, int column) {
        return column < row.size() ? row.get(column) : "";
    }

    static List<String> lines(String text, int width) {
        if (text.length() <= width) {
            return List.of(text);
        }
        List<String> lines = new ArrayList<>();
        String rest = text.strip();
        while (rest.length() > width) {
            int end = breakAt(rest, width);
            lines.add(rest.substring(0, end).stripTrailing());
            rest = rest.substring(end).stripLeading();
        }
        lines.add(rest);
        return Collections.unmodifiableList(lines);
    }

    private static int breakAt(String text, int width) {
        int space = text.lastIndexOf(' ', width);
        int joint = 1 + Math.max(text.lastIndexOf('_', width - 1), text.lastIndexOf('-', width - 1));
        return space > 0 ? space : joint > 0 ? joint : width;
    }
}
