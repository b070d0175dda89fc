package org.benchmetre.farm.input;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.IntFunction;
import java.util.stream.IntStream;
import org.benchmetre.budget.Axis;
import org.benchmetre.budget.BudgetBuilder;
import org.benchmetre.budget.EntryBuilder;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.ScheduleBuilder;
import org.benchmetre.budget.entry.Blank;
import org.benchmetre.budget.entry.Bounds;
import org.benchmetre.budget.entry.Given;
import org.benchmetre.budget.entry.Home;
import org.benchmetre.budget.entry.Meaning;
import org.benchmetre.budget.entry.Plausible;
import org.benchmetre.budget.entry.TextForm;
import org.benchmetre.budget.entry.Usual;
import org.benchmetre.budget.rule.FilledWith;
import org.benchmetre.budget.rule.OnceEach;
import org.benchmetre.budget.unit.Unit;
import org.benchmetre.farm.profile.CropProfile;
import org.benchmetre.farm.profile.Documented;

/**
 * The columns of one table as entries along an axis: a row of the file is a row of the axis. Which rows there are says the structure;
 * what stands in them comes later.
 */
public final class Columns {

    /** Bounds of prices, rates and the like. */
    public static final Bounds NOT_NEGATIVE = new Bounds(0, true, Double.POSITIVE_INFINITY, false);
    /** The highest price or wage of one unit in any currency. A choice of this project. */
    public static final double HIGHEST_PRICE = 1_000_000;

    /** Bounds of prices of one unit. */
    public static final Bounds PRICE = new Bounds(0, true, HIGHEST_PRICE, false);

    /** Bounds of prices of a part: a house that is one part costs tens of millions of yen. */
    public static final Bounds PRICE_OF_A_PART = new Bounds(0, true, 1000 * HIGHEST_PRICE, false);

    /** Bounds of lives, packs and the like. */
    public static final Bounds POSITIVE = new Bounds(0, false, Double.POSITIVE_INFINITY, false);
    /** Bounds of calendar years. */
    public static final Bounds YEARS = new Bounds(1990, true, 2100, true);

    /** A range of one blank cell is no range to every spreadsheet program. */
    private static final int LEAST_ROWS = 2;

    private final BudgetBuilder b;
    private final FarmTable table;
    private final Axis axis;
    private final ScheduleBuilder schedule;
    private final CropProfile profile;
    private final String unitColumn;

    private Columns(
            BudgetBuilder b,
            FarmTable table,
            Axis axis,
            ScheduleBuilder schedule,
            CropProfile profile,
            String unitColumn) {
        this.b = b;
        this.unitColumn = unitColumn;
        this.profile = profile;
        this.table = table;
        this.axis = axis;
        this.schedule = schedule;
    }

    /**
     * The columns of a table, with the rows that the structure gives it and spare ones after them.
     *
     * @param b knows the structure
     * @param table the table
     * @param schedule where the entries are added
     * @return the columns
     */
    public static Columns of(BudgetBuilder b, FarmTable table, ScheduleBuilder schedule) {
        List<String> keys = b.structure().keys(table.file()).keys();
        Axis axis = Axis.rows(table.axis(), table.title(), keys, Math.max(table.spare(), LEAST_ROWS - keys.size()));
        return new Columns(b, table, axis, schedule, CropProfile.of(b.structure()), "");
    }

    /**
     * The same table, with further columns laid out in another schedule.
     *
     * @param other where the next entries are added
     * @return the columns
     */
    public Columns in(ScheduleBuilder other) {
        return new Columns(b, table, axis, other, profile, "");
    }

    /**
     * The same table, whose next numbers are in a unit that another column holds.
     *
     * @param column the line of that column
     * @return the columns
     */
    public Columns measuredIn(Line column) {
        return new Columns(b, table, axis, schedule, profile, column.id());
    }

    /**
     * What is documented of the crop, as it holds for the plan's money.
     *
     * @return the profile that usual ranges come from
     */
    public CropProfile profile() {
        return profile;
    }

    /**
     * The axis of the table.
     *
     * @return its rows, spare rows last
     */
    public Axis axis() {
        return axis;
    }

