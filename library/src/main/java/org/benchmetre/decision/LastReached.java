package org.benchmetre.decision;

import java.util.ArrayList;
import java.util.List;
import org.benchmetre.budget.Budget;
import org.benchmetre.budget.CellRef;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.Search;
import org.benchmetre.budget.Solved;
import org.benchmetre.budget.entry.Numbers;
import org.benchmetre.budget.run.Figures;

/**
 * Row by row the last value of an entry before a figure of that row first falls below its target.
 *
 * @param entry the entry, along a table
 * @param keys keys of the table; a row without one stays empty
 * @param figure what is to reach the target, along the table
 * @param target one figure of the same unit
 * @param least least value looked at, in the unit of the entry
 * @param most greatest value looked at
 */
public record LastReached(Line entry, Line keys, Line figure, Line target, double least, double most)
        implements Search {

    @Override
    public List<Line> reads() {
        return List.of(keys, figure, target);
    }

    @Override
    public List<Solved> find(Budget budget) {
        Figures figures = Figures.of(budget);
        List<Solved> all = new ArrayList<>();
        for (int row = 0; row < entry.size(); row++) {
            all.add(figures.text(keys, row).isEmpty() ? Solved.none("") : last(budget, row));
        }
        return all;
    }

    private Solved last(Budget budget, int row) {
        Difference difference = Difference.between(new CellRef(target, 0), new CellRef(figure, row));
        Found found = BreakEven.of(budget, new CellRef(entry, row), difference).between(least, most);
        if (found.answer() instanceof Answer.None none && none.lesser() == Lesser.LEFT) {
            return Solved.none("over " + Numbers.plain(most) + " " + entry.unit());
        }
        List<Crossing> crossings = found.crossings();
        if (crossings.isEmpty() || crossings.get(0).lesserBelow() != Lesser.LEFT) {
            return Solved.none("none meets it");
        }
        Crossing first = crossings.get(0);
        return Solved.number(first instanceof Crossing.Jump jump ? jump.below() : first.first());
    }
}
