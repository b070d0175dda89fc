package org.benchmetre.budget.rule;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.Refused;
import org.benchmetre.budget.Rule;
import org.benchmetre.budget.entry.Given;

/**
 * At most one row of a table is without a number, which the plan then finds. A zero counts as none.
 *
 * @param keys names of the rows; a row without one is empty
 * @param line the number
 */
public record OneBlank(Line keys, Line line) implements Rule {

    @Override
    public Set<Line> lines() {
        return Set.of(keys, line);
    }

    @Override
    public List<Refused> broken(Values values) {
        List<Refused> found = new ArrayList<>();
        Given first = null;
        for (int row = 0; row < line.size(); row++) {
            Given key = values.of(keys).get(row);
            Given given = values.of(line).get(row);
            boolean isBlank = key.filled() && !(given.number() > 0);
            if (isBlank && first != null) {
                Given at = Breach.placed(given, key);
                String expected =
                        "an amount, since " + Breach.shown(first, "") + " has none already and brings what is missing,";
                found.add(Breach.of(
                        line, row, at, given.filled() ? Breach.shown(given, values.currency()) : "nothing", expected));
            }
            first = isBlank && first == null ? key : first;
        }
        return found;
    }
}
