package org.benchmetre.budget;

import java.io.Serializable;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Supplier;
import org.benchmetre.budget.entry.Given;
import org.benchmetre.budget.entry.Usual;

/**
 * A graph of lines laid out in schedules, with the values of its entries. Immutable, serialisable, free of cycles. It computes
 * nothing itself: {@code org.benchmetre.budget.run.Figures} does.
 */
public final class Budget implements Serializable {

    private static final long serialVersionUID = 1L;

    private final Structure structure;
    private final List<Schedule> schedules;
    private final LinkedHashMap<String, Line> lines;
    private final LinkedHashMap<Line, Formula> formulas;
    private final LinkedHashMap<Line, Entry> entries;
    private final LinkedHashMap<Axis, Line> rowNames;
    private final List<Caution> cautions;
    private final List<Line> warnings;
    private final Set<Line> repeated;
    private final LinkedHashMap<Line, List<Given>> defaults;
    private final LinkedHashMap<Line, List<Given>> givens;
    private final List<Rule> rules;
    private final Ranges ranges;
    private final LinkedHashMap<Line, Search> searches;
    private final Once once;
    private final Once here = new Once();

    Budget(BudgetBuilder builder) {
        this.structure = builder.structure;
        this.schedules = builder.schedules();
        this.lines = new LinkedHashMap<>(builder.lines);
        this.formulas = new LinkedHashMap<>(builder.formulas);
        this.entries = new LinkedHashMap<>(builder.entries);
        this.rowNames = new LinkedHashMap<>(builder.rowNames);
        this.cautions = List.copyOf(builder.cautions);
        this.warnings = List.copyOf(builder.warnings);
        this.repeated = new LinkedHashSet<>(builder.repeated);
        this.defaults = new LinkedHashMap<>(builder.givens);
        this.givens = defaults;
        this.rules = Gate.rules(builder);
        this.ranges = Ranges.of(builder.ranges, builder.documented);
        this.searches = new LinkedHashMap<>(builder.searches);
        this.once = new Once();
    }

    private Budget(Budget other, LinkedHashMap<Line, List<Given>> givens) {
        this.structure = other.structure;
        this.schedules = other.schedules;
        this.lines = other.lines;
        this.formulas = other.formulas;
        this.entries = other.entries;
        this.rowNames = other.rowNames;
        this.cautions = other.cautions;
        this.warnings = other.warnings;
        this.repeated = other.repeated;
        this.defaults = other.defaults;
        this.givens = givens;
        this.rules = other.rules;
        this.ranges = other.ranges;
        this.searches = other.searches;
        this.once = other.once;
    }

    /**
     * What the budget is of.
     *
     * @return a title for sheets and reports
     */
    public String title() {
        return structure.title();
    }

    /**
     * The currency of all money.
     *
     * @return ISO 4217 code
     */
    public String currency() {
        return structure.currency();
    }

    /**
     * The schedules in reading order.
     *
     * @return every line of the budget stands in one of them
     */
    public List<Schedule> schedules() {
        return schedules;
    }

    /**
     * All lines in order of definition.
     *
     * @return entries, formulas and solved lines
     */
    public Collection<Line> lines() {
        return lines.values();
    }

    /**
     * A line by its identifier.
     *
     * @param id lower snake case
     * @return the line, if there is one
     */
    public Optional<Line> find(String id) {
        return Optional.ofNullable(lines.get(id));
    }

    /**
     * A line that must exist.
     *
     * @param id lower snake case
     * @return the line
     * @throws FormulaException when there is none of that name
     */
    public Line line(String id) {
        return find(id).orElseThrow(() -> new FormulaException("There is no line '" + id + "' in this budget."));
    }

    /**
     * The formula of a line.
     *
     * @param line a line of this budget
     * @return its formula, or empty for an entry and a solved line
     */
    public Optional<Formula> formula(Line line) {
        return Optional.ofNullable(formulas.get(line));
    }

    /**
     * What may stand in the cells of an entry.
     *
     * @param line a line of this budget
     * @return the entry, or empty for a formula and a solved line
     */
    public Optional<Entry> entry(Line line) {
        return Optional.ofNullable(entries.get(line));
    }

    /**
     * The values of an entry.
     *
     * @param line an entry of this budget
     * @return one for each cell
     * @throws FormulaException when the line is no entry
     */
    public List<Given> given(Line line) {
        if (!givens.containsKey(line)) {
            throw new FormulaException("Line " + line + whatItIs(line) + " and has no entered value.");
        }
        return givens.get(line);
    }

    private String whatItIs(Line line) {
        if (formulas.containsKey(line)) {
            return " is a formula";
        }
        return isSolved(line) ? " is found by a search" : " is of another budget";
    }

    /**
     * The lines that are filled by a search instead of a formula.
     *
     * @return in order of definition
     */
    public List<Line> solved() {
        return List.copyOf(searches.keySet());
    }

    /**
     * Whether a line is filled by a search.
     *
     * @param line a line of this budget
     * @return false for entries and formulas
     */
    public boolean isSolved(Line line) {
        return searches.containsKey(line);
    }

    /**
     * How the cells of a line are found.
     *
     * @param line a solved line of this budget
     * @return the search
     * @throws FormulaException when the line is not filled by a search
     */
    public Search search(Line line) {
        Search search = searches.get(line);
        if (search == null) {
            throw new FormulaException("Line " + line + " is not filled by a search.");
        }
        return search;
    }

