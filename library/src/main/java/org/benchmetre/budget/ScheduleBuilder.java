package org.benchmetre.budget;

import java.util.ArrayList;
import java.util.List;
import org.benchmetre.budget.unit.Unit;

/** Adds lines to one schedule, in the order a reader meets them. */
public final class ScheduleBuilder {

    private final BudgetBuilder budget;
    private final String sheet;
    private final String title;
    private final List<Line> lines = new ArrayList<>();
    private String note = "";

    ScheduleBuilder(BudgetBuilder budget, String sheet, String title) {
        this.budget = budget;
        this.sheet = sheet;
        this.title = title;
    }

    boolean is(String otherSheet, String otherTitle) {
        return sheet.equals(otherSheet) && title.equals(otherTitle);
    }

    BudgetBuilder budget() {
        return budget;
    }

    /**
     * Sets the sentence under the heading.
     *
     * @param words a sentence or two
     * @return this
     */
    public ScheduleBuilder note(String words) {
        this.note = words;
        return this;
    }

    /**
     * Adds a figure with its formula.
     *
     * @param id identifier
     * @param label what a reader sees
     * @param unit the unit a reader expects
     * @param formula of that unit
     * @return the line
     * @throws FormulaException when the name cannot be used or the formula is of another unit
     */
    public Line line(String id, String label, Unit unit, Formula formula) {
        return line(id, label, unit, formula, "");
    }

    /**
     * Adds a figure with its formula and the source of the formula.
     *
     * @param id identifier
     * @param label what a reader sees
     * @param unit the unit a reader expects
     * @param formula of that unit
     * @param source where the formula comes from, or what it leaves out
     * @return the line
     * @throws FormulaException when the name cannot be used or the formula is of another unit
     */
    public Line line(String id, String label, Unit unit, Formula formula, String source) {
        Line line = declare(id, label, unit, formula.kind(), formula.axes(), source);
        budget.define(line, formula);
        return line;
    }

    /**
     * Adds a text with its formula.
     *
     * @param id identifier
     * @param label what a reader sees
     * @param formula a text
     * @return the line
     */
    public Line textLine(String id, String label, Formula formula) {
        return line(id, label, Unit.ONE, formula, "");
    }

    /**
     * Adds a warning: a text that is empty while all is well and says what is wrong and what to change when it is not.
     *
     * @param id identifier
     * @param label what is watched over
     * @param wrong a truth, for each row when it has axes; guard spare rows
     * @param sentence what is wrong and what to change
     * @return the line
     */
    public Line warning(String id, String label, Formula wrong, String sentence) {
        return warning(id, label, wrong, Formulas.text(sentence));
    }

    /**
     * Adds a warning whose sentence names what was entered.
     *
     * @param id identifier
     * @param label what is watched over
     * @param wrong a truth, for each row when it has axes; guard spare rows
     * @param sentence a text: what is wrong and what to change
     * @return the line
     */
    public Line warning(String id, String label, Formula wrong, Formula sentence) {
        Line line = textLine(id, label, Formulas.when(wrong, sentence, Formulas.text("")));
        budget.warnings.add(line);
        return line;
    }

    /**
     * Adds a figure that a search fills, since no formula gives it. In formulas it is tested by {@link Formula#hasNumber} and taken
     * by {@link Formula#numberOr}.
     *
     * @param id identifier
     * @param label what a reader sees
     * @param unit the unit a reader expects
     * @param note what is searched, or where the method comes from
     * @param search runs when the line is read
     * @param axes what it repeats along
     * @return the line, an optional number
     */
    public Line solved(String id, String label, Unit unit, String note, Search search, Axis... axes) {
        return solved(declare(id, label, unit, Kind.OPTIONAL, List.of(axes), note), search);
    }

    /**
     * Adds a number that a search fills, such as a cost on the entries it began with. Formulas beside it can compare it with the
     * live figure and so tell in a workbook that it has gone stale.
     *
     * @param id identifier
     * @param label what a reader sees
     * @param unit the unit a reader expects
     * @param note what is searched, or where the method comes from
     * @param search runs when the line is read; finds numbers alone
     * @param axes what it repeats along
     * @return the line, a number
     */
    public Line solvedNumber(String id, String label, Unit unit, String note, Search search, Axis... axes) {
        return solved(declare(id, label, unit, Kind.NUMBER, List.of(axes), note), search);
    }

    /**
     * Adds words that a search fills, such as where the value of an entry comes from.
     *
     * @param id identifier
     * @param label what a reader sees
     * @param note what is searched
     * @param search runs when the line is read; finds words alone, none of them empty, since a cell without any reads as 0 elsewhere
     * @param axes what it repeats along
     * @return the line, a text
     */
    public Line solvedText(String id, String label, String note, Search search, Axis... axes) {
        return solved(declare(id, label, Unit.ONE, Kind.TEXT, List.of(axes), note), search);
    }

    private Line solved(Line line, Search search) {
        budget.searches.put(line, search);
        return line;
    }

    /**
     * Adds a figure whose formula follows by {@link BudgetBuilder#define}.
     *
     * @param id identifier
     * @param label what a reader sees
     * @param unit the unit a reader expects
     * @param kind what its cells hold
     * @param axes what it repeats along
     * @param source where the formula comes from, or what it leaves out
     * @return the line
     */
    public Line declare(String id, String label, Unit unit, Kind kind, List<Axis> axes, String source) {
        Line line = budget.add(id, label, unit, kind, axes, source);
        lines.add(line);
        return line;
    }

    /**
     * Starts an entry of a number.
     *
     * @param id identifier
     * @param label what a reader sees
     * @param unit the unit a reader expects
     * @param axes what it repeats along
     * @return where its range and value are said
     */
    public EntryBuilder entry(String id, String label, Unit unit, Axis... axes) {
        return new EntryBuilder(this, id, label, unit, Kind.NUMBER, List.of(axes));
    }

    /**
     * Starts an entry of a text.
     *
     * @param id identifier
     * @param label what a reader sees
     * @param axes what it repeats along
     * @return where its choices and value are said
     */
    public EntryBuilder textEntry(String id, String label, Axis... axes) {
        return new EntryBuilder(this, id, label, Unit.ONE, Kind.TEXT, List.of(axes));
    }

    Schedule finished() {
        return new Schedule(sheet, title, note, lines);
    }
}
