package org.benchmetre.page.shown;

import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.benchmetre.budget.Axis;
import org.benchmetre.budget.CellRef;
import org.benchmetre.budget.Kind;
import org.benchmetre.budget.MinorUnit;
import org.benchmetre.budget.unit.Unit;
import org.benchmetre.page.Column;
import org.benchmetre.page.Decimals;
import org.benchmetre.page.PrintedDigits;
import org.benchmetre.page.Product;
import org.benchmetre.page.Table;
import org.benchmetre.page.TableRow;

/** A table of a page as it is shown: rows in their order, decimals of each column, units told once, rows that are folded away. */
public final class ShownTable {

    /** A ratio to two decimals, as lenders tell it: common practice, no source. */
    private static final Decimals RATIO = new Decimals(2, false);

    private static final List<Unit> TIMES = List.of(Unit.parse("mo"), Unit.parse("a"));

    private final ShownCells cells;
    private final Table table;
    private final List<TableRow> rows;
    private final List<Decimals> decimals;
    private final Optional<Unit> one;
    private final int quantity;
    private final int price;
    private final PrintedDigits digits;

    /**
     * Looks at a table.
     *
     * @param cells what cells show
     * @param table the table
     */
    public ShownTable(ShownCells cells, Table table) {
        this.cells = cells;
        this.table = table;
        this.rows = table.ordered(cell -> cells.isNumber(cell) ? cells.number(cell) : 0);
        this.decimals = columns().mapToObj(this::ofColumn).toList();
        this.one = oneUnit();
        Product product = table.product().orElse(null);
        this.quantity = product == null ? -1 : table.columns().indexOf(product.quantity());
        this.price = product == null ? -1 : table.columns().indexOf(product.price());
        this.digits = product == null ? null : digits(product);
    }

    private Decimals ofColumn(int column) {
        boolean ratios = table.rules().ratios() && units(column).equals(List.of(Unit.ONE));
        return ratios
                ? RATIO
                : cells.decimals(shown().map(row -> cell(row, column)).toList());
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
     * The decimals of a cell: one number for its column, but a price that is multiplied prints with as many as the product needs.
     *
     * @param row a row of the table
     * @param column from 0
     * @return its decimals
     */
    public Decimals decimals(TableRow row, int column) {
        boolean multiplied = digits != null && row.index() >= 0;
        if (multiplied && column == quantity) {
            return new Decimals(digits.quantity(), true);
        }
        if (multiplied && column == price) {
            return new Decimals(digits.prices().get(row.index()), true);
        }
        return decimals.get(column);
    }

    private PrintedDigits digits(Product product) {
        Axis axis = table.axis();
        int value = table.columns().indexOf(product.value());
        List<PrintedDigits.Row> factors = IntStream.range(0, axis.size())
                .mapToObj(row -> new PrintedDigits.Row(
                        number(product.quantity().cell(axis, row)),
                        number(product.price().cell(axis, row)),
                        number(product.value().cell(axis, row))))
                .toList();
        int currency = MinorUnit.decimals(cells.figures().budget().currency());
        return PrintedDigits.of(factors, decimals.get(value).count(), currency);
    }

    private double number(CellRef cell) {
        return cells.isNumber(cell) ? cells.number(cell) : Double.NaN;
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
     * The words above a column, with the unit where all its numbers have one that is not told yet. The price of a product is for
     * whatever its row counts and has none.
     *
     * @param column from 0
     * @return words, or the empty text
     */
    public String heading(int column) {
        String words = table.columns().get(column).heading();
        List<Unit> units = units(column);
        boolean wanted = column != price && one.isEmpty() && units.size() == 1 && !names(units.get(0));
        return wanted ? cells.withUnit(words, units.get(0)) : words;
    }

    /** Whether the title tells a unit already: it has its words, or the currency and the unit is of money. */
    private boolean names(Unit unit) {
        String currency = cells.figures().budget().currency();
        List<String> words = List.of(table.title().split("[ ,;:()]+"));
        return words.contains(cells.unit(unit)) || unit.hasMoney() && words.contains(currency);
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

    /** The units of the numbers of a column; where they differ by time alone, as months and their year do, without it. */
    private List<Unit> units(int column) {
        List<Unit> units = shown().map(row -> cell(row, column))
                .filter(cell -> cell != null && cell.line().kind() != Kind.TEXT)
                .map(cell -> cell.line().unit())
                .distinct()
                .toList();
        List<Unit> timeless =
                units.stream().map(ShownTable::timeless).distinct().toList();
        return timeless.size() == 1 && units.size() > 1 ? timeless : units;
    }

    private static Unit timeless(Unit unit) {
        return TIMES.stream()
                .filter(time -> unit.exponentOf(time.toString()) == -1)
                .findFirst()
                .map(unit::times)
                .orElse(unit);
    }

    /**
     * Whether a column has numbers.
     *
     * @param column from 0
     * @return false for texts alone
     */
    public boolean isOfNumbers(int column) {
        return rows.stream()
                .map(row -> cell(row, column))
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
     * Whether no row is shown: then title and headings say nothing either.
     *
     * @return true for a table that is folded away
     */
    public boolean isAllFolded() {
        return !rows.isEmpty() && rows.stream().allMatch(this::isFolded);
    }

    /**
     * Whether a row that is left out while it is nothing is nothing: none of the cells that decide has a number but zero.
     *
     * @param row a row of the table
     * @return true for a row that is folded away
     */
    public boolean isFolded(TableRow row) {
        return row.hiddenWhileNothing()
                && table.decisive(row).stream().noneMatch(cell -> cells.isNumber(cell) && cells.number(cell) != 0);
    }
}
