package org.benchmetre.budget.rule;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.Refused;
import org.benchmetre.budget.Rule;
import org.benchmetre.budget.entry.Given;

/**
 * Cells of one row that are of no use without each other: all are filled, or none.
 *
 * @param all along the same axis
 */
public record FilledTogether(List<Line> all) implements Rule {

    /** Keeps its own copy. */
    public FilledTogether {
        all = List.copyOf(all);
    }

    @Override
    public Set<Line> lines() {
        return new LinkedHashSet<>(all);
    }

    @Override
    public List<Refused> broken(Values values) {
        List<Refused> found = new ArrayList<>();
        for (int row = 0; row < all.get(0).size(); row++) {
            int cell = row;
            List<Line> filled = all.stream()
                    .filter(line -> values.of(line).get(cell).filled())
                    .toList();
            for (Line line : filled.isEmpty() ? List.<Line>of() : all) {
                if (!filled.contains(line)) {
                    Given beside = values.of(filled.get(0)).get(cell);
                    Given at = Breach.placed(values.of(line).get(cell), beside);
                    String expected = "a value, since " + filled.get(0).label() + " is given,";
                    found.add(Breach.of(line, cell, at, "nothing", expected));
                }
            }
        }
        return found;
    }
}
