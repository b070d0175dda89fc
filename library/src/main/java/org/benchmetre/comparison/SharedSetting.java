package org.benchmetre.comparison;

import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.benchmetre.budget.CellRef;
import org.benchmetre.budget.Kind;
import org.benchmetre.budget.entry.Quoted;
import org.benchmetre.scenario.Faults;
import org.benchmetre.scenario.Place;

/**
 * A value that was set in several scenarios at once. A number without a unit is in the unit that each scenario's own files use; where
 * those differ, such as metres and feet, one setting would mean different things, and that is a fault.
 *
 * @param place what a fault names as its place
 * @param value as typed
 */
public record SharedSetting(Place place, String value) {

    /**
     * Compares the units in which the scenarios took the value.
     *
     * @param scenarios the scenarios, with the value set
     * @param cells the entry cell that was set in each of them
     * @param faults where different units are reported
     */
    public void check(List<Compared> scenarios, List<CellRef> cells, Faults faults) {
        List<String> units = IntStream.range(0, cells.size())
                .mapToObj(i -> unit(scenarios.get(i), cells.get(i)))
                .toList();
        if (units.stream().distinct().count() > 1) {
            String own = IntStream.range(0, units.size())
                    .mapToObj(i -> units.get(i) + " in " + scenarios.get(i).name())
                    .collect(Collectors.joining(" and "));
            faults.add(place, Quoted.text(value), "a unit behind it, for it is in " + own);
        }
    }

    private static String unit(Compared scenario, CellRef cell) {
        if (cell.line().kind() == Kind.TEXT) {
            return "";
        }
        return scenario.figures()
                .budget()
                .given(cell.line())
                .get(cell.cell())
                .typedIn()
                .display(scenario.currency());
    }
}
