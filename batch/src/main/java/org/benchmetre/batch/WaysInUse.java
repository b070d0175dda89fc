package org.benchmetre.batch;

import java.util.ArrayList;
import java.util.List;
import org.benchmetre.budget.Axis;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.run.Figures;

/** The irrigation systems that are in use, the chosen one first; spare rows are left out. */
final class WaysInUse {

    private final Figures figures;
    private final Line keys;

    WaysInUse(Figures figures) {
        this.figures = figures;
        this.keys = figures.budget().line("way_key");
    }

    Axis axis() {
        return keys.axes().get(0);
    }

    List<Integer> rows() {
        List<Integer> found = new ArrayList<>();
        for (int row = 0; row < keys.size(); row++) {
            if (isChosen(row)) {
                found.add(0, row);
            } else if (!figures.text(keys, row).isEmpty()) {
                found.add(row);
            }
        }
        return found;
    }

    boolean isChosen(int row) {
        return figures.text(keys, row).equalsIgnoreCase(figures.text("irrigation_choice"));
    }

    /** The label of a way, marked when it is the chosen one. */
    String heading(int row) {
        return figures.text(figures.budget().line("way_label"), row) + (isChosen(row) ? " (chosen)" : "");
    }
}
