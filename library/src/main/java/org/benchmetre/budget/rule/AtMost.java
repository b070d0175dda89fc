package org.benchmetre.budget.rule;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.Refused;
import org.benchmetre.budget.Rule;
import org.benchmetre.budget.entry.Given;

/**
 * A number is at most another one of the same row, where both are filled.
 *
 * @param line the number
 * @param limit the other one, along the same axis and in the same unit
 */
public record AtMost(Line line, Line limit) implements Rule {

    @Override
    public Set<Line> lines() {
        return Set.of(line, limit);
    }

    @Override
    public List<Refused> broken(Values values) {
        List<Refused> found = new ArrayList<>();
        for (int cell = 0; cell < line.size(); cell++) {
            Given given = values.of(line).get(cell);
            Given most = values.of(limit).get(cell);
            if (given.filled() && most.filled() && given.number() > most.number()) {
                String expected = "at most " + limit.label() + ", " + Breach.shown(most, values.currency()) + ",";
                found.add(Breach.of(line, cell, given, Breach.shown(given, values.currency()), expected));
            }
        }
        return found;
    }
}
