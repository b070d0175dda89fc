package org.benchmetre.budget.run;

import java.util.List;
import java.util.Set;
import org.benchmetre.budget.Budget;
import org.benchmetre.budget.FormulaException;
import org.benchmetre.budget.Kind;
import org.benchmetre.budget.Line;

/** The values of all lines of a budget, for the one case that its entries make. Immutable. */
public final class Figures {

    private final Budget budget;
    private final Whole whole;

    private Figures(Budget budget, Whole whole) {
        this.budget = budget;
        this.whole = whole;
    }

    /**
     * Computes a budget. The formulas are made into a program once; a budget that differs only in its entries uses it again.
     *
     * @param budget the budget
     * @return the value of every cell of every line
     */
    public static Figures of(Budget budget) {
        return new Figures(budget, Whole.of(budget));
    }

    /**
     * The budget computed.
     *
     * @return the budget
     */
    public Budget budget() {
        return budget;
    }

    /**
     * The value of a single-valued line.
     *
     * @param id identifier
     * @return the number, in the line's unit
     */
    public double number(String id) {
        return number(budget.line(id), 0);
    }

    /**
     * The value of a cell of a line, by its keys.
     *
     * @param id identifier
     * @param keys one key for each axis
     * @return the number, in the line's unit
     * @throws FormulaException when there is no such line or key
     */
    public double number(String id, String... keys) {
        Line line = budget.line(id);
        return number(line, cellOf(line, keys));
    }

    private static int cellOf(Line line, String... keys) {
        if (keys.length != line.axes().size()) {
            throw new FormulaException(
                    "Line " + line + " runs along " + line.axes() + ", but found " + keys.length + " keys.");
        }
        int cell = 0;
        for (int i = 0; i < keys.length; i++) {
            int index = line.axes().get(i).indexOf(keys[i]);
            if (index < 0) {
                throw new FormulaException("Line " + line + " has no row '" + keys[i] + "'.");
            }
            cell = cell * line.axes().get(i).size() + index;
        }
        return cell;
    }

    /**
     * The number in a cell: truths as 1 or 0, an optional number without a value as a NaN.
     *
     * @param line a line that is not a text
     * @param cell which of its cells, from 0
     * @return the number, in the line's unit
     * @throws FormulaException when the line is a text
     */
    public double number(Line line, int cell) {
        if (line.kind() == Kind.TEXT) {
            throw new FormulaException("Line " + line + " is a text, not a number.");
        }
        return whole.value(line, cell) + 0.0;
    }

    /**
     * The text of a single-valued line.
     *
     * @param id identifier
     * @return the text
     */
    public String text(String id) {
        return text(budget.line(id), 0);
    }

    /**
     * What a cell shows: a text, the reason in place of an optional number, or the number with every digit.
     *
     * @param line any line
     * @param cell which of its cells, from 0
     * @return the text
     */
    public String text(Line line, int cell) {
        return whole.text(line, cell);
    }

    /**
     * Whether an optional number has a reason in place of a value.
     *
     * @param line any line
     * @param cell which of its cells, from 0
     * @return true when there is no number
     */
    public boolean hasReason(Line line, int cell) {
        return whole.hasReason(line, cell);
    }

    /**
     * The cells whose value is not a finite number although all they read is: where the trouble begins, one sentence each.
     *
     * @return empty when every figure is sound
     */
    public List<String> troubles() {
        return new Troubles(budget, whole, Set.of()).all();
    }
}
