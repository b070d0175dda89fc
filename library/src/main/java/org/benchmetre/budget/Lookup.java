package org.benchmetre.budget;

import java.util.List;
import org.benchmetre.budget.unit.Unit;

/**
 * The value in the first row whose key is the one asked for: {@code INDEX(values, MATCH(key, keys, 0))}. Without such a row there
 * is no value, and the figure is reported with its cause; guard empty keys.
 *
 * @param values the line to take from
 * @param keys the text line of the table's keys; one of its axes is shared with the values, and along another each place looks in
 *     its own row
 * @param key the key asked for
 */
public record Lookup(Line values, Line keys, Formula key) implements Formula {

    /** Refuses keys that are not a text, or do not share exactly one axis with the values. */
    public Lookup {
        if (keys.kind() != Kind.TEXT || key.kind() != Kind.TEXT) {
            throw new FormulaException("A lookup matches texts, but found keys " + keys + " of " + keys.kind() + ".");
        }
        if (shared(keys, values).size() != 1) {
            throw new FormulaException("Keys " + keys + " do not run along " + values + ".");
        }
    }

    /**
     * The table looked through.
     *
     * @return the axis of the keys
     */
    public Axis axis() {
        return shared(keys, values).get(0);
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
        List<Axis> own = keys.axes().stream().filter(other -> other != axis()).toList();
        return Axis.union(List.of(key.axes(), own, kept));
    }

    private static List<Axis> shared(Line keys, Line values) {
        return keys.axes().stream().filter(values.axes()::contains).toList();
    }

    @Override
    public <R> R walk(Walk<R> walk) {
        return walk.lookup(this);
    }
}
