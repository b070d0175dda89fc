package org.benchmetre;

import java.util.List;

/**
 * A sum of causes, in every scenario.
 *
 * @param key its name
 * @param label what a reader sees
 * @param values money a year by the measure, one value for each scenario
 */
public record Total(String key, String label, List<Double> values) {

    /**
     * Keeps its own copy of the values.
     *
     * @param key its name
     * @param label what a reader sees
     * @param values one value for each scenario
     */
    public Total {
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
