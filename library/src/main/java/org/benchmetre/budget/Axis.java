package org.benchmetre.budget;

import java.io.Serializable;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;

/**
 * What a line repeats along: the rows of a table or a run of periods. Two axes are the same only if they are the same object.
 *
 * <p>A table of rows ends in spare rows with empty entries, so that a reader can add to it; their keys are {@code spare_1},
 * {@code spare_2} and so on. The length of an axis is structural: it never changes with an entry.
 */
public final class Axis implements Serializable {

    private static final long serialVersionUID = 1L;

    private final String name;
    private final String title;
    private final boolean ordered;
    private final List<String> keys;
    private final List<String> labels;
    private final int filled;
    private final Map<String, Integer> places = new HashMap<>();

    private Axis(String name, String title, List<String> keys, int filled, Periods periods) {
        this.name = name;
        this.title = title;
        this.ordered = periods.isRun();
        this.keys = List.copyOf(keys);
        this.labels = List.copyOf(periods.labels());
        this.filled = filled;
        if (labels.size() != keys.size()) {
            throw new FormulaException(
                    "Axis " + name + " has " + keys.size() + " keys, but found " + labels.size() + " labels.");
        }
        for (String key : keys) {
            if (places.putIfAbsent(key, places.size()) != null) {
                throw new FormulaException("Axis " + name + " has a key twice: " + key + ".");
            }
        }
        if (keys.isEmpty()) {
            throw new FormulaException("Axis " + name + " has no rows.");
        }
    }

    /**
     * The rows of a table, spare rows after them.
     *
     * @param name lower-case name, as in {@code material}
     * @param title what one row is called, as in {@code Part}
     * @param keys one key a row, all different
     * @param spare how many empty rows to keep, 0 or more
     * @return the axis
     * @throws FormulaException when a key stands twice or there is no row at all
     */
    public static Axis rows(String name, String title, List<String> keys, int spare) {
        List<String> all = new ArrayList<>(keys);
        IntStream.rangeClosed(1, spare).forEach(n -> all.add("spare_" + n));
        return new Axis(name, title, all, keys.size(), new Periods(false, all));
    }

    /**
     * A run of periods, first to last. Whether a page shows it across or down is the page's to say.
     *
     * @param name lower-case name, as in {@code month}
     * @param title what one period is called, as in {@code Month}
     * @param keys one key a period, in order of time
     * @return the axis
     * @throws FormulaException when a key stands twice or there is no period
     */
    public static Axis periods(String name, String title, List<String> keys) {
        return periods(name, title, keys, keys);
    }

    /**
     * A run of periods that people know by other names than their keys.
     *
     * @param name lower-case name, as in {@code month}
     * @param title what one period is called, as in {@code Month}
     * @param keys one key a period, in order of time
     * @param labels what people read for each of them, such as {@code Jan}
     * @return the axis
     * @throws FormulaException when a key stands twice, there is no period, or labels are not as many
     */
    public static Axis periods(String name, String title, List<String> keys, List<String> labels) {
        return new Axis(name, title, keys, keys.size(), new Periods(true, labels));
    }

    private record Periods(boolean isRun, List<String> labels) {}

    /**
     * Several lists of axes together.
     *
     * @param parts lists of axes
     * @return every axis once, in order of first use
     * @throws FormulaException when there are more than two
     */
    static List<Axis> union(List<List<Axis>> parts) {
        List<Axis> all = parts.stream().flatMap(List::stream).distinct().toList();
        if (all.size() > 2) {
            throw new FormulaException("A line repeats along two axes at most, but found " + all + ".");
        }
        return all;
    }

    /**
     * The lower-case name.
     *
     * @return for example {@code material}
     */
    public String name() {
        return name;
    }

    /**
     * What one row or period is called.
     *
     * @return for example {@code Part}
     */
    public String title() {
        return title;
    }

    /**
     * Whether its keys follow one another, as months do, so that one can look back from a key to the one before.
     *
     * @return true for a run of periods; false for the rows of a table
     */
    public boolean isOrdered() {
        return ordered;
    }

    /**
     * The keys in order.
     *
     * @return filled rows first, spare rows last
     */
    public List<String> keys() {
        return keys;
    }

    /**
     * What people read for a key.
     *
     * @param index from 0
     * @return for example {@code Jan}; the key itself where no label is given
     */
    public String label(int index) {
        return labels.get(index);
    }

    /**
     * Number of rows or periods, spare rows included.
     *
     * @return at least 1
     */
    public int size() {
        return keys.size();
    }

    /**
     * Whether a row is one of the empty ones kept for the reader.
     *
     * @param index from 0
     * @return true for spare rows
     */
    public boolean isSpare(int index) {
        return index >= filled;
    }

    /**
     * How many rows came filled.
     *
     * @return rows before the spare ones
     */
    public int filled() {
        return filled;
    }

    /**
     * The place of a key.
     *
     * @param key a key of this axis
     * @return from 0, or -1 when there is no such key
     */
    public int indexOf(String key) {
        return places.getOrDefault(key, -1);
    }

    @Override
    public String toString() {
        return name;
    }
}
