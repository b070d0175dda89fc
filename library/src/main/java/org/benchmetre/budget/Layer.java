package org.benchmetre.budget;

import java.io.Serializable;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.function.BiConsumer;
import org.benchmetre.budget.entry.Given;

/**
 * A set of cells with their values: what a scenario's files say, a price list, settings, a row of a grid. Layers lie over one another,
 * the last one on top. Not looked at yet: {@link Budget#with} does.
 */
public final class Layer implements Serializable {

    private static final long serialVersionUID = 1L;

    private final LinkedHashMap<Line, Map<Integer, Given>> cells = new LinkedHashMap<>();

    /**
     * Puts a value into a cell, over what the layer had there.
     *
     * @param line an entry
     * @param cell from 0
     * @param given the value
     * @return this
     */
    public Layer put(Line line, int cell, Given given) {
        cells.computeIfAbsent(line, any -> new LinkedHashMap<>()).put(cell, given);
        return this;
    }

    /**
     * Puts another layer on top of this one.
     *
     * @param top its values go before
     * @return this
     */
    public Layer under(Layer top) {
        top.forEach((line, values) -> values.forEach((cell, given) -> put(line, cell, given)));
        return this;
    }

    /**
     * What a cell holds under this layer.
     *
     * @param budget what lies below
     * @param line an entry
     * @param cell from 0
     * @return the layer's value, else the budget's
     */
    public Given over(Budget budget, Line line, int cell) {
        Given own = cells.getOrDefault(line, Map.of()).get(cell);
        return own == null ? budget.given(line).get(cell) : own;
    }

    /**
     * Whether the layer says nothing.
     *
     * @return true when it has no cell
     */
    public boolean isEmpty() {
        return cells.isEmpty();
    }

    Collection<Line> lines() {
        return cells.keySet();
    }

    void forEach(BiConsumer<Line, Map<Integer, Given>> each) {
        cells.forEach(each);
    }
}
