package org.benchmetre.review;

import java.util.ArrayList;
import java.util.List;
import org.benchmetre.budget.Axis;
import org.benchmetre.budget.Budget;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.Position;
import org.benchmetre.budget.run.Figures;
import org.benchmetre.scenario.Place;
import org.benchmetre.scenario.Remark;

/**
 * The warnings that the figures themselves give: every cell of a warning line that is not empty.
 *
 * @param figures a budget, computed
 */
public record Watch(Figures figures) {

    /**
     * All that is wrong now.
     *
     * @return in the order of the lines and of their cells, each with the names of the rows it stands in
     */
    public List<Remark> remarks() {
        List<Remark> found = new ArrayList<>();
        for (Line line : figures.budget().warnings()) {
            for (int cell = 0; cell < line.size(); cell++) {
                String text = figures.text(line, cell);
                if (!text.isEmpty()) {
                    found.add(new Remark(Place.wholeFile(line.label() + rows(line, cell)), text));
                }
            }
        }
        return found;
    }

    /** The names of the rows a cell stands in, as in {@code (Drip tape)}. */
    private String rows(Line line, int cell) {
        Budget budget = figures.budget();
        Position position = line.positionOf(cell);
        List<String> names = new ArrayList<>();
        for (Axis axis : line.axes()) {
            int row = position.on(axis);
            names.add(budget.rowName(axis)
                    .map(name -> figures.text(name, row))
                    .orElse(axis.keys().get(row)));
        }
        return names.isEmpty() ? "" : " (" + String.join(", ", names) + ")";
    }
}
