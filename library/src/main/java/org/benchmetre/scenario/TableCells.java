package org.benchmetre.scenario;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;
import org.benchmetre.budget.Axis;
import org.benchmetre.budget.Budget;
import org.benchmetre.budget.Entry;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.Position;
import org.benchmetre.budget.entry.Blank;
import org.benchmetre.budget.entry.Given;
import org.benchmetre.budget.entry.Home;
import org.benchmetre.budget.entry.Numbers;

/** The cells of one table on their way to a file. */
final class TableCells {

    private static final String SOURCE = "source";

    private final Budget budget;
    private final TableForm form;
    private final Set<String> columns = new LinkedHashSet<>();
    private final Map<String, Map<String, String>> rows = new LinkedHashMap<>();
    private final Map<String, String> sources = new LinkedHashMap<>();

    TableCells(Budget budget, TableForm form) {
        this.budget = budget;
        this.form = form;
        boolean fixed = !form.key().allowed().isEmpty();
        columns.add(form.key().column());
        List<String> keys = fixed
                ? form.key().allowed()
                : budget.structure().keys(form.file()).keys();
        keys.forEach(key -> rows.put(key, new LinkedHashMap<>()));
        if (form.key().count().isEmpty()) {
            rows.forEach((key, cells) -> cells.put(form.key().column(), key));
        }
        sourcesAsEntered();
    }

    /** The column of sources, where it is an entry of its own. */
    private void sourcesAsEntered() {
        for (Line line : budget.lines()) {
            budget.entry(line)
                    .map(Entry::home)
                    .filter(home ->
                            home.table().equals(form.file()) && home.columns().equals(List.of(SOURCE)))
                    .ifPresent(home -> IntStream.range(0, line.axes().get(0).filled())
                            .forEach(row -> sources.put(
                                    line.axes().get(0).keys().get(row),
                                    budget.given(line).get(row).text())));
        }
    }

    /** Adds the cells of an entry, and answers those that this table cannot say. */
    List<Integer> add(Line line, Entry entry) {
        List<Integer> left = new ArrayList<>();
        Set<String> whole = entry.home().whole() ? changedColumns(line, entry.home()) : Set.of();
        for (int cell = 0; cell < line.size(); cell++) {
            Given given = budget.given(line).get(cell);
            String column = column(line, cell, entry.home());
            boolean said = entry.home().whole() ? whole.contains(column) : isSaid(line, cell, entry.home());
            if (!said) {
                continue;
            }
            String row = key(line, line.positionOf(cell), entry.home().rows(), true);
            if (fits(line, cell, given, row) && !isKey(column)) {
                put(row, column, entry.form().shown(given.text()), given);
            } else {
                left.add(cell);
                fillIfNeeded(line, cell, row, column);
            }
        }
        return left;
    }

    /** Whether a cell says anything: a value that is not its default, or a default from elsewhere than its row. */
    private boolean isSaid(Line line, int cell, Home home) {
        Given given = budget.given(line).get(cell);
        String row = key(line, line.positionOf(cell), home.rows(), true);
        String beside = sources.getOrDefault(row, budget.usual(line, cell).source());
        boolean credited = given.filled()
                && FileLayer.isNumber(line)
                && !given.source().equals(budget.usual(line, cell).source())
                && (!form.key().allowed().isEmpty() || !CellText.source(given).equals(beside));
        return credited || CellText.isSaid(budget, line, cell);
    }

    private Set<String> changedColumns(Line line, Home home) {
        Set<String> changed = new LinkedHashSet<>();
        for (int cell = 0; cell < line.size(); cell++) {
            if (isSaid(line, cell, home)) {
                changed.add(column(line, cell, home));
            }
        }
        return changed;
    }

    /** Words, names and keys stand in their row whatever their source: groups are told by the names that rows have. */
    private boolean fits(Line line, int cell, Given given, String row) {
        if (!FileLayer.isNumber(line)) {
            return !line.isSpare(cell);
        }
        boolean plain = given.typedIn().equals(line.unit());
        boolean credited = !given.filled()
                || CellText.source(given).equals(sources.computeIfAbsent(row, any -> CellText.source(given)));
        return !line.isSpare(cell) && plain && credited;
    }

    /** A cell that must not be blank has its value here too, though what is said apart goes before it. */
    private void fillIfNeeded(Line line, int cell, String row, String column) {
        boolean needed = budget.entry(line).orElseThrow().blank() == Blank.REFUSED;
        if (needed && !line.isSpare(cell) && FileLayer.isNumber(line)) {
            columns.add(column);
            rows.get(row).put(column, Numbers.plain(budget.given(line).get(cell).number()));
        }
    }

    /** Whether a column names the rows, so that a cell with another key than its row's can only be said apart. */
    private boolean isKey(String column) {
        return form.key().count().isEmpty() && column.equals(form.key().column());
    }

    private void put(String row, String column, String word, Given given) {
        columns.add(column);
        rows.get(row).put(column, word.isEmpty() ? CellText.of(given) : word);
    }

    private static String column(Line line, int cell, Home home) {
        return home.columns(key(line, line.positionOf(cell), home.rows(), false))
                .get(0);
    }

    private static String key(Line line, Position position, String rows, boolean ofRows) {
        for (Axis axis : line.axes()) {
            if (axis.name().equals(rows) == ofRows) {
                return axis.keys().get(position.on(axis));
            }
        }
        return "";
    }

    /** The file; none for a table without a row, or without a word in it. */
    Optional<String> text() {
        if (rows.isEmpty() || columns.size() == 1 && !form.key().allowed().isEmpty()) {
            return Optional.empty();
        }
        columns.addAll(form.needed());
        columns.remove(SOURCE);
        columns.add(SOURCE);
        rows.forEach((key, cells) -> cells.put(SOURCE, sources.getOrDefault(key, "")));
        return Optional.of(CellText.csv(List.copyOf(columns), rows.values()));
    }
}
