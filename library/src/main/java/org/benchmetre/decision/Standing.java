package org.benchmetre.decision;

import java.util.List;
import java.util.stream.IntStream;
import org.benchmetre.budget.Budget;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.Search;
import org.benchmetre.budget.Solved;
import org.benchmetre.budget.run.Figures;

/**
 * What a line was when the searches ran. Beside the live line it tells in a workbook whether they are out of date.
 *
 * @param line a line of numbers
 */
public record Standing(Line line) implements Search {

    @Override
    public List<Line> reads() {
        return List.of(line);
    }

    @Override
    public List<Solved> find(Budget budget) {
        Figures figures = Figures.of(budget);
        return IntStream.range(0, line.size())
                .mapToObj(cell -> Solved.number(figures.number(line, cell)))
                .toList();
    }
}
