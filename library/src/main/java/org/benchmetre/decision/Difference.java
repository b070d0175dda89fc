package org.benchmetre.decision;

import java.util.List;
import java.util.stream.Stream;
import org.benchmetre.budget.CellRef;
import org.benchmetre.budget.FormulaException;
import org.benchmetre.budget.Kind;
import org.benchmetre.budget.Line;

/**
 * What is sought to be zero: the difference of two cells of one unit, or one cell that is a difference already.
 *
 * @param left the cell on the left
 * @param right the cell that is taken from it, null for zero
 */
public record Difference(CellRef left, CellRef right) {

    /** Refuses what is no number, and two units. */
    public Difference {
        for (CellRef cell : cells(left, right)) {
            Kind kind = cell.line().kind();
            if (kind != Kind.NUMBER && kind != Kind.OPTIONAL) {
                throw new FormulaException("A difference is of numbers, but " + cell + " is a " + kind + ".");
            }
        }
        if (right != null && !left.line().unit().equals(right.line().unit())) {
            throw new FormulaException("A difference is of one unit, but " + left + " is in "
                    + left.line().unit() + " and " + right + " in "
                    + right.line().unit() + ".");
        }
    }

    /**
     * The difference of two cells.
     *
     * @param left one cell
     * @param right another of the same unit
     * @return left less right
     * @throws FormulaException when they are not numbers of one unit
     */
    public static Difference between(CellRef left, CellRef right) {
        return new Difference(left, right);
    }

    /**
     * One cell as a difference from zero.
     *
     * @param cell a cell that is a difference
     * @return the cell less zero
     * @throws FormulaException when it is not a number
     */
    public static Difference of(CellRef cell) {
        return new Difference(cell, null);
    }

    List<CellRef> cells() {
        return cells(left, right);
    }

    List<Line> lines() {
        return cells().stream().map(CellRef::line).distinct().toList();
    }

    private static List<CellRef> cells(CellRef left, CellRef right) {
        return Stream.concat(Stream.of(left), Stream.ofNullable(right)).toList();
    }
}
