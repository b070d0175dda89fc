package org.benchmetre.page.shown;

import java.util.ArrayList;
import java.util.Comparator;
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

/** A table of a page as it is shown: rows in their order, decimals of each column, units told once, rows that are folded away. */
public final class ShownTable {

    private final ShownCells cells;
    private final Table table;
    private final List<TableRow> rows;
    private final List<Decimals> decimals;
    private final Optional<Unit> one;

    /**
     * Looks at a table.
     *
     * @param cells what cells show
     * @param table the table
     */
    public ShownTable(ShownCells cells, Table table) {
        this.cells = cells;
        this.table = table;
        this.rows = inOrder(table.rows());
        this.decimals = columns()
                .mapToObj(column ->
                        cells.decimals(shown().map(row -> cell(row, column)).toList()))
                .toList();
        this.one = oneUnit();
    }

    /**
     * The rows in the order in which they stand, folded ones too.
     *
     * @return every row once
     */
    public List<TableRow> rows() {
        return rows;
    }

    /**
     * One number of decimals for a column.
     *
     * @param column from 0
     * @return its decimals
     */
    public Decimals decimals(int column) {
        return decimals.get(column);
    }

    private IntStream columns() {
        return IntStream.range(0, table.columns().size());
    }

    private Stream<TableRow> shown() {
        return rows.stream().filter(row -> !isFolded(row));
    }

    /**
     * The title, with the unit where all columns of numbers have the same one.
     *
     * @return words, or the empty text
     */
    public String title() {
        boolean named = one.isEmpty() || names(one.get());
        String title = named ? table.title() : cells.withUnit(table.title(), one.get());
        return title;
    }

    /**
     * The words above a column, with the unit where all its numbers have one that is not told yet.
     *
     * @param column from 0
     * @return words, or the empty text
     */
    public String heading(int column) {
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

    /**
     * Whether a column has numbers.
     *
     * @param column from 0
     * @return false for texts alone
     */
    public boolean isOfNumbers(int column) {
        return shown().map(row -> cell(row, column))
                .anyMatch(cell -> cell != null && cell.line().kind() != Kind.TEXT);
    }

    /**
     * The cell of a row in a column.
     *
     * @param row a row of the table
     * @param column from 0
     * @return null where there is none
     */
    public CellRef cell(TableRow row, int column) {
        if (row.index() < 0) {
            return column < row.cells().size() ? row.cells().get(column) : null;
        }
        Column at = table.columns().get(column);
        return at.cell(table.axis(), row.index());
    }

    /**
     * Whether a row that is left out while it is nothing is nothing: none of its cells has a number but zero.
     *
     * @param row a row of the table
     * @return true for a row that is folded away
     */
    public boolean isFolded(TableRow row) {
        return row.hiddenWhileNothing()
                && columns()
                        .mapToObj(column -> cell(row, column))
                        .noneMatch(cell -> cell != null && cells.isNumber(cell) && cells.number(cell) != 0);
    }

    /** Rows of the axis by size where that decides, the largest first, at the places that such rows have; all others stay. */
    private List<TableRow> inOrder(List<TableRow> given) {
        if (table.largestFirst().isEmpty()) {
            return given;
        }
        List<TableRow> sorted =
                new ArrayList<>(given.stream().filter(row -> row.index() >= 0).toList());
        sorted.sort(Comparator.comparingDouble(row -> -size(row)));
        List<TableRow> all = new ArrayList<>();
        for (TableRow row : given) {
            all.add(row.index() < 0 ? row : sorted.remove(0));
        }
        return all;
    }

    private double size(TableRow row) {
        Optional<CellRef> cell =
                table.largestFirst().map(line -> Column.of("", line).cell(table.axis(), row.index()));
        return cell.filter(cells::isNumber).map(cells::number).map(Math::abs).orElse(0.0);
    }
}
