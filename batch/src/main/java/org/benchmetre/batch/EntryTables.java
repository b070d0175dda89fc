package org.benchmetre.batch;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.benchmetre.budget.Axis;
import org.benchmetre.budget.CellRef;
import org.benchmetre.budget.Kind;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.unit.Unit;
import org.benchmetre.page.Column;
import org.benchmetre.page.Decimals;
import org.benchmetre.page.EntryList;
import org.benchmetre.page.EntryTable;
import org.benchmetre.page.shown.ShownCells;

/**
 * Entries as they are typed: single ones with range and source, or tables by row. Spare rows that nobody has filled are left out.
 *
 * @param entries tells what was typed
 * @param cells tells units
 */
record EntryTables(EntryText entries, ShownCells cells) {

    String list(EntryList block) {
        TextTable text = new TextTable(List.of("Entry", "Value", "Unit", "Usual range", "Source"), 1).right(1);
        for (Line line : block.entries()) {
            CellRef cell = new CellRef(line, 0);
            boolean words = line.kind() == Kind.TEXT;
            text.row(List.of(
                    line.label(),
                    entries.value(cell),
                    words ? "" : entries.unit(cell),
                    entries.range(cell),
                    entries.source(cell)));
        }
        return text.toString();
    }

    /** Columns in which somebody has filled a cell, and below them what the others are called. */
    String table(EntryTable block) {
        List<Integer> rows = filled(block);
        if (rows.isEmpty()) {
            return "Nothing is entered.\n";
        }
        Map<Boolean, List<Column>> columns = block.columns().stream()
                .filter(column -> !isSpare(column, block.axis()))
                .collect(Collectors.partitioningBy(column -> isTold(column, block.axis(), rows)));
        List<Column> told = columns.get(true);
        boolean named = block.columns().get(0).line().kind() == Kind.TEXT;
        List<List<String>> texts = new ArrayList<>(named ? List.of() : List.of(names(block.axis(), rows)));
        told.forEach(column -> texts.add(column(column, block.axis(), rows)));
        TextTable text =
                new TextTable(texts.stream().map(column -> column.get(0)).toList(), 1);
        IntStream.range(0, told.size())
                .filter(i -> told.get(i).line().kind() != Kind.TEXT)
                .forEach(i -> text.right(named ? i : i + 1));
        IntStream.rangeClosed(1, rows.size())
                .mapToObj(row -> texts.stream().map(column -> column.get(row)).toList())
                .forEach(text::row);
        return text + blank(columns.get(false));
    }

    private boolean isTold(Column column, Axis axis, List<Integer> rows) {
        return rows.stream()
                .anyMatch(row -> entries.given(column.cell(axis, row)).filled());
    }

    private static String blank(List<Column> columns) {
        String headings = columns.stream().map(Column::heading).collect(Collectors.joining("; "));
        return headings.isEmpty() ? "" : TextTable.wrapped("Blank: " + headings + ".");
    }

    /** The heading of a column, then its cells: in one unit with the same decimals, else each with its own unit. */
    private List<String> column(Column column, Axis axis, List<Integer> rows) {
        List<CellRef> typed = rows.stream().map(row -> column.cell(axis, row)).toList();
        if (column.line().kind() == Kind.TEXT) {
            return with(column.heading(), typed.stream().map(entries::value).toList());
        }
        List<CellRef> filled =
                typed.stream().filter(cell -> entries.given(cell).filled()).toList();
        List<Unit> units = filled.stream()
                .map(cell -> entries.given(cell).typedIn())
                .distinct()
                .toList();
        if (units.size() > 1) {
            return with(column.heading(), typed.stream().map(this::withUnit).toList());
        }
        Unit unit = units.isEmpty() ? column.line().unit() : units.get(0);
        double[] numbers =
                filled.stream().mapToDouble(cell -> entries.given(cell).typed()).toArray();
        Decimals decimals = Decimals.exact(unit, numbers);
        return with(
                cells.withUnit(column.heading(), unit),
                typed.stream()
                        .map(cell -> entries.given(cell).filled()
                                ? decimals.written(entries.given(cell).typed())
                                : "")
                        .toList());
    }

    /** What the rows are called, for tables whose first column does not say so. */
    private List<String> names(Axis axis, List<Integer> rows) {
        Optional<Line> names = cells.figures().budget().rowName(axis);
        return with(
                axis.title(),
                rows.stream()
                        .map(row -> names.map(line -> cells.figures().text(line, row))
                                .orElse(readable(axis.keys().get(row))))
                        .toList());
    }

    /** A key with spaces and a capital. */
    private static String readable(String key) {
        String spaced = key.replace('_', ' ');
        return spaced.substring(0, 1).toUpperCase(Locale.ROOT) + spaced.substring(1);
    }

    private static List<String> with(String heading, List<String> cells) {
        List<String> all = new ArrayList<>(List.of(heading));
        all.addAll(cells);
        return all;
    }

    private String withUnit(CellRef cell) {
        String value = entries.value(cell);
        return value.isEmpty() ? "" : (value + " " + entries.unit(cell)).strip();
    }

    private List<Integer> filled(EntryTable block) {
        return IntStream.range(0, block.axis().size())
                .filter(row -> isFilled(block.axis(), row))
                .boxed()
                .toList();
    }

    /** Whether a column is of a spare row of another axis that nobody has filled. */
    private boolean isSpare(Column column, Axis rows) {
        return column.line().axes().stream()
                .anyMatch(axis -> axis != rows && !isFilled(axis, column.fixed().on(axis)));
    }

    private boolean isFilled(Axis axis, int row) {
        Optional<Line> names = cells.figures().budget().rowName(axis);
        return !axis.isSpare(row)
                || names.filter(line -> !cells.figures().text(line, row).isEmpty())
                        .isPresent();
    }
}
