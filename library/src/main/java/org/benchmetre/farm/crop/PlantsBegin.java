package org.benchmetre.farm.crop;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.Refused;
import org.benchmetre.budget.Rule;
import org.benchmetre.budget.entry.Given;
import org.benchmetre.budget.rule.Breach;

/**
 * Plants that stay from crop to crop were planted for the first of them: crops do not take their plants from one another in a circle.
 *
 * @param key keys of the crops
 * @param before the crop whose plants stay for each; blank where plants are new
 */
record PlantsBegin(Line key, Line before) implements Rule {

    @Override
    public Set<Line> lines() {
        return Set.of(key, before);
    }

    @Override
    public List<Refused> broken(Values values) {
        Map<String, String> from = new HashMap<>();
        for (int row = 0; row < key.size(); row++) {
            from.put(values.of(key).get(row).text(), values.of(before).get(row).text());
        }
        List<Refused> found = new ArrayList<>();
        for (int row = 0; row < key.size(); row++) {
            String start = values.of(key).get(row).text();
            if (!start.isEmpty() && isCircle(from, start)) {
                Given given = values.of(before).get(row);
                found.add(Breach.of(
                        before,
                        row,
                        given,
                        Breach.shown(given, values.currency()),
                        "a crop that is planted, or whose plants stay from one that is,"));
            }
        }
        return found;
    }

    private static boolean isCircle(Map<String, String> from, String start) {
        Set<String> seen = new HashSet<>();
        String at = start;
        while (!at.isEmpty() && seen.add(at)) {
            at = from.getOrDefault(at, "");
        }
        return !at.isEmpty();
    }
}
