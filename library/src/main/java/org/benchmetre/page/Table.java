package org.benchmetre.page;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.Iterator;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;
import org.benchmetre.budget.Axis;
import org.benchmetre.budget.CellRef;
import org.benchmetre.budget.Kind;
import org.benchmetre.budget.Line;

/**
 * One row for each row of an axis, or for those that are chosen, in the order given.
 *
 * @param title words above
 * @param axis the rows
 * @param columns the first names the rows
 * @param rows which rows, in order
 * @param rules order and digits of all rows
 * @param note a sentence below, or the empty text
 */
public record Table(String title, Axis axis, List<Column> columns, List<TableRow> rows, TableRules rules, String note)
        implements Block {

    /** Keeps the lists as they are. */
    public Table {
        columns = List.copyOf(columns);
        rows = List.copyOf(rows);
    }

    /**
     * All filled rows in the order of the axis.
     *
     * @param title words above
     * @param axis the rows
     * @param columns the first names the rows
     * @return the table
     */
    public static Table of(String title, Axis axis, Column... columns) {
        return new Table(
                title,
                axis,
                List.of(columns),
                IntStream.range(0, axis.filled()).mapToObj(TableRow::at).toList(),
                TableRules.NONE,
                "");
    }

    /**
     * The same table with chosen rows.
     *
     * @param chosen rows in order
     * @return the table
     */
    public Table rows(List<TableRow> chosen) {
        return new Table(title, axis, columns, chosen, rules, note);
    }

    /**
     * The same table, its rows in the order of a line as written, the largest first.
     *
     * @param line a number line along the axis
     * @return the table
     */
    public Table largestFirst(Line line) {
        return new Table(title, axis, columns, rows, rules.bySize(new BySize(line, axis.size())), note);
    }

    /**
     * The same table with the first few of its rows by size.
     *
     * @param rowsShown how many rows of the axis
     * @return the table
     */
    public Table most(int rowsShown) {
        return bySize().map(by ->
                        new Table(title, axis, columns, rows, rules.bySize(new BySize(by.line(), rowsShown)), note))
                .orElse(this);
    }

    /**
     * The rows as they stand: those of the axis by size where that decides, at the places that such rows have; all others stay.
     *
     * @param number what a cell shows; of two sizes the sign does not count
     * @return the rows shown
     */
    public List<TableRow> ordered(ToDoubleFunction<CellRef> number) {
        if (bySize().isEmpty()) {
            return rows;
        }
        BySize by = bySize().get();
        Column size = Column.of("", by.line());
        Iterator<TableRow> sorted = rows.stream()
                .filter(row -> row.index() >= 0)
                .sorted(Comparator.comparingDouble(
                        row -> -Math.abs(number.applyAsDouble(size.cell(axis, row.index())))))
                .limit(by.most())
                .iterator();
        List<TableRow> all = new ArrayList<>();
        for (TableRow row : rows) {
            if (row.index() < 0) {
                all.add(row);
            } else if (sorted.hasNext()) {
                all.add(sorted.next());
            }
        }
        return all;
    }

    /**
     * The same table with a sentence below.
     *
     * @param words a sentence
     * @return the table
     */
    public Table note(String words) {
        return new Table(title, axis, columns, rows, rules, words);
    }

    /**
     * The same table, in each row of whose axis quantity times price is the value to the printed digits.
     *
     * @param law three of the table's columns
     * @return the table
     */
    public Table product(Product law) {
        return new Table(title, axis, columns, rows, rules.product(law), note);
    }

    /**
     * The same table, a row of whose axis is nothing where some lines are zero, whatever else it tells.
     *
     * @param lines of the table's columns
     * @return the table
     */
    public Table nothingWithout(Line... lines) {
        return new Table(title, axis, columns, rows, rules.decisive(List.of(lines)), note);
    }

    /**
     * The same table, whose plain numbers are ratios: two decimals tell one.
     *
     * @return the table
     */
    public Table ofRatios() {
        return new Table(title, axis, columns, rows, rules.ofRatios(), note);
    }

    /**
     * What decides the order of the rows of the axis.
     *
     * @return empty for the order given
     */
    public Optional<BySize> bySize() {
        return rules.bySize();
    }

    /**
     * Columns of which two multiplied give the third to the printed digits.
     *
     * @return empty where there are none
     */
    public Optional<Product> product() {
        return rules.product();
    }

    /**
     * The cells that say whether a row is nothing. Of a product they leave out quantity and price, since a quantity that has no price
     * is nothing either. Where there are numbers that may be missing, they alone decide.
     *
     * @param row of this table
     * @return numbers, which are all zero where the row is nothing
     */
    public List<CellRef> decisive(TableRow row) {
        if (row.index() < 0) {
            return row.cells().stream()
                    .filter(cell -> cell != null && cell.line().kind() == Kind.NUMBER)
                    .toList();
        }
        return columns.stream()
                .filter(this::decides)
                .map(column -> column.cell(axis, row.index()))
                .toList();
    }

    private boolean decides(Column column) {
        return rules.decisive().isEmpty()
                ? column.line().kind() == Kind.NUMBER && !isFactor(column)
                : rules.decisive().contains(column.line());
    }

    private boolean isFactor(Column column) {
        return product()
                .filter(law -> column.equals(law.quantity()) || column.equals(law.price()))
                .isPresent();
    }

    @Override
    public <R> R show(BlockVisitor<R> visitor) {
        return visitor.table(this);
    }
}
