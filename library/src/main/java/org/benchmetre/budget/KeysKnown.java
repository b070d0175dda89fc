package org.benchmetre.budget;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.benchmetre.budget.entry.Given;
import org.benchmetre.budget.entry.NearNames;
import org.benchmetre.budget.entry.Quoted;
import org.benchmetre.budget.entry.Refusal;

/**
 * Keys that name rows of a table are keys of that table.
 *
 * @param line holds the keys, several apart by spaces
 * @param keys the keys of the table
 * @param typed whether they are entered; where they follow from a formula they are those of its axis
 */
record KeysKnown(Line line, Line keys, boolean typed) implements Rule {

    private static final int LISTED = 20;

    @Override
    public Set<Line> lines() {
        return typed ? Set.of(line, keys) : Set.of(line);
    }

    @Override
    public List<Refused> broken(Values values) {
        Set<String> known = known(values);
        List<Refused> found = new ArrayList<>();
        for (int cell = 0; cell < line.size(); cell++) {
            Given given = values.of(line).get(cell);
            if (known.isEmpty() && line.axes().isEmpty()) {
                found.add(refused("", cell, given, List.of()));
                continue;
            }
            for (String key : given.text().isEmpty()
                    ? List.<String>of()
                    : List.of(given.text().split(" "))) {
                if (!known.contains(key)) {
                    found.add(refused(key, cell, given, List.copyOf(known)));
                }
            }
        }
        return found;
    }

    private Set<String> known(Values values) {
        if (!typed) {
            return new LinkedHashSet<>(keys.axes().get(0).keys());
        }
        Set<String> known = new LinkedHashSet<>();
        values.of(keys).stream().filter(Given::filled).forEach(given -> known.add(given.text()));
        return known;
    }

    private Refused refused(String key, int cell, Given given, List<String> known) {
        String near = NearNames.didYouMean(key, known);
        String table = "a key of the table " + keys.axes().get(0).title();
        String which = known.isEmpty()
                ? table + ", which has no row,"
                : known.size() > LISTED ? table : "one of " + String.join(", ", known);
        String expected =
                which + " for " + line.label() + " (" + line.address(cell) + ")" + (near.isEmpty() ? "" : "; " + near);
        return new Refused(line, given.origin(), new Refusal(Quoted.text(key), expected));
    }
}
