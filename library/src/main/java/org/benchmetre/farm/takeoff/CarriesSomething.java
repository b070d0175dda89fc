package org.benchmetre.farm.takeoff;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.Refused;
import org.benchmetre.budget.Rule;
import org.benchmetre.budget.entry.Given;
import org.benchmetre.budget.rule.Breach;

/**
 * What a part that is counted once for the house can carry has a unit, since its driver says nothing; and a unit has a number.
 *
 * @param serves what one unit can carry
 * @param unit its unit, a word
 * @param driver what the part is counted by
 */
record CarriesSomething(Line serves, Line unit, Line driver) implements Rule {

    @Override
    public Set<Line> lines() {
        return Set.of(serves, unit, driver);
    }

    @Override
    public List<Refused> broken(Values values) {
        List<Refused> found = new ArrayList<>();
        for (int cell = 0; cell < serves.size(); cell++) {
            Given carried = values.of(serves).get(cell);
            Given word = values.of(unit).get(cell);
            boolean once = values.of(driver).get(cell).text().equals(Drivers.ONE_HOUSE);
            if (once && carried.filled() && !word.filled()) {
                String expected =
                        "a number with its unit, such as 3000 L/h, since the part is counted once for the house,";
                found.add(Breach.of(serves, cell, carried, Breach.shown(carried, values.currency()), expected));
            }
            if (word.filled() && !carried.filled()) {
                String expected = "what one unit can carry, since its unit is given,";
                found.add(Breach.of(serves, cell, Breach.placed(carried, word), "nothing", expected));
            }
        }
        return found;
    }
}
