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
 * A task has hours, or a rate in an hour, or a price of what it takes; not hours and a rate at once.
 *
 * @param key filled where a task is
 * @param hours hours for each unit of the driver
 * @param perHour units of the driver in an hour
 * @param input price of what it takes
 */
record HoursGiven(Line key, Line hours, Line perHour, Line input) implements Rule {

    @Override
    public Set<Line> lines() {
        return Set.of(key, hours, perHour, input);
    }

    @Override
    public List<Refused> broken(Values values) {
        List<Refused> found = new ArrayList<>();
        for (int row = 0; row < key.size(); row++) {
            Given name = values.of(key).get(row);
            boolean timed = values.of(hours).get(row).filled();
            Given rate = values.of(perHour).get(row);
            if (timed && rate.filled()) {
                String shown = Breach.shown(rate, values.currency());
                found.add(Breach.of(perHour, row, rate, shown, "nothing here, as hours are given,"));
            }
            if (isTask(name, values, row)) {
                String expected = "hours, or a rate in per_hour, or a price in input_cost";
                found.add(Breach.of(hours, row, Breach.placed(values.of(hours).get(row), name), "nothing", expected));
            }
        }
        return found;
    }

    private boolean isTask(Given name, Values values, int row) {
        boolean entered = name.filled() && !key.axes().get(0).isSpare(row);
        return entered
                && !values.of(hours).get(row).filled()
                && !values.of(perHour).get(row).filled()
                && !values.of(input).get(row).filled();
    }
}