    /**
     * The text line that names the rows of a table for a reader.
     *
     * @param axis the table
     * @return the line, if one was named
     */
    public Optional<Line> rowName(Axis axis) {
        return Optional.ofNullable(rowNames.get(axis));
    }

    /**
     * The cautions in reading order.
     *
     * @return sentences beside the figures
     */
    public List<Caution> cautions() {
        return cautions;
    }

    /**
     * The text lines that are empty while all is well.
     *
     * @return in order of definition
     */
    public List<Line> warnings() {
        return warnings;
    }

    /**
     * Whether a line repeats another one for a case of a {@link WhatIf} table. Repeated lines have no defined name and are not listed.
     *
     * @param line a line of this budget
     * @return true for a copy
     */
    public boolean isRepeated(Line line) {
        return repeated.contains(line);
    }

    /**
     * What decides which lines there are.
     *
     * @return the keys of the tables
     */
    public Structure structure() {
        return structure;
    }

    /**
     * The documented default of an entry's cell.
     *
     * @param line an entry of this budget
     * @param cell from 0
     * @return blank where nothing is documented
     */
    public Given usual(Line line, int cell) {
        given(line);
        return defaults.get(line).get(cell);
    }

    /**
     * The usual range of an entry's cell and where it comes from: the one that the scenario gives it, else the one that entries beside
     * it hold, else the documented one.
     *
     * @param line an entry of this budget
     * @param cell from 0
     * @return in the line's unit
     */
    public Usual range(Line line, int cell) {
        return ranges.of(this, line, cell);
    }

    /**
     * The entries that hold the ends of an entry's usual range.
     *
     * @param line an entry of this budget
     * @return both ends, or empty where nothing but what is documented says them
     */
    public Optional<Ends> ends(Line line) {
        return Optional.ofNullable(ranges.ends().get(line));
    }

    /**
     * Whether an entry holds an end of another one's usual range.
     *
     * @param line an entry of this budget
     * @return true for a low or high end
     */
    public boolean isEnd(Line line) {
        return ranges.ends().values().stream().anyMatch(ends -> ends.low() == line || ends.high() == line);
    }

    /**
     * The gate: the only way of values into cells.
     *
     * @return of this budget
     */
    public Gate gate() {
        return new Gate(this);
    }

    List<Rule> rules() {
        return rules;
    }

    /** Whether every entry holds its documented default. */
    boolean isAsDocumented() {
        return givens == defaults;
    }

    Set<Line> entries() {
        return entries.keySet();
    }

    /**
     * The same budget with a layer of values over its own. Every value is looked at, alone and together with the others.
     *
     * @param layer values by cell
     * @return a new budget; this one is unchanged
     * @throws RefusedException when an entry does not take a value; it carries all that were refused
     * @throws FormulaException when a line is not an entry of this budget, or has no such cell
     */
    public Budget with(Layer layer) {
        List<Refused> refused = new ArrayList<>();
        return gate().lay(layer, line -> false, refused::add).orElseThrow(() -> new RefusedException(refused));
    }

    /**
     * The same with some cells replaced.
     *
     * @param changes for each entry line the new value by cell
     * @return a new budget; this one is unchanged
     * @throws RefusedException when an entry does not take a value; it carries all that were refused
     * @throws FormulaException when a line is not an entry of this budget, or has no such cell
     */
    public Budget with(Map<Line, Map<Integer, Given>> changes) {
        Layer layer = new Layer();
        changes.forEach((line, cells) -> cells.forEach((cell, value) -> layer.put(line, cell, value)));
        return with(layer);
    }

    /** The same budget with a layer of values that the gate has not looked at. */
    Budget laid(Layer layer) {
        LinkedHashMap<Line, List<Given>> changed = new LinkedHashMap<>(givens);
        layer.forEach((line, cells) -> {
            Given[] values = given(line).toArray(Given[]::new);
            cells.forEach((cell, value) -> {
                if (cell < 0 || cell >= values.length) {
                    throw new FormulaException("Line " + line + " has " + values.length
                            + (values.length == 1 ? " cell" : " cells") + ", from 0, but no cell " + cell + ".");
                }
                values[cell] = value;
            });
            changed.put(line, List.of(values));
        });
        return new Budget(this, changed);
    }

    /**
     * What follows from the lines and formulas alone, such as the order in which cells can be computed: worked out when it is first
     * asked for, then kept for this budget and all that differ from it only in what is entered. It is not written with a
     * budget that is serialised, but worked out anew where it is read.
     *
     * @param kind what is asked for
     * @param work how it is worked out; must not look at entered values
     * @param <T> what is asked for, not to be changed by anyone
     * @return the same object every time
     */
    public <T> T once(Class<T> kind, Supplier<T> work) {
        return once.get(kind, work);
    }

    /**
     * What follows from this budget as it is entered and filled: worked out when it is first asked for, then kept with it. It is not
     * written with a budget that is serialised, but worked out anew where it is read.
     *
     * @param kind what is asked for
     * @param work how it is worked out
     * @param <T> what is asked for, not to be changed by anyone
     * @return the same object every time
     */
    public <T> T here(Class<T> kind, Supplier<T> work) {
        return here.get(kind, work);
    }
}
