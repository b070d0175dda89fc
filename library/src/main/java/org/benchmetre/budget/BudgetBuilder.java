package org.benchmetre.budget;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.regex.Pattern;
import org.benchmetre.budget.entry.Given;
import org.benchmetre.budget.unit.Unit;

/**
 * Gathers lines into schedules and checks them: names, units, axes, that every declared line is defined, and that no figure
 * depends on itself. Used once, from one thread.
 */
public final class BudgetBuilder {

    private static final Pattern NAME = Pattern.compile("[a-z][a-z0-9]*(_[a-z0-9]+)+");
    private static final String TYPED_SUFFIX = "_entry";

    final Structure structure;
    final Map<String, Line> lines = new LinkedHashMap<>();
    final Map<Line, Formula> formulas = new LinkedHashMap<>();
    final Map<Line, Entry> entries = new LinkedHashMap<>();
    final Map<Line, List<Given>> givens = new LinkedHashMap<>();
    final List<Rule> rules = new ArrayList<>();
    final Map<Line, Ends> ranges = new LinkedHashMap<>();
    final Map<Line, UsualRange> documented = new LinkedHashMap<>();
    final Map<Line, Search> searches = new LinkedHashMap<>();
    final Map<Axis, Line> rowNames = new LinkedHashMap<>();
    final List<Caution> cautions = new ArrayList<>();
    final List<Line> warnings = new ArrayList<>();
    final Set<Line> repeated = new LinkedHashSet<>();
    private final List<ScheduleBuilder> drafts = new ArrayList<>();
    private List<String> sheets = List.of();

    /**
     * Starts an empty budget without tables.
     *
     * @param title what the budget is of
     * @param currency ISO 4217 code of all money
     */
    public BudgetBuilder(String title, String currency) {
        this(new Structure(title, currency, "", Map.of()));
    }

