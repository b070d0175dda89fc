package org.benchmetre.batch;

import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.benchmetre.budget.CellRef;
import org.benchmetre.budget.Kind;
import org.benchmetre.budget.unit.Unit;
import org.benchmetre.page.Column;
import org.benchmetre.page.Decimals;
import org.benchmetre.page.Table;
import org.benchmetre.page.TableRow;
import org.benchmetre.page.Tone;

/** A table of a page under its title: numbers flush right with the same decimals in a column, sums under rules, headings above the rows they head. */
final class TableText {

    private final CellText cells;
    private final Table table;
    private final List<TableRow> rows;
    private final List<Decimals> decimals;
    private final Optional<Unit> one;

    TableText(CellText cells, Table table) {
        this.cells = cells;
        this.table = table;
        this.rows = table.ordered(cell -> cells.isNumber(cell) ? cells.number(cell) : 0);
        this.decimals = columns()
                .mapToObj(column ->
                        cells.decimals(shown().map(row -> cell(row, column)).toList()))
                .toList();
        this.one = oneUnit();
    }

    @Override
    public String toString() {
        TextTable text = new TextTable(columns().mapToObj(this::heading).toList(), 1);
        columns().filter(this::isOfNumbers).forEach(text::right);
        String heading = "";
        for (TableRow row : rows) {
            heading = row.heading().isEmpty() ? heading : row.heading();
            if (isFolded(row)) {
                continue;
            }
            boolean heads = !heading.isEmpty()
                    && (row.tone() != Tone.TOTAL || !row.heading().isEmpty());
            if (heads) {
                text.heading(heading);
            }
            heading = "";
            List<String> words =
                    columns().mapToObj(column -> words(row, column)).toList();
            if (row.tone() == Tone.TOTAL) {
                text.total(words);
            } else {
                text.row(words);
            }
        }
        return title()
                + (text.isEmpty() ? "Nothing.\n" : text.toString())
                + (table.note().isEmpty() ? "" : TextTable.wrapped(table.note()));
    }

    private IntStream columns() {
        return IntStream.range(0, table.columns().size());
    }

    private Stream<TableRow> shown() {
        return rows.stream().filter(row -> !isFolded(row));
    }

    /** The title, with the unit where all columns of numbers have the same one. */
    private String title() {
        boolean named = one.isEmpty() || names(one.get());
        String title = named ? table.title() : cells.withUnit(table.title(), one.get());
        return title.isEmpty() ? "" : TextTable.wrapped(title);
    }

    private String heading(int column) {
        String words = table.columns().get(column).heading();
        List<Unit> units = units(column);
        boolean wanted = one.isEmpty() && units.size() == 1 && !names(units.get(0));
        return wanted ? cells.withUnit(words, units.get(0)) : words;
    }

    /** Whether the title tells a unit already: it has its words, or the currency and the unit is of money. */
    private boolean names(Unit unit) {
        String currency = cells.figures().budget().currency();
        return table.title().contains(cells.unit(unit))
                || unit.hasMoney() && table.title().contains(currency);
    }

    /** The unit of all numbers, where there are several columns of them. */
    private Optional<Unit> oneUnit() {
        List<Integer> numbers = columns().filter(this::isOfNumbers).boxed().toList();
        List<Unit> units = numbers.stream()
                .flatMap(column -> units(column).stream())
                .distinct()
                .toList();
        return numbers.size() > 1 && units.size() == 1 ? Optional.of(units.get(0)) : Optional.empty();
    }

    private List<Unit> units(int column) {
        return shown().map(row -> cell(row, column))
                .filter(cell -> cell != null && cell.line().kind() != Kind.TEXT)
                .map(cell -> cell.line().unit())
                .distinct()
                .toList();
    }

    private boolean isOfNumbers(int column) {
        return shown().map(row -> cell(row, column))
                .anyMatch(cell -> cell != null && cell.line().kind() != Kind.TEXT);
    }

    private String words(TableRow row, int column) {
        CellRef cell = cell(row, column);
        boolean named = column == 0 && !row.label().isEmpty();
        return named ? row.label() : cells.shown(cell, decimals.get(column));
    }

    /** The cell of a row in a column; null where there is none. */
    private CellRef cell(TableRow row, int column) {
        if (row.index() < 0) {
            return column < row.cells().size() ? row.cells().get(column) : null;
        }
        Column at = table.columns().get(column);
        return at.cell(table.axis(), row.index());
    }

    /** Whether a row that is left out while it is nothing is nothing: none of its cells has a number but zero. */
    private boolean isFolded(TableRow row) {
        return row.hiddenWhileNothing()
                && columns()
                        .mapToObj(column -> cell(row, column))
                        .noneMatch(cell -> cell != null && cells.isNumber(cell) && cells.number(cell) != 0);
    }
}
