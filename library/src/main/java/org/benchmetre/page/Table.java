package org.benchmetre.page;

import java.util.List;
import java.util.Optional;
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
 * @param bySize what decides the order of the rows of the axis, as written; empty for the order given
 * @param note a sentence below, or the empty text
 * @param product columns of which two multiplied give the third to the printed digits, if any do
 */
public record Table(
        String title,
        Axis axis,
        List<Column> columns,
        List<TableRow> rows,
        Optional<BySize> bySize,
        String note,
        Optional<Product> product)
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
                Optional.empty(),
                "",
                Optional.empty());
    }

    /**
     * The same table with chosen rows.
     *
     * @param chosen rows in order
     * @return the table
     */
    public Table rows(List<TableRow> chosen) {
        return new Table(title, axis, columns, chosen, bySize, note, product);
    }

    /**
     * The same table, its rows in the order of a line as written, the largest first.
     *
     * @param line a number line along the axis
     * @return the table
     */
    public Table largestFirst(Line line) {
        return new Table(title, axis, columns, rows, Optional.of(new BySize(line, axis.size())), note, product);
    }

    /**
     * The same table with the first few of its rows by size.
     *
     * @param rowsShown how many rows of the axis
     * @return the table
     */
    public Table most(int rowsShown) {
        Optional<BySize> fewer = bySize.map(by -> new BySize(by.line(), rowsShown));
        return new Table(title, axis, columns, rows, fewer, note, product);
    }

    /**
     * The same table with a sentence below.
     *
     * @param words a sentence
     * @return the table
     */
    public Table note(String words) {
        return new Table(title, axis, columns, rows, bySize, words, product);
    }

    /**
     * The same table, in each row of whose axis quantity times price is the value to the printed digits.
     *
     * @param law three of the table's columns
     * @return the table
     */
    public Table product(Product law) {
        return new Table(title, axis, columns, rows, bySize, note, Optional.of(law));
    }

    /**
     * The cells that say whether a row is nothing. Of a product they leave out quantity and price, since a quantity that has no price
     * is nothing either.
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
                .filter(column -> column.line().kind() == Kind.NUMBER && !isFactor(column))
                .map(column -> column.cell(axis, row.index()))
                .toList();
    }

    private boolean isFactor(Column column) {
        return product.filter(law -> column.equals(law.quantity()) || column.equals(law.price()))
                .isPresent();
    }

    @Override
    public <R> R show(BlockVisitor<R> visitor) {
        return visitor.table(this);
    }
}
