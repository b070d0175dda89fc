package org.benchmetre;

import java.util.List;

/**
 * One of the factors that receipts are the product of, and what of the difference in receipts comes from it.
 *
 * @param key its name
 * @param label what a reader sees
 * @param unit unit of the values
 * @param values one value for each scenario
 * @param effects what it adds to the receipts of each scenario against the first, money a year by the measure
 */
public record ReceiptsStep(String key, String label, String unit, List<Double> values, List<Double> effects) {

    /**
     * Keeps its own copies.
     *
     * @param key its name
     * @param label what a reader sees
     * @param unit unit of the values
     * @param values one value for each scenario
     * @param effects one for each scenario
     */
    public ReceiptsStep {
        values = List.copyOf(values);
        effects = List.copyOf(effects);
    }

    /**
     * How much larger the factor is than in the first scenario.
     *
     * @param scenario which, from 0
     * @return the difference in the unit of the values
     */
    public double difference(int scenario) {
        return values.get(scenario) - values.get(0);
    }
}
