package org.benchmetre.scenario;

import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.benchmetre.budget.Budget;
import org.benchmetre.budget.CellRef;
import org.benchmetre.budget.Layer;

/**
 * Changes for one run, all of them at once, so that no fault hides another.
 *
 * @param settings each entry at most once
 */
public record Settings(List<Setting> settings) {

    /** Keeps its own copy. */
    public Settings {
        settings = List.copyOf(settings);
    }

    /**
     * Reads settings.
     *
     * @param texts see {@link Setting#parse}
     * @return the settings
     * @throws SettingSyntaxException when one does not follow the form
     */
    public static Settings parse(List<String> texts) {
        return new Settings(texts.stream().map(Setting::parse).toList());
    }

    /**
     * The settings as a layer.
     *
     * @param budget whose entries are meant
     * @param below what lies over the budget already: a number without a unit is in the unit that a cell was given in
     * @param faults where unknown names, values that an entry does not take, and entries that are set twice are reported
     * @return what can be laid over the budget
     */
    public Layer over(Budget budget, Layer below, Faults faults) {
        Layer layer = new Layer();
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
            setting.given(budget, below, cell.get(), faults)
                    .ifPresent(given -> layer.put(cell.get().line(), cell.get().cell(), given));
        }
        return budget.gate().apart(layer, below);
    }
}
