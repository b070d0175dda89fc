package org.benchmetre.workbook;

import org.benchmetre.budget.Axis;
import org.benchmetre.budget.CellRef;
import org.benchmetre.budget.Line;

/**
 * One cell of a page.
 *
 * @param row from 0
 * @param span columns it runs over
 * @param content what stands in it
 * @param role what it is for
 * @param format number format
 * @param link the line whose workings its words lead to, or null
 */
record PageCell(int row, Span span, Content content, Look.Role role, String format, Line link) {

    /**
     * Columns beside each other.
     *
     * @param first from 0
     * @param last the last of them
     */
    record Span(int first, int last) {}

    /** What stands in a cell of a page. */
    sealed interface Content permits Plain, Shown, Repeated, Typed, Named, Bound {}

    /**
     * Words.
     *
     * @param text any text
     */
    record Plain(String text) implements Content {}

    /**
     * A figure by reference.
     *
     * @param ref the cell of a line
     */
    record Shown(CellRef ref) implements Content {}

    /**
     * An entry that is typed elsewhere, as it is typed there.
     *
     * @param ref the cell of an entry
     */
    record Repeated(CellRef ref) implements Content {}

    /**
     * An entry that has its home here.
     *
     * @param ref the cell of an entry
     */
    record Typed(CellRef ref) implements Content {}

    /**
     * The name of a row or period.
     *
     * @param axis the axis
     * @param index from 0
     */
    record Named(Axis axis, int index) implements Content {}

    /**
     * A number that stands alone, such as a usual bound.
     *
     * @param number finite
     */
    record Bound(double number) implements Content {}

    static PageCell of(int row, int column, Content content, Look.Role role) {
        return new PageCell(row, new Span(column, column), content, role, Look.GENERAL, null);
    }

    int column() {
        return span.first();
    }

    int last() {
        return span.last();
    }

    /** The same over several columns. */
    PageCell until(int end) {
        return new PageCell(row, new Span(span.first(), end), content, role, format, link);
    }

    /** The same with a number format. */
    PageCell as(String numbers) {
        return new PageCell(row, span, content, role, numbers, link);
    }

    /** The same, leading to the workings of a line. */
    PageCell to(Line line) {
        return new PageCell(row, span, content, role, format, line);
    }
}