    /**
     * The keys as an entry, so that a reader can fill a spare row. No key stands twice.
     *
     * @param id identifier
     * @param label heading
     * @return the line
     */
    public Line keys(String id, String label) {
        Line keys = schedule.textEntry(id, label, axis)
                .words(TextForm.OWN_KEY)
                .keptAt(home(table.key()))
                .meaning(Meaning.KEY)
                .given(rows(row -> Given.text(axis.keys().get(row))));
        b.rule(new OnceEach(keys));
        return keys;
    }

    /**
     * A column of names; a row without one goes by its key.
     *
     * @param id identifier
     * @param label heading
     * @return the line, which names the rows for a reader
     */
    public Line names(String id, String label) {
        Line names = schedule.textEntry(id, label, axis)
                .words(TextForm.NAME)
                .keptAt(home("label"))
                .whenBlank(Blank.DEFAULT)
                .meaning(Meaning.LABEL)
                .given(rows(row -> Given.text(readable(axis.keys().get(row)))));
        b.nameRows(axis, names);
        return names;
    }

    /**
     * A column of free text.
     *
     * @param column name in the file
     * @param id identifier
     * @param label heading
     * @return the line
     */
    public Line words(String column, String id, String label) {
        return schedule.textEntry(id, label, axis)
                .words(TextForm.FREE)
                .keptAt(home(column))
                .given(List.of());
    }

    /**
     * A column of days of the calendar, each as year, month and day; a blank cell says none.
     *
     * @param column name in the file
     * @param id identifier
     * @param label heading
     * @return the line, a text
     */
    public Line dates(String column, String id, String label) {
        return word(column, id, label, TextForm.DATE, Blank.NOTHING);
    }

    /**
     * A column of units; a blank cell names none.
     *
     * @param column name in the file
     * @param id identifier
     * @param label heading
     * @param units which ones
     * @return the line
     */
    public Line units(String column, String id, String label, TextForm units) {
        return schedule.textEntry(id, label, axis)
                .words(units)
                .keptAt(home(column))
                .given(List.of());
    }

    /**
     * A column of groups that rows are gathered by: files name them, cells hold their keys.
     *
     * @param column name in the file
     * @param id identifier
     * @param label heading
     * @param groups the groups; the last one is that of rows which name none
     * @return the line
     */
    public Line groups(String column, String id, String label, Groups groups) {
        return schedule.textEntry(id, label, axis)
                .words(TextForm.oneOf(groups.keys(), groups.names()))
                .keptAt(home(column))
                .whenBlank(Blank.DEFAULT)
                .given(rows(row -> Given.text(groups.otherKey())));
    }

    /**
     * A column that takes one of a few words.
     *
     * @param column name in the file
     * @param id identifier
     * @param label heading
     * @param allowed the words
     * @param fallback what a blank cell stands for; null when it must be filled
     * @return the line
     */
    public Line choice(String column, String id, String label, List<String> allowed, String fallback) {
        EntryBuilder entry = schedule.textEntry(id, label, axis)
                .words(ChoiceLabels.of(id, TextForm.oneOf(allowed)))
                .keptAt(home(column));
        return fallback == null
                ? entry.whenBlank(Blank.REFUSED).given(List.of())
                : entry.whenBlank(Blank.DEFAULT).given(rows(row -> Given.text(fallback)));
    }

    /**
     * A column that takes one word of a form, such as a month or one key of a table.
     *
     * @param column name in the file
     * @param id identifier
     * @param label heading
     * @param form which words
     * @param blank what a blank cell means: nothing, or that it is refused
     * @return the line
     */
    public Line word(String column, String id, String label, TextForm form, Blank blank) {
        return schedule.textEntry(id, label, axis)
                .words(form)
                .keptAt(home(column))
                .whenBlank(blank)
                .given(List.of());
    }

    /**
     * A column of keys of a table, several apart by spaces, or blank.
     *
     * @param column name in the file
     * @param id identifier
     * @param label heading
     * @param keys identifier of the line of the other table's keys
     * @return the line
     */
    public Line keyList(String column, String id, String label, String keys) {
        return schedule.textEntry(id, label, axis)
                .words(TextForm.keysOf(keys))
                .keptAt(home(column))
                .given(List.of());
    }

