package org.benchmetre.budget.unit;

import java.io.Serializable;
import java.util.Map;
import java.util.TreeMap;

/**
 * One named unit: its symbol, its size in base units and its dimension. Two temperature levels carry the place of their zero.
 *
 * @param symbol as printed
 * @param factor size in the base units of the dimension
 * @param dimension exponents of the bases
 * @param zero where the scale begins, in kelvin; 0 for all that is not a temperature level
 */
record Atom(String symbol, Ratio factor, TreeMap<String, Integer> dimension, double zero) implements Serializable {

    static Atom base(String symbol) {
        return new Atom(symbol, Ratio.ONE, new TreeMap<>(Map.of(symbol, 1)), 0);
    }

    /** The symbol's alone, which equal units share: units are looked up with every formula that is built. */
    @Override
    public int hashCode() {
        return symbol.hashCode();
    }
}
