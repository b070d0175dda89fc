package org.benchmetre.farm.takeoff;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.Refused;
import org.benchmetre.budget.Rule;
import org.benchmetre.budget.entry.Given;
import org.benchmetre.budget.rule.Breach;

/**
 * A part is in a unit of its driver's measure, or in units of its own at a rate that says how many. A rate of exactly 1 says as much as the
 * driver, which a kilogram for each metre is not.
 *
 * @param unit unit of the item, a word
 * @param driver what it is counted by
 * @param rate units for each unit of the driver
 * @param usual the unit of a part that names none, by its driver
 */
record UnitFits(Line unit, Line driver, Line rate, Map<String, String> usual) implements Rule {

    /** Keeps its own copy. */
    UnitFits {
        usual = new LinkedHashMap<>(usual);
    }

    @Override
    public Set<Line> lines() {
        return Set.of(unit, driver, rate);
    }

    @Override
    public List<Refused> broken(Values values) {
        List<Refused> found = new ArrayList<>();
        for (int cell = 0; cell < unit.size(); cell++) {
            Given given = values.of(unit).get(cell);
            String wanted = usual.getOrDefault(values.of(driver).get(cell).text(), "");
            Optional<PartMeasure> driven = PartMeasure.of(wanted);
            Optional<PartMeasure> measured = PartMeasure.of(given.text());
            boolean differ = driven.isPresent() && measured.isPresent() && !driven.equals(measured);
            if (differ && values.of(rate).get(cell).number() == 1) {
                String expected = "a unit of " + driven.get().word() + " such as "
                        + String.join(", ", driven.get().offered())
                        + ", as its driver is in " + wanted + " and its rate is 1, or another rate, in "
                        + given.text() + " for each " + wanted;
                found.add(Breach.of(unit, cell, given, Breach.shown(given, values.currency()), expected + ","));
            }
        }
        return found;
    }
}
