package org.benchmetre;

import java.util.List;

/**
 * One receipt or cost, in every scenario.
 *
 * @param key its key in the first scenario that has it
 * @param label what a reader sees
 * @param section where it stands in the budget
 * @param values money a year by the measure, one value for each scenario; costs carry a minus sign; 0 where a scenario has no such row
 */
public record Cause(String key, String label, Section section, List<Double> values) {

    /**
     * Keeps its own copy of the values.
     *
     * @param key its key
     * @param label what a reader sees
     * @param section where it stands in the budget
     * @param values one value for each scenario
     */
    public Cause {
        values = List.copyOf(values);
    }

    /**
     * What a scenario has more than the first.
     *
     * @param scenario which, from 0
     * @return the difference; below 0 when it leaves less
     */
    public double difference(int scenario) {
        return values.get(scenario) - values.get(0);
    }
}
