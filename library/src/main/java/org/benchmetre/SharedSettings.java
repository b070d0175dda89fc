package org.benchmetre;

import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.benchmetre.budget.Budget;
import org.benchmetre.budget.CellRef;
import org.benchmetre.budget.Kind;
import org.benchmetre.budget.entry.Quoted;
import org.benchmetre.budget.unit.Unit;
import org.benchmetre.scenario.Faults;
import org.benchmetre.scenario.Setting;

/**
 * Settings that several scenarios share. A number without a unit is in the unit that each scenario's own files use; where those differ,
 * such as metres and feet, one setting would mean different things, and that is a fault.
 *
 * @param settings as typed
 * @param scenarios read with these settings
 */
record SharedSettings(List<String> settings, List<Compared> scenarios) {

    void check(Faults faults) {
        String currency = scenarios.get(0).plan().budget().currency();
        for (String text : settings) {
            Setting setting = Setting.parse(text);
            List<String> units = scenarios.stream()
                    .map(each -> unit(setting, each.plan().budget(), currency))
                    .toList();
            if (units.stream().distinct().count() > 1) {
                faults.add(
                        setting.place(), Quoted.text(setting.value()), "a unit behind it, for it is in " + own(units));
            }
        }
    }

    private String own(List<String> units) {
        return IntStream.range(0, units.size())
                .mapToObj(i -> units.get(i) + " in " + scenarios.get(i).name())
                .collect(Collectors.joining(" and "));
    }

    /** The unit that a set number was understood in. */
    private static String unit(Setting setting, Budget budget, String currency) {
        CellRef cell = setting.cell(budget, new Faults()).orElseThrow();
        if (cell.line().kind() == Kind.TEXT) {
            return "";
        }
        Unit unit = budget.given(cell.line()).get(cell.cell()).typedIn();
        return unit.display(currency);
    }
}
