package org.benchmetre.farm.irrigation.hydraulics;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.Refused;
import org.benchmetre.budget.Rule;
import org.benchmetre.budget.entry.Given;
import org.benchmetre.budget.rule.Breach;

/**
 * An irrigation system has outlets, by plant or along its lines.
 *
 * @param key filled where a way is
 * @param perPlant outlets a plant
 * @param spacing spacing along a line
 */
record OutletsGiven(Line key, Line perPlant, Line spacing) implements Rule {

    @Override
    public Set<Line> lines() {
        return Set.of(key, perPlant, spacing);
    }

    @Override
    public List<Refused> broken(Values values) {
        List<Refused> found = new ArrayList<>();
        for (int row = 0; row < key.axes().get(0).filled(); row++) {
            Given name = values.of(key).get(row);
            boolean outlets = values.of(perPlant).get(row).filled()
                    || values.of(spacing).get(row).filled();
            if (name.filled() && !outlets) {
                String expected = "outlets_per_plant, or an outlet_spacing in m,";
                found.add(Breach.of(
                        perPlant, row, Breach.placed(values.of(perPlant).get(row), name), "nothing", expected));
            }
        }
        return found;
    }
}
