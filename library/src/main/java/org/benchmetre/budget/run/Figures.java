package org.benchmetre.budget.run;

import java.util.List;
import java.util.Map;
import java.util.Set;
import org.benchmetre.budget.Budget;
import org.benchmetre.budget.FormulaException;
import org.benchmetre.budget.Kind;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.entry.Given;

/**
 * The values of all lines of a budget, for the one case that its entries make. A search runs once, when a cell that follows from it
 * is first asked for; all else is known at once. Its values never change; for several threads.
 */
public final class Figures {

    private static final long ALL = -1;

    private final Budget budget;
    private final Reach reach;
    private final Whole plain;
    private final SearchResults elsewhere;
    private Whole searched;
    private long searches;

    private Figures(Budget budget, SearchResults elsewhere) {
        this.budget = budget;
        this.reach = Reach.of(budget);
        this.plain = Whole.of(budget);
        this.elsewhere = elsewhere;
    }

    /**
     * Computes a budget. The formulas are made into a program once; a budget that differs only in its entries uses it again.
     *
     * @param budget the budget
     * @return the value of every cell of every line
     */
    public static Figures of(Budget budget) {
        return new Figures(budget, null);
    }

    /**
     * What a workbook of these figures shows after changes are typed into its entries: every formula follows, and what searches found
     * stays as it was filled.
     *
     * @param changes for each entry line the new value by cell
     * @return figures of the changed budget
     * @throws FormulaException when a line is not an entry of the budget
     */
    public Figures typedOver(Map<Line, Map<Integer, Given>> changes) {
        SearchResults before = elsewhere == null ? SearchResults.of(budget) : elsewhere;
        return new Figures(budget.with(changes), changes.isEmpty() ? elsewhere : before);
    }

    /**
     * On which entries searches ran, in words for a reader.
     *
     * @return <i>as filled on these entries</i>; after {@link #typedOver} <i>as filled on other entries</i>
     */
    public String filledOn() {
        return elsewhere != null ? "as filled on other entries" : "as filled on these entries";
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
        return raw(line, cell) + 0.0;
    }

    private double raw(Line line, int cell) {
        return at(line, cell).value(line, cell);
    }

    private Whole at(Line line, int cell) {
        long behind = reach.behind(line, cell);
        return behind == 0 ? plain : searched(behind);
    }

    /** With the searches asked for first alone, so that one figure does not pay for all; with all of them from the second others on. */
    private synchronized Whole searched(long wanted) {
        if ((wanted & ~searches) != 0) {
            searches = searched == null ? wanted : ALL;
            SearchResults results = elsewhere == null ? SearchResults.of(budget) : elsewhere;
            searched = Whole.of(budget, results, solved -> reach.isAmong(solved, searches));
        }
        return searched;
    }

    /**
     * Whether the searches have run.
     *
     * @return false until a cell that follows from one was asked for
     */
    public synchronized boolean isSearched() {
        return searched != null;
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
        return at(line, cell).text(line, cell);
    }

    /**
     * Whether an optional number has a reason in place of a value.
     *
     * @param line any line
     * @param cell which of its cells, from 0
     * @return true when there is no number
     */
    public boolean hasReason(Line line, int cell) {
        return at(line, cell).hasReason(line, cell);
    }

    /**
     * The cells whose value is not a finite number although all they read is: where the trouble begins, one sentence each. What
     * searches find is always finite or words, so none is run for this.
     *
     * @return empty when every figure is sound
     */
    public List<String> troubles() {
        return new Troubles(budget, plain, Set.of()).all();
    }
}
