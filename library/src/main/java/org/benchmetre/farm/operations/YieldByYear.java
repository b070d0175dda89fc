package org.benchmetre.farm.operations;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.Refused;
import org.benchmetre.budget.Rule;
import org.benchmetre.budget.entry.Given;
import org.benchmetre.budget.rule.Breach;

/**
 * The fruit of a year is an amount of a year already: by crop or week it would count several times.
 *
 * @param driver what tasks are counted by
 * @param timesUnit what their times are counted in
 */
record YieldByYear(Line driver, Line timesUnit) implements Rule {

    private static final String YEAR = "a";

    @Override
    public Set<Line> lines() {
        return Set.of(driver, timesUnit);
    }

    @Override
    public List<Refused> broken(Values values) {
        List<Refused> found = new ArrayList<>();
        for (int row = 0; row < driver.size(); row++) {
            Given unit = values.of(timesUnit).get(row);
            boolean ofYear = values.of(driver).get(row).text().equals(TaskDrivers.YIELD);
            if (ofYear && unit.filled() && !unit.text().equals(YEAR)) {
                String expected = YEAR + ", as " + TaskDrivers.YIELD + " is the fruit of a whole year,";
                found.add(Breach.of(timesUnit, row, unit, Breach.shown(unit, values.currency()), expected));
            }
        }
        return found;
    }
}
