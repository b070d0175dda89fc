package org.benchmetre;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.benchmetre.budget.Budget;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.Solved;
import org.benchmetre.budget.run.Figures;

/** Fills the figures of a farm that no formula gives: values at which the recommended way flips, and the longest run of each way. */
final class SolvedFigures {

    private final Budget budget;
    private final Figures figures;

    private SolvedFigures(Figures figures) {
        this.budget = figures.budget();
        this.figures = figures;
    }

    /**
     * The same budget with its solved figures found on the entries as they stand.
     *
     * @param figures the farm, computed
     * @return a budget; unlike the one given only in its solved figures
     */
    static Budget filled(Figures figures) {
        SolvedFigures all = new SolvedFigures(figures);
        Map<Line, List<Solved>> found = new HashMap<>();
        all.flips(found);
        found.put(all.budget.line("way_longest_run"), all.longestRuns());
        all.copy("balance_first", found);
        all.copy("balance_next", found);
        return all.budget.filled(found);
    }

    private void copy(String line, Map<Line, List<Solved>> found) {
        found.put(budget.line(line + "_filled"), List.of(Solved.number(figures.number(line))));
    }

    private void flips(Map<Line, List<Solved>> found) {
        FlipSearch search = new FlipSearch(figures);
        List<Solved> values = new ArrayList<>();
        List<Solved> ways = new ArrayList<>();
        for (int row = 0; row < budget.line("flip_value").size(); row++) {
            FlipSearch.Flip flip = search.row(row);
            values.add(flip.value());
            ways.add(Solved.none(flip.to()));
        }
        found.put(budget.line("flip_value"), values);
        found.put(budget.line("flip_to"), ways);
    }

    private List<Solved> longestRuns() {
        LongestRunSearch search = new LongestRunSearch(figures);
        List<Solved> found = new ArrayList<>();
        for (int way = 0; way < budget.line("way_longest_run").size(); way++) {
            found.add(search.of(way));
        }
        return found;
    }
}
