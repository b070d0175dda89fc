package org.benchmetre.batch;

import java.util.List;
import java.util.stream.IntStream;
import org.benchmetre.page.Decimals;
import org.benchmetre.page.Table;
import org.benchmetre.page.TableRow;
import org.benchmetre.page.Tone;
import org.benchmetre.page.shown.ShownCells;
import org.benchmetre.page.shown.ShownTable;

/** A table of a page under its title: numbers flush right, sums under rules, headings above the rows they head. */
final class TableText {

    private final ShownCells cells;
    private final Table table;
    private final ShownTable looked;
    private final boolean tight;
    private final List<Integer> columns;

    /** A table; a tight one has its title in place of the heading of its first column, and no rule below. */
    TableText(ShownCells cells, Table table, boolean tight) {
        this.cells = cells;
        this.table = table;
        this.looked = new ShownTable(cells, table);
        this.tight = tight;
        this.columns = IntStream.range(0, table.columns().size())
                .filter(column -> column == 0 || isTold(column))
                .boxed()
                .toList();
    }

    /** Whether a column tells anything: words, a reason, or a number that is not zero. A column to be filled in tells nothing. */
    private boolean isTold(int column) {
        return looked.rows().stream()
                .filter(row -> !looked.isFolded(row))
                .map(row -> words(row, column))
                .anyMatch(words -> !words.isEmpty() && !words.equals(Decimals.DASH));
    }

    /** Empty where every row is folded away. */
    @Override
    public String toString() {
        if (looked.isAllFolded()) {
            return "";
        }
        boolean titled = !tight && !looked.title().isEmpty();
        TextTable text = new TextTable(columns.stream().map(this::heading).toList(), 1);
        if (tight) {
            text.tight();
        }
        IntStream.range(0, columns.size())
                .filter(place -> looked.isOfNumbers(columns.get(place)))
                .forEach(text::right);
        String heading = "";
        for (TableRow row : looked.rows()) {
            heading = row.heading().isEmpty() ? heading : row.heading();
            if (looked.isFolded(row)) {
                continue;
            }
            boolean heads = !heading.isEmpty()
                    && (row.tone() != Tone.TOTAL || !row.heading().isEmpty());
            if (heads) {
                text.heading(heading);
            }
            heading = "";
            add(text, row);
        }
        return (titled ? TextTable.wrapped(looked.title()) : "")
                + (text.isEmpty() ? "Nothing.\n" : text.toString())
                + (table.note().isEmpty() ? "" : TextTable.wrapped(table.note()));
    }

    private void add(TextTable text, TableRow row) {
        List<String> words = columns.stream().map(column -> words(row, column)).toList();
        if (row.tone() == Tone.TOTAL) {
            text.total(words);
        } else {
            text.row(words);
        }
    }

    private String heading(int column) {
        return tight && column == 0 && !looked.title().isEmpty() ? looked.title() : looked.heading(column);
    }

    private String words(TableRow row, int column) {
        boolean named = column == 0 && !row.label().isEmpty();
        return named ? row.label() : cells.shown(looked.cell(row, column), looked.decimals(row, column));
    }
}
