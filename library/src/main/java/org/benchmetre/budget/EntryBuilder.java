package org.benchmetre.budget;

import java.util.List;
import java.util.stream.IntStream;
import org.benchmetre.budget.entry.Blank;
import org.benchmetre.budget.entry.Bounds;
import org.benchmetre.budget.entry.Given;
import org.benchmetre.budget.entry.Home;
import org.benchmetre.budget.entry.Meaning;
import org.benchmetre.budget.entry.Plausible;
import org.benchmetre.budget.entry.TextForm;
import org.benchmetre.budget.entry.Usual;
import org.benchmetre.budget.unit.Unit;

/**
 * Says what an entry may hold, what it is and where files keep it. Ends with one of the {@code given} methods, which adds the line with
 * its documented default; what people enter comes later, through {@link Budget#with}.
 */
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

    EntryBuilder(ScheduleBuilder schedule, String id, String label, Unit unit, Kind kind, List<Axis> axes) {
        this.budget = schedule.budget();
        this.schedule = schedule;
        this.id = id;
        this.label = label;
        this.unit = unit;
        this.kind = kind;
        this.axes = axes;
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
     * Sets the usual range and documented default of a number.
     *
     * @param plausible in the line's unit
     * @param source a published source, or the words <i>common practice, no source</i>
     * @return this
     */
    public EntryBuilder usually(Plausible plausible, String source) {
        entry = entry.usually(new Usual(plausible, entry.usualText(), source));
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
     * Sets the documented default of a text.
     *
     * @param word the text, empty when there is none
     * @param source where it comes from
     * @return this
     */
    public EntryBuilder usually(String word, String source) {
        entry = entry.usually(new Usual(entry.plausible(), word, source));
        return this;
    }

    /**
     * Allows a few texts only.
     *
     * @param texts all texts allowed
     * @return this
     */
    public EntryBuilder oneOf(List<String> texts) {
        return words(TextForm.oneOf(texts));
    }

    /**
     * Allows the filled keys of a table only.
     *
     * @param keys the text line of keys
     * @return this
     */
    public EntryBuilder keyOf(Line keys) {
        return words(TextForm.keyOf(keys.id()));
    }

    /**
     * Allows texts of a form only.
     *
     * @param form which texts
     * @return this
     */
    public EntryBuilder words(TextForm form) {
        entry = entry.among(form);
        return this;
    }

    /**
     * Says where files keep the entry.
     *
     * @param home table and columns
     * @return this
     */
    public EntryBuilder keptAt(Home home) {
        entry = entry.keptAt(home);
        return this;
    }

    /**
     * Says what a blank cell means. Unless said it counts as nothing.
     *
     * @param blank its meaning
     * @return this
     */
    public EntryBuilder whenBlank(Blank blank) {
        entry = entry.whenBlank(blank);
        return this;
    }

    /**
     * Says what the entry is.
     *
     * @param meaning a price, a key
     * @return this
     */
    public EntryBuilder meaning(Meaning meaning) {
        entry = entry.meaning(meaning);
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
     * Adds the entry with the same default in every cell.
     *
     * @param value the documented default
     * @return the line
     */
    public Line given(Given value) {
        int cells = axes.stream().mapToInt(Axis::size).reduce(1, (a, b) -> a * b);
        return given(IntStream.range(0, cells).mapToObj(i -> value).toList());
    }

    /**
     * Adds the entry with a default for each cell.
     *
     * @param values as many as there are cells; cells left out at the end are blank
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
     * The identifier.
     *
     * @return lower snake case
     */
    public String id() {
        return id;
    }

    /**
     * Whether the entry is a text.
     *
     * @return false for a number
     */
    public boolean isText() {
        return kind == Kind.TEXT;
    }

    /**
     * The unit a reader expects.
     *
     * @return one for a text
     */
    public Unit unit() {
        return unit;
    }

    /**
     * What was said so far.
     *
     * @return bounds, default and home
     */
    public Entry entry() {
        return entry;
    }
}
