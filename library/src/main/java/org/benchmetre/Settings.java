package org.benchmetre;

import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.benchmetre.budget.Budget;
import org.benchmetre.budget.CellRef;
import org.benchmetre.budget.Given;
import org.benchmetre.budget.Line;
import org.benchmetre.scenario.Fault;
import org.benchmetre.scenario.Faults;
import org.benchmetre.scenario.NearNames;

/** Lays settings over a budget, all of them at once, so that no fault hides another. */
record Settings(List<Setting> settings, Faults faults) {

    static Settings parse(List<String> texts, Faults faults) {
        return new Settings(texts.stream().map(Setting::parse).toList(), faults);
    }

    Budget over(Budget budget) {
        Map<Line, Map<Integer, Given>> changes = new HashMap<>();
        Map<CellRef, Setting> changed = new HashMap<>();
        Set<Setting> twice = new HashSet<>();
        for (Setting setting : settings) {
            Optional<CellRef> cell = setting.cell(budget, faults);
            if (cell.isEmpty()) {
                continue;
            }
            if (changed.putIfAbsent(cell.get(), setting) != null && twice.add(setting)) {
                faults.add(setting.place(), "a second value for " + setting.address(), "each entry set once");
            }
            setting.given(budget, cell.get(), faults)
                    .ifPresent(given -> changes.computeIfAbsent(cell.get().line(), line -> new HashMap<>())
                            .put(cell.get().cell(), given));
        }
        Budget result = budget.with(changes);
        changed.forEach((cell, setting) -> checkKeys(result, cell, setting));
        return result;
    }

    /** A text that names rows of a table is compared with the table as it is after all changes. */
    private void checkKeys(Budget budget, CellRef cell, Setting setting) {
        Line line = cell.line();
        Optional<Line> keys = keysOf(budget, line);
        if (keys.isEmpty()) {
            return;
        }
        List<String> known = budget.given(keys.get()).stream()
                .filter(Given::filled)
                .map(Given::text)
                .toList();
        String chosen = budget.given(line).get(cell.cell()).text();
        for (String key : chosen.split(" +")) {
            if (!known.contains(key) && !(key.isEmpty() && !line.axes().isEmpty())) {
                String near = NearNames.didYouMean(key, known);
                faults.add(
                        setting.place(),
                        Fault.quoted(key),
                        "one of " + String.join(", ", known) + (near.isEmpty() ? "" : "; " + near));
            }
        }
    }

    private static Optional<Line> keysOf(Budget budget, Line line) {
        boolean isOption = line.id().equals(Lines.MATERIAL_OPTION);
        return isOption ? budget.find(Lines.WAY_KEY) : budget.entry(line).map(entry -> entry.keysOf());
    }
}
