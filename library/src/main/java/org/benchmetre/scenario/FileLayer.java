package org.benchmetre.scenario;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.benchmetre.budget.Axis;
import org.benchmetre.budget.Budget;
import org.benchmetre.budget.Entry;
import org.benchmetre.budget.Kind;
import org.benchmetre.budget.Layer;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.Position;
import org.benchmetre.budget.entry.Blank;
import org.benchmetre.budget.entry.Given;
import org.benchmetre.budget.entry.Home;
import org.benchmetre.budget.entry.Origin;
import org.benchmetre.budget.entry.Typed;

/** What the tables of a scenario say, as a layer: every entry knows its table and columns, every cell goes through the gate. */
final class FileLayer {

    /**
     * What was read.
     *
     * @param layer the values
     * @param refused entries of which a cell was refused
     */
    record Result(Layer layer, Set<Line> refused) {}

    static final String NO_SOURCE = "scenario, no source given";
    private static final String SOURCE = "source";

    private final Budget budget;
    private final ScenarioTables tables;
    private final Map<String, TableForm> forms = new HashMap<>();
    private final Map<String, Map<String, Row>> rows = new HashMap<>();
    private final Map<String, Set<String>> known = new HashMap<>();
    private final Faults faults;
    private final Layer layer = new Layer();
    private final Set<Line> refused = new HashSet<>();

    private FileLayer(Budget budget, ScenarioTables tables, List<TableForm> forms, Faults faults) {
        this.budget = budget;
        this.tables = tables;
        this.faults = faults;
        forms.forEach(form -> this.forms.put(form.file(), form));
    }

    /**
     * Reads the tables.
     *
     * @param budget built from the structure of the same tables
     * @param tables of the scenario
     * @param forms how its tables are kept
     * @param faults where every cell that its entry does not take is reported; a warning for each column that no entry is kept in
     * @return what can be laid over the budget, and which entries are not all known
     */
    static Result read(Budget budget, ScenarioTables tables, List<TableForm> forms, Faults faults) {
        FileLayer reader = new FileLayer(budget, tables, forms, faults);
        for (Line line : budget.lines()) {
            budget.entry(line)
                    .filter(entry ->
                            entry.home().isKept() && !entry.home().table().equals(Home.SINGLE))
                    .ifPresent(entry -> reader.read(line, entry));
        }
        reader.forms.keySet().forEach(reader::warnOfColumns);
        Layer read = budget.gate().apart(reader.layer, new Layer());
        Layer singles = new SingleRows(budget, tables.table(Home.SINGLE), faults).read();
        return new Result(read.under(budget.gate().apart(singles, read)), reader.refused);
    }

    private void read(Line line, Entry entry) {
        Home home = entry.home();
        CsvTable table = tables.table(home.table());
        for (int cell = 0; cell < line.size(); cell++) {
            Position position = line.positionOf(cell);
            String rowKey = key(line, position, home.rows(), true);
            List<String> columns = home.columns(key(line, position, home.rows(), false));
            known.computeIfAbsent(home.table(), any -> new LinkedHashSet<>()).addAll(columns);
            Row row = rowsOf(home.table()).get(rowKey);
            if (row != null) {
                read(line, cell, entry, row, column(table, row, columns, home.whole()));
            } else if (home.whole()
                    && !table.rows().isEmpty()
                    && columns.stream().anyMatch(table::hasColumn)) {
                layer.put(line, cell, Given.blank(line.unit()).at(new Origin.File(home.table(), 0, "")));
            }
        }
    }

    /** The key of a cell on the axis that names the rows of the file, or on the other one; empty where it has none. */
    private static String key(Line line, Position position, String rows, boolean ofRows) {
        for (Axis axis : line.axes()) {
            if (axis.name().equals(rows) == ofRows) {
                return axis.keys().get(position.on(axis));
            }
        }
        return "";
    }

    private Map<String, Row> rowsOf(String file) {
        return rows.computeIfAbsent(file, any -> StructureReader.rowsByKey(tables.table(file), forms.get(file)));
    }

    /** The column that counts: the first that the file has, or the first that is not blank; else the last one. */
    private static String column(CsvTable table, Row row, List<String> columns, boolean whole) {
        return columns.stream()
                .filter(column -> whole ? table.hasColumn(column) : !row.isBlank(column))
                .findFirst()
                .orElse(columns.get(columns.size() - 1));
    }

    private void read(Line line, int cell, Entry entry, Row row, String column) {
        boolean whole = entry.home().whole();
        boolean nothing = row.isBlank(column)
                && !(whole && tables.table(row.place("").file()).hasColumn(column));
        Place place = row.place(column);
        if (nothing && entry.blank() != Blank.REFUSED) {
            if (!isByMonth(line) || !budget.usual(line, cell).filled()) {
                layer.put(line, cell, credited(budget.usual(line, cell), row, place, line));
            }
            return;
        }
        if (row.isBlank(column) && whole) {
            layer.put(line, cell, credited(Given.blank(line.unit()), row, place, line));
            return;
        }
        Typed typed = new Typed(row.text(column), "", line.unit(), row.decimalComma());
        budget.gate()
                .accept(line, cell, typed)
                .orElse(no -> {
                    faults.addOnce(place, no.found(), no.expected());
                    refused.add(line);
                })
                .ifPresent(given -> layer.put(line, cell, credited(given, row, place, line)));
    }

    private Given credited(Given given, Row row, Place place, Line line) {
        boolean unsaid = row.isBlank(SOURCE) && isByMonth(line);
        return given.from(unsaid ? NO_SOURCE : row.text(SOURCE))
                .at(new Origin.File(place.file(), place.row(), place.column()));
    }

    /** Whether the rows of the file are not of the scenario's making; their defaults have a source of their own. */
    private boolean isByMonth(Line line) {
        Home home = budget.entry(line).orElseThrow().home();
        return !forms.get(home.table()).key().allowed().isEmpty();
    }

    private void warnOfColumns(String file) {
        Set<String> columns = new LinkedHashSet<>(known.getOrDefault(file, Set.of()));
        columns.addAll(forms.get(file).needed());
        columns.add(SOURCE);
        tables.table(file).warnOfOthers(new ArrayList<>(columns), faults);
    }

    /** The words for a value whose source nobody has given. */
    static String sourceOf(String text) {
        return text.isEmpty() ? NO_SOURCE : text;
    }

    /** Whether a line holds numbers. */
    static boolean isNumber(Line line) {
        return line.kind() == Kind.NUMBER;
    }
}
