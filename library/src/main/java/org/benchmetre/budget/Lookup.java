package org.benchmetre.budget;

import java.util.List;
import org.benchmetre.budget.unit.Unit;

/**
 * The value in the first row whose key is the one asked for: {@code INDEX(values, MATCH(key, keys, 0))}. Without such a row there
 * is no value, and the figure is reported with its cause; guard empty keys.
 *
 * @param values the line to take from
 * @param keys the text line of the table's keys, along one axis that the values share
 * @param key the key asked for
 */
public record Lookup(Line values, Line keys, Formula key) implements Formula {

    /** Refuses keys that are not a text along one axis of the values. */
    public Lookup {
        if (keys.kind() != Kind.TEXT || key.kind() != Kind.TEXT) {
            throw new FormulaException("A lookup matches texts, but found keys " + keys + " of " + keys.kind() + ".");
        }
        if (keys.axes().size() != 1 || !values.axes().contains(keys.axes().get(0))) {
            throw new FormulaException("Keys " + keys + " do not run along " + values + ".");
        }
    }

    /**
     * The table looked through.
     *
     * @return the axis of the keys
     */
    public Axis axis() {
        return keys.axes().get(0);
    }

    @Override
    public Unit unit() {
        return values.unit();
    }

    @Override
    public Kind kind() {
        return values.kind();
    }

    @Override
    public List<Axis> axes() {
        List<Axis> kept =
                values.axes().stream().filter(other -> other != axis()).toList();
        return Axis.union(List.of(key.axes(), kept));
    }

    @Override
    public <R> R walk(Walk<R> walk) {
        return walk.lookup(this);
    }
}
