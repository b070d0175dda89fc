package org.benchmetre.budget.rule;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.Refused;
import org.benchmetre.budget.Rule;
import org.benchmetre.budget.entry.Given;

/**
 * Where one cell of a row is filled, another must be as well: a price has a year. Spare rows are left alone.
 *
 * @param line must be filled
 * @param with where this one is
 * @param expected what is asked for, in words
 */
public record FilledWith(Line line, Line with, String expected) implements Rule {

    @Override
    public Set<Line> lines() {
        return Set.of(line, with);
    }

    @Override
    public List<Refused> broken(Values values) {
        List<Refused> found = new ArrayList<>();
        for (int cell = 0; cell < line.size(); cell++) {
            Given other = values.of(with).get(cell);
            Given given = values.of(line).get(cell);
            boolean kept = !line.axes().get(0).isSpare(cell);
            if (kept && other.filled() && !given.filled()) {
                found.add(Breach.of(
                        line,
                        cell,
                        Breach.placed(given, other),
                        "nothing",
                        expected + ", since " + with.label() + " is given,"));
            }
        }
        return found;
    }
}
