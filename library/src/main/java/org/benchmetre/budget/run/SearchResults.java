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

/** What the searches of a budget have found. */
final class SearchResults {

    /** No search has run. */
    static final SearchResults NOTHING = new SearchResults(Map.of());

    private static final Solved NOT_SEARCHED = Solved.none("not searched");

    private final Map<Line, List<Solved>> all;

    private SearchResults(Map<Line, List<Solved>> all) {
        this.all = all;
    }

    /** All searches of a budget, run once on its entries as they stand. */
    static SearchResults of(Budget budget) {
        return budget.here(SearchResults.class, () -> {
            Map<Line, List<Solved>> found = new HashMap<>();
            budget.solved()
                    .forEach(line ->
                            found.put(line, checked(line, budget.search(line).find(budget))));
            return new SearchResults(found);
        });
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
    Solved in(CellRef cell) {
        List<Solved> cells = all.get(cell.line());
        return cells == null ? NOT_SEARCHED : cells.get(cell.cell());
    }
}
