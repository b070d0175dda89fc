package org.benchmetre.budget.rule;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.Refused;
import org.benchmetre.budget.Rule;
import org.benchmetre.budget.entry.Given;

/**
 * No text stands twice in a column.
 *
 * @param line a column of keys
 */
public record OnceEach(Line line) implements Rule {

    @Override
    public Set<Line> lines() {
        return Set.of(line);
    }

    @Override
    public List<Refused> broken(Values values) {
        Map<String, Integer> first = new HashMap<>();
        List<Refused> found = new ArrayList<>();
        for (int cell = 0; cell < line.size(); cell++) {
            Given given = values.of(line).get(cell);
            Integer before = given.filled() ? first.putIfAbsent(given.text(), cell) : null;
            if (before != null) {
                String what = Breach.shown(given, "") + ", which " + line.address(before) + " has already";
                found.add(Breach.of(line, cell, given, what, "each key once"));
            }
        }
        return found;
    }
}
