package org.benchmetre.batch;

import java.util.List;
import java.util.stream.IntStream;
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

    TableText(ShownCells cells, Table table) {
        this.cells = cells;
        this.table = table;
        this.looked = new ShownTable(cells, table);
    }

    @Override
    public String toString() {
        TextTable text = new TextTable(columns().mapToObj(looked::heading).toList(), 1);
        columns().filter(looked::isOfNumbers).forEach(text::right);
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
        return (looked.title().isEmpty() ? "" : TextTable.wrapped(looked.title()))
                + (text.isEmpty() ? "Nothing.\n" : text.toString())
                + (table.note().isEmpty() ? "" : TextTable.wrapped(table.note()));
    }

    private void add(TextTable text, TableRow row) {
        List<String> words = columns().mapToObj(column -> words(row, column)).toList();
        if (row.tone() == Tone.TOTAL) {
            text.total(words);
        } else {
            text.row(words);
        }
    }

    private IntStream columns() {
        return IntStream.range(0, table.columns().size());
    }

    private String words(TableRow row, int column) {
        boolean named = column == 0 && !row.label().isEmpty();
        return named ? row.label() : cells.shown(looked.cell(row, column), looked.decimals(row, column));
    }
}
