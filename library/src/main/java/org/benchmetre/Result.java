package org.benchmetre;

import java.util.List;

/**
 * One result in every scenario.
 *
 * @param key what it is, such as {@code first_cost}
 * @param measure by what it is divided, such as {@code metre}; empty when by nothing
 * @param label what a reader sees
 * @param unit its unit, with the currency
 * @param values one for each scenario; NaN where there is none
 * @param reasons one for each scenario: why there is no value; empty where there is one
 */
public record Result(String key, String measure, String label, String unit, List<Double> values, List<String> reasons) {

    /**
     * Keeps its own copies.
     *
     * @param key what it is
     * @param measure by what it is divided
     * @param label what a reader sees
     * @param unit its unit
     * @param values one for each scenario
     * @param reasons one for each scenario
     */
    public Result {
        values = List.copyOf(values);
        reasons = List.copyOf(reasons);
    }

    /**
     * Whether a scenario has a value.
     *
     * @param scenario which, from 0
     * @return false when there is a reason instead
     */
    public boolean has(int scenario) {
        return reasons.get(scenario).isEmpty();
    }

    /**
     * What a scenario has more than the first.
     *
     * @param scenario which, from 0
     * @return the difference; NaN when one of the two has no value
     */
    public double difference(int scenario) {
        return values.get(scenario) - values.get(0);
    }
}
