package org.benchmetre.budget.run;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.benchmetre.budget.Budget;
import org.benchmetre.budget.CellRef;
import org.benchmetre.budget.FormulaException;
import org.benchmetre.budget.Kind;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.Solved;

/** What the searches of a budget find. Each runs when what it fills is first asked for, and once. */
final class SearchResults {

    /** No search has run. */
    static final SearchResults NOTHING = new SearchResults(null);

    private static final Solved NOT_SEARCHED = Solved.none("not searched");

    private final Budget budget;
    private final Map<Line, List<Solved>> found = new HashMap<>();

    private SearchResults(Budget budget) {
        this.budget = budget;
    }

    /** The searches of a budget, on its entries as they stand. */
    static SearchResults of(Budget budget) {
        return budget.here(SearchResults.class, () -> new SearchResults(budget));
    }

    private static List<Solved> checked(Line line, List<Solved> found) {
        if (found.size() != line.size()) {
            throw new FormulaException("Line " + line + " has " + line.size() + " cells, but its search found "
                    + found.size() + " values.");
        }
        for (Solved each : found) {
            if (line.kind() == Kind.NUMBER && !each.hasNumber()) {
                throw new FormulaException(
                        "Line " + line + " takes numbers alone, but its search found '" + each.reason() + "'.");
            }
            if (line.kind() == Kind.TEXT && each.reason().isEmpty()) {
                throw new FormulaException("Line " + line + " takes words alone, but its search found none.");
            }
        }
        return List.copyOf(found);
    }

    /** What stands in a cell that a search fills. */
    synchronized Solved in(CellRef cell) {
        if (budget == null) {
            return NOT_SEARCHED;
        }
        List<Solved> cells = found.get(cell.line());
        if (cells == null) {
            cells = checked(cell.line(), budget.search(cell.line()).find(budget));
            found.put(cell.line(), cells);
        }
        return cells.get(cell.cell());
    }
}
