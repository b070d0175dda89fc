package org.benchmetre.farm.input;

import java.util.HashMap;
import java.util.Map;
import org.benchmetre.budget.BudgetBuilder;
import org.benchmetre.budget.Entry;
import org.benchmetre.budget.EntryBuilder;
import org.benchmetre.budget.FormulaException;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.ScheduleBuilder;
import org.benchmetre.budget.entry.Blank;
import org.benchmetre.budget.entry.Given;
import org.benchmetre.budget.entry.Home;
import org.benchmetre.budget.entry.Plausible;
import org.benchmetre.budget.entry.TextForm;
import org.benchmetre.budget.entry.Usual;
import org.benchmetre.farm.profile.CropProfile;
import org.benchmetre.farm.profile.Documented;

/** Single-valued entries: kept as rows of {@code farm.csv}, with the documented default where a scenario says nothing. */
public final class FarmEntries {

    private final CropProfile profile;
    private final Map<String, Line> lines = new HashMap<>();
    private final Map<Line, Range> ranges = new HashMap<>();

    /**
     * Takes defaults from a profile.
     *
     * @param profile what is documented of the crop
     */
    public FarmEntries(CropProfile profile) {
        this.profile = profile;
    }

    /**
     * What is documented of the crop.
     *
     * @return the profile that defaults come from
     */
    public CropProfile profile() {
        return profile;
    }

    /**
     * Adds an entry.
     *
     * @param builder the entry, all but its home
     * @return the line
     * @throws FormulaException when it must be filled and has no documented default
     */
    public Line add(EntryBuilder builder) {
        profile.entry(builder.id()).ifPresent(known -> document(builder, known));
        Entry entry = builder.entry();
        builder.words(ChoiceLabels.of(builder.id(), entry.form()));
        boolean mayBeBlank = builder.isText()
                && (entry.form().equals(TextForm.FREE) || entry.form().equals(TextForm.DATE));
        builder.keptAt(Home.single(builder.id(), "value")).whenBlank(mayBeBlank ? Blank.NOTHING : Blank.REFUSED);
        double usual = entry.plausible().typical();
        if (builder.unit().hasMoney() && !profile.moneyHolds()) {
            builder.usually(new Plausible(Double.NaN, usual, Double.NaN), entry.source());
        }
        boolean isKnown = builder.isText() ? mayBeBlank || !entry.source().isEmpty() : !Double.isNaN(usual);
        if (!isKnown) {
            throw new FormulaException(
                    "Entry " + builder.id() + " has no documented default in the profile of " + profile.name() + ".");
        }
        Given value = builder.isText() ? Given.text(entry.usualText()) : Given.number(usual, builder.unit());
        Line line = builder.given(value.from(entry.source()));
        lines.put(line.id(), line);
        return line;
    }

    /**
     * An entry that was added.
     *
     * @param id its name
     * @return the line
     * @throws FormulaException when no such entry was added
     */
    public Line line(String id) {
        Line line = lines.get(id);
        if (line == null) {
            throw new FormulaException("Entry " + id + " was not added.");
        }
        return line;
    }

    private static void document(EntryBuilder builder, Documented known) {
        if (builder.isText()) {
            builder.usually(known.typical(), known.source());
        } else {
            builder.usually(known.in(builder.unit()), known.source());
        }
    }

    /**
     * The ends of an entry's usual range as entries of their own, for figures that are made of them.
     *
     * @param low the low end, blank where nobody knows it
     * @param high the high end, blank where nobody knows it
     */
    public record Range(Line low, Line high) {}

    /**
     * Adds the ends of the usual range of an entry, kept in the columns {@code low} and {@code high} of the entry's own row.
     *
     * @param b knows the documented range
     * @param s where they are added
     * @param line an entry of a number
     * @return both ends
     */
    public Range range(BudgetBuilder b, ScheduleBuilder s, Line line) {
        return ranges.computeIfAbsent(
                line, any -> newRange(b, s, line, b.entry(line).usual()));
    }

    /**
     * Adds the ends of the usual range of an entry as the plan says them, blank where it does not: for an entry whose documented range
     * says what may be entered at all, such as a price by an open unit, and not how far one would doubt it.
     *
     * @param b where the rule between them is added
     * @param s where they are added
     * @param line an entry of a number
     * @return both ends
     */
    public Range ownRange(BudgetBuilder b, ScheduleBuilder s, Line line) {
        return ranges.computeIfAbsent(line, any -> newRange(b, s, line, Usual.UNKNOWN));
    }

    private static Range newRange(BudgetBuilder b, ScheduleBuilder s, Line line, Usual usual) {
        Range range = new Range(
                end(s, line, "low", usual.range().low(), usual.source()),
                end(s, line, "high", usual.range().high(), usual.source()));
        b.range(line, range.low(), range.high());
        return range;
    }

    private static Line end(ScheduleBuilder s, Line line, String column, double usual, String source) {
        Given known = Double.isNaN(usual) ? Given.blank(line.unit()) : Given.number(usual, line.unit());
        return s.entry(line.id() + "_" + column, line.label() + ", usual " + column + " end", line.unit())
                .keptAt(Home.single(line.id(), column))
                .given(known.from(source));
    }
}