    /**
     * A column of numbers.
     *
     * @param column name in the file
     * @param id identifier
     * @param label heading
     * @param unit unit of the column
     * @param bounds hard bounds
     * @param fallback what a blank cell stands for: NaN when it must be filled, 0 when it counts as nothing
     * @return the line
     */
    public Line numbers(String column, String id, String label, Unit unit, Bounds bounds, double fallback) {
        EntryBuilder entry = bounded(column, id, label, unit, bounds).meaning(beside(id));
        if (Double.isNaN(fallback)) {
            return entry.whenBlank(Blank.REFUSED).given(List.of());
        }
        return fallback == 0
                ? entry.given(List.of())
                : entry.whenBlank(Blank.DEFAULT).given(rows(row -> Given.number(fallback, unit)));
    }

    /**
     * A column of numbers; a blank cell stands for what the profile documents of the line, which gives its usual range as well.
     *
     * @param column name in the file
     * @param id identifier
     * @param label heading
     * @param unit unit of the column
     * @param bounds hard bounds
     * @return the line
     * @throws IllegalStateException when nothing is documented
     */
    public Line documented(String column, String id, String label, Unit unit, Bounds bounds) {
        Documented known = profile.needed(id);
        Plausible usual = known.in(unit);
        return schedule.entry(id, label, unit, axis)
                .within(bounds)
                .usually(usual, known.source())
                .keptAt(home(column))
                .meaning(beside(id))
                .whenBlank(Blank.DEFAULT)
                .given(rows(row -> Given.number(usual.typical(), unit)));
    }

    /**
     * A column of prices, which must be filled. Where there is a price there must be its year.
     *
     * @param column name in the file
     * @param id identifier
     * @param label heading
     * @param unit unit of the column
     * @param meaning the entries that hold its year and its source
     * @return the line
     */
    public Line prices(String column, String id, String label, Unit unit, Meaning meaning) {
        return prices(column, id, label, unit, PRICE, meaning);
    }

    /**
     * The same with bounds of its own.
     *
     * @param column name in the file
     * @param id identifier
     * @param label heading
     * @param unit unit of the column
     * @param bounds what a price may be
     * @param meaning the entries that hold its year and its source
     * @return the line
     */
    public Line prices(String column, String id, String label, Unit unit, Bounds bounds, Meaning meaning) {
        return bounded(column, id, label, unit, bounds)
                .meaning(meaning)
                .whenBlank(Blank.REFUSED)
                .given(List.of());
    }

    /** The unit of a number may stand in the column that is called like it, a life's in {@code life_unit}, or in one that is named. */
    private Meaning beside(String id) {
        return Meaning.measuredIn(unitColumn.isEmpty() ? id + "_unit" : unitColumn);
    }

    private EntryBuilder bounded(String column, String id, String label, Unit unit, Bounds bounds) {
        Usual usual = profile.range(id, unit);
        return schedule.entry(id, label, unit, axis)
                .within(bounds)
                .usually(usual.range(), usual.source())
                .keptAt(home(column));
    }

    /**
     * A block of numbers: one column for each period, named by the key of the period. A blank cell counts as nothing.
     *
     * @param periods what runs across
     * @param id identifier
     * @param label heading
     * @param unit unit of all its cells
     * @param bounds hard bounds
     * @return the line, along the rows and the periods
     */
    public Line across(Axis periods, String id, String label, Unit unit, Bounds bounds) {
        return schedule.entry(id, label, unit, axis, periods)
                .within(bounds)
                .keptAt(home("*"))
                .given(List.of());
    }

    /**
     * The year of a price, which must be given where the price is.
     *
     * @param column name in the file
     * @param id identifier
     * @param label heading
     * @param price the price
     * @return the line
     */
    public Line years(String column, String id, String label, Line price) {
        Line years = schedule.entry(id, label, Unit.ONE, axis)
                .within(YEARS)
                .keptAt(home(column))
                .given(List.of());
        if (price.axes().equals(years.axes())) {
            b.rule(new FilledWith(years, price, "a year from 1990 to 2100"));
        }
        return years;
    }

    private Home home(String column) {
        return Home.of(table.file(), axis.name(), column);
    }

    private List<Given> rows(IntFunction<Given> cell) {
        return new ArrayList<>(IntStream.range(0, axis.filled()).mapToObj(cell).toList());
    }

    /**
     * A key as words, for rows without a label.
     *
     * @param key lower snake case
     * @return for example {@code Drip tape} for {@code drip_tape}
     */
    public static String readable(String key) {
        String words = key.trim().replace('_', ' ');
        return words.isEmpty() ? "" : words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1);
    }
}