    /**
     * Starts an empty budget.
     *
     * @param structure the keys of its tables
     */
    public BudgetBuilder(Structure structure) {
        this.structure = structure;
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
     * Says that two entries are the ends of the usual range of a third, cell by cell. The low end may not lie above the high one; a value
     * outside is no fault but worth a word.
     *
     * @param value the entry
     * @param low the low end, blank where nobody knows it
     * @param high the high end, blank where nobody knows it
     */
    public void range(Line value, Line low, Line high) {
        ranges.put(value, new Ends(low, high));
        rules.add(new LowToHigh(low, high));
    }

    /**
     * Says how the documented range of an entry follows from other entries of its row. It stands in place of that of the entry.
     *
     * @param value the entry
     * @param range its range, cell by cell
     */
    public void range(Line value, UsualRange range) {
        documented.put(value, range);
    }

    /**
     * Adds a rule between cells.
     *
     * @param rule looked at whenever one of its lines is given a value
     */
    public void rule(Rule rule) {
        rules.add(rule);
    }

    /**
     * Starts a schedule; its lines are added to what this returns.
     *
     * @param sheet the sheet it belongs to
     * @param heading its heading
     * @return where its lines are added
     */
    public ScheduleBuilder schedule(String sheet, String heading) {
        ScheduleBuilder draft = new ScheduleBuilder(this, sheet, heading);
        drafts.add(draft);
        return draft;
    }

    /**
     * The schedule of a heading, started when there is none yet: several sections add lines of the same rows to it, so that a table
     * names its rows once.
     *
     * @param sheet the sheet it belongs to
     * @param heading its heading
     * @return where lines are added
     */
    public ScheduleBuilder shared(String sheet, String heading) {
        return drafts.stream()
                .filter(draft -> draft.is(sheet, heading))
                .findFirst()
                .orElseGet(() -> schedule(sheet, heading));
    }

    /**
     * Sets the reading order of sheets; those not named follow in order of first use.
     *
     * @param names names of sheets, first to last
     */
    public void sheetsInOrder(List<String> names) {
        sheets = List.copyOf(names);
    }

    /**
     * Adds a caution.
     *
     * @param topic a word or two
     * @param text whole sentences
     */
    public void caution(String topic, String text) {
        cautions.add(new Caution(topic, text));
    }

    /**
     * Says which text line names the rows of a table for a reader.
     *
     * @param axis the table
     * @param line a text line along it
     * @throws FormulaException when the line is no text or runs along something else
     */
    public void nameRows(Axis axis, Line line) {
        if (line.kind() != Kind.TEXT || !line.axes().equals(List.of(axis))) {
            throw new FormulaException("Line " + line + " is not a text along " + axis + ".");
        }
        rowNames.put(axis, line);
    }

    /**
     * Defines a line that was declared.
     *
     * @param line declared by {@link ScheduleBuilder#declare}
     * @param formula its formula
     * @throws FormulaException when the line is defined already or the formula does not fit
     */
    public void define(Line line, Formula formula) {
        if (isDefined(line)) {
            throw new FormulaException("Line " + line + " is defined twice.");
        }
        if (formula.kind() != line.kind() || !formula.unit().equals(line.unit())) {
            throw new FormulaException(
                    "Line " + line + " is a " + line.kind() + " in " + line.unit() + ", but its formula "
                            + Words.of(formula) + " is a " + formula.kind() + " in " + formula.unit() + ".");
        }
        if (!line.axes().containsAll(formula.axes())) {
            throw new FormulaException("Line " + line + " runs along " + line.axes() + ", but its formula "
                    + Words.of(formula) + " along " + formula.axes() + ".");
        }
        formulas.put(line, formula);
    }

    private boolean isDefined(Line line) {
        return formulas.containsKey(line) || entries.containsKey(line) || searches.containsKey(line);
    }

    Line add(String id, String label, Unit unit, Kind kind, List<Axis> axes, String note) {
        if (!NAME.matcher(id).matches() || id.endsWith(TYPED_SUFFIX) || id.length() > 120) {
            throw new FormulaException(
                    "Line name '" + id + "' cannot be used: names are lower snake case with at least one "
                            + "underscore, at most 120 letters, and do not end in " + TYPED_SUFFIX + ".");
        }
        Line line = new Line(id, label, unit, kind, axes, note);
        if (lines.putIfAbsent(id.toLowerCase(Locale.ROOT), line) != null) {
            throw new FormulaException("Line name '" + id + "' is used twice.");
        }
        return line;
    }

    /**
     * What may stand in an entry.
     *
     * @param line an entry of this budget
     * @return its bounds and plausible range
     * @throws FormulaException when the line is no entry
     */
    public Entry entry(Line line) {
        Entry entry = entries.get(line);
        if (entry == null) {
            throw new FormulaException("Line " + line + " is no entry.");
        }
        return entry;
    }

    void enter(Line line, Entry entry, List<Given> values) {
        if (values.size() != line.size()) {
            throw new FormulaException(
                    "Line " + line + " has " + line.size() + " cells, but found " + values.size() + " values.");
        }
        entries.put(line, entry);
        givens.put(line, List.copyOf(values));
    }

    List<Schedule> schedules() {
        return drafts.stream()
                .map(ScheduleBuilder::finished)
                .sorted(Comparator.comparingInt(schedule -> placeOf(schedule.sheet())))
                .toList();
    }

    private int placeOf(String sheet) {
        int place = sheets.indexOf(sheet);
        return place < 0 ? sheets.size() : place;
    }

    /**
     * The finished budget.
     *
     * @return an immutable budget
     * @throws FormulaException when a declared line has no formula, a formula uses a line of another budget, or a figure depends
     *     on itself; the message shows the whole cycle; or a search looks at what a search fills
     */
    public Budget build() {
        for (Line line : lines.values()) {
            if (!isDefined(line)) {
                throw new FormulaException("Line " + line + " was declared but never defined.");
            }
        }
        formulas.forEach((line, formula) -> Dependencies.linesOf(formula).forEach(used -> {
            if (lines.get(used.id()) != used) {
                throw new FormulaException("Line " + line + " uses " + used + ", which is not a line of this budget.");
            }
        }));
        searches.forEach(this::checkSearch);
        Budget built = new Budget(this);
        CellOrder.of(built);
        return built;
    }

    private void checkSearch(Line line, Search search) {
        for (Line read : search.reads()) {
            if (lines.get(read.id()) != read) {
                throw new FormulaException(
                        "The search of " + line + " looks at " + read + ", which is not a line of this budget.");
            }
            Set<Line> behind = Precedents.of(List.of(read), formulas);
            behind.retainAll(searches.keySet());
            if (!behind.isEmpty()) {
                throw new FormulaException("The search of " + line + " looks at " + read + ", which follows from "
                        + behind.iterator().next() + ", which a search fills.");
            }
        }
    }
}
