package org.benchmetre.farm;

import java.util.List;
import org.benchmetre.budget.Budget;
import org.benchmetre.budget.Given;
import org.benchmetre.budget.Line;
import org.benchmetre.scenario.Faults;
import org.benchmetre.scenario.Place;

/** Checks that every choice names a row of its table. */
record Choices(Budget budget, Faults faults) {

    void check() {
        for (Line line : budget.lines()) {
            budget.entry(line).filter(entry -> entry.keysOf() != null).ifPresent(entry -> check(line, entry.keysOf()));
        }
    }

    private void check(Line line, Line keys) {
        String chosen = budget.given(line).get(0).text();
        List<String> known = budget.given(keys).stream()
                .filter(Given::filled)
                .map(Given::text)
                .toList();
        if (!known.isEmpty() && !known.contains(chosen)) {
            faults.add(
                    new Place("farm.csv", 0, ""),
                    "\"" + chosen + "\" for " + line.id(),
                    "one of " + String.join(", ", known));
        }
    }
}
