package org.benchmetre.budget;

import java.util.List;
import java.util.stream.IntStream;
import org.benchmetre.budget.unit.Unit;

/** Says what an entry may hold and what it holds. Ends with one of the {@code given} methods, which adds the line. */
public final class EntryBuilder {

    private final BudgetBuilder budget;
    private final ScheduleBuilder schedule;
    private final String id;
    private final String label;
    private final Unit unit;
    private final Kind kind;
    private final List<Axis> axes;
    private String note = "";
    private Entry entry = Entry.ANY;

    EntryBuilder(
            BudgetBuilder budget,
            ScheduleBuilder schedule,
            String id,
            String label,
            Unit unit,
            Kind kind,
            List<Axis> axes) {
        this.budget = budget;
        this.schedule = schedule;
        this.id = id;
        this.label = label;
        this.unit = unit;
        this.kind = kind;
        this.axes = axes;
    }

    /**
     * Sets the plausible range, the documented default and their source.
     *
     * @param low plausible low, NaN when unknown
     * @param typical default, NaN when there is none
     * @param high plausible high, NaN when unknown
     * @param source a published source, or the words <i>common practice, no source</i>
     * @return this
     * @throws FormulaException when the default lies outside its range
     */
    public EntryBuilder typical(double low, double typical, double high, String source) {
        if (low > typical || typical > high) {
            throw new FormulaException(
                    "Entry " + id + " has a typical value of " + typical + " outside " + low + " to " + high + ".");
        }
        entry = entry.usually(new Plausible(low, typical, high), source);
        return this;
    }

    /**
     * Sets hard bounds, both allowed themselves.
     *
     * @param least lower bound, in the line's unit
     * @param most upper bound, in the line's unit
     * @return this
     */
    public EntryBuilder from(double least, double most) {
        return bounds(new Bounds(least, true, most, entry.bounds().whole()));
    }

    /**
     * Sets a lower bound that is not allowed itself, and an upper one that is.
     *
     * @param least lower bound, in the line's unit
     * @param most upper bound, in the line's unit
     * @return this
     */
    public EntryBuilder above(double least, double most) {
        return bounds(new Bounds(least, false, most, entry.bounds().whole()));
    }

    /**
     * Sets hard bounds.
     *
     * @param bounds in the line's unit
     * @return this
     */
    public EntryBuilder within(Bounds bounds) {
        return bounds(bounds);
    }

    /**
     * Replaces the plausible range.
     *
     * @param plausible in the line's unit
     * @param source where it comes from
     * @return this
     */
    public EntryBuilder usually(Plausible plausible, String source) {
        entry = entry.usually(plausible, source);
        return this;
    }

    /**
     * Allows whole numbers only.
     *
     * @return this
     */
    public EntryBuilder whole() {
        Bounds now = entry.bounds();
        return bounds(new Bounds(now.least(), now.leastIncluded(), now.most(), true));
    }

    private EntryBuilder bounds(Bounds bounds) {
        entry = entry.within(bounds);
        return this;
    }

    /**
     * Allows a few texts only.
     *
     * @param usual the documented default
     * @param source where it comes from
     * @param texts all texts allowed
     * @return this
     */
    public EntryBuilder oneOf(String usual, String source, List<String> texts) {
        entry = entry.among(usual, source, texts, null);
        return this;
    }

    /**
     * Allows the filled keys of a table only.
     *
     * @param usual the documented default, empty when there is none
     * @param source where it comes from
     * @param keys the text line of keys
     * @return this
     */
    public EntryBuilder keyOf(String usual, String source, Line keys) {
        entry = entry.among(usual, source, List.of(), keys);
        return this;
    }

    /**
     * Sets what a reader should know of the entry.
     *
     * @param words a sentence
     * @return this
     */
    public EntryBuilder note(String words) {
        this.note = words;
        return this;
    }

    /**
     * Adds the entry with the same value in every cell: a single value, or a default for all rows.
     *
     * @param value the value
     * @return the line
     */
    public Line given(Given value) {
        int cells = axes.stream().mapToInt(Axis::size).reduce(1, (a, b) -> a * b);
        return given(IntStream.range(0, cells).mapToObj(i -> value).toList());
    }

    /**
     * Adds the entry with a value for each cell.
     *
     * @param values as many as there are cells; rows left out at the end are blank
     * @return the line
     */
    public Line given(List<Given> values) {
        Line line = schedule.declare(id, label, unit, kind, axes, note);
        Given blank = Given.blank(unit);
        budget.enter(
                line,
                entry,
                IntStream.range(0, line.size())
                        .mapToObj(i -> i < values.size() ? values.get(i) : blank)
                        .toList());
        return line;
    }

    /**
     * The entry as far as it is said, for whoever reads its value and needs to know what is allowed.
     *
     * @return all but the value
     */
    public Draft draft() {
        return new Draft(id, label, unit, kind, entry);
    }

    /**
     * An entry before it has a value.
     *
     * @param id identifier
     * @param label what a reader sees
     * @param unit the unit a reader expects
     * @param kind number or text
     * @param entry what it may hold
     */
    public record Draft(String id, String label, Unit unit, Kind kind, Entry entry) {}
}
