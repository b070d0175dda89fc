package org.benchmetre.farm;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.HashMap;
import java.util.Map;
import org.benchmetre.budget.Budget;
import org.benchmetre.budget.Given;
import org.benchmetre.budget.Kind;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.unit.Unit;
import org.benchmetre.scenario.Faults;
import org.benchmetre.scenario.ScenarioFolder;

/** The sample scenarios, for tests, and a short way to change their single entries. */
public final class Sample {

    /** Folder of the trough house. */
    public static final Path TROUGH_HOUSE = Path.of("..", "samples", "trough-house");

    /** Folder of the container house. */
    public static final Path CONTAINER_HOUSE = Path.of("..", "samples", "container-house");

    private Sample() {}

    /** The budget of the trough house, which must have no fault. */
    public static Budget troughHouse() {
        return of(TROUGH_HOUSE);
    }

    /** The budget of the container house, which must have no fault. */
    public static Budget containerHouse() {
        return of(CONTAINER_HOUSE);
    }

    private static Budget of(Path folder) {
        Faults faults = new Faults();
        Budget budget = FarmBudget.of(ScenarioFolder.open(folder, faults), faults);
        assertThat(faults.faults()).isEmpty();
        return budget;
    }

    /**
     * The same budget with entries replaced, each {@code line=text} or {@code line=number unit}; a cell of a table is
     * {@code line[key]=number unit}.
     */
    public static Budget with(Budget budget, String... settings) {
        Map<Line, Map<Integer, Given>> changes = new HashMap<>();
        for (String setting : settings) {
            String[] sides = setting.split("=");
            String[] place = sides[0].split("[\\[\\]]");
            Line line = budget.line(place[0]);
            int cell = place.length > 1 ? line.axes().get(0).indexOf(place[1]) : 0;
            changes.computeIfAbsent(line, any -> new HashMap<>()).put(cell, given(line, sides[1]));
        }
        return budget.with(changes);
    }

    private static Given given(Line line, String text) {
        if (line.kind() == Kind.TEXT) {
            return Given.text(text);
        }
        String[] parts = text.split(" ", 2);
        return Given.typed(Double.parseDouble(parts[0]), Unit.parse(parts[1]), line.unit());
    }
}
