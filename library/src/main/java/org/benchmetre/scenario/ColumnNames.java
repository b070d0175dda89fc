package org.benchmetre.scenario;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** The names of a table's columns. Of columns with the same name the first counts. */
final class ColumnNames {

    private final String file;
    private final CsvText.Fields fields;
    private final Map<String, Integer> positions = new LinkedHashMap<>();

    ColumnNames(String file, CsvText.Fields fields) {
        this.file = file;
        this.fields = fields;
        for (int i = 0; i < fields.cells().size(); i++) {
            String name = Phrases.folded(fields.cells().get(i));
            if (!name.isEmpty()) {
                positions.putIfAbsent(name, i);
            }
        }
    }

    int row() {
        return fields.row();
    }

    int width() {
        return fields.cells().size();
    }

    List<String> names() {
        return List.copyOf(positions.keySet());
    }

    boolean has(String column) {
        return positions.containsKey(column);
    }

    String cell(List<String> cells, String column) {
        int position = positions.getOrDefault(column, Integer.MAX_VALUE);
        return position < cells.size() ? cells.get(position) : "";
    }

    /** Names that stand twice, and columns that have text but no name. */
    List<Fault> faults(List<CsvText.Fields> rows) {
        List<Fault> faults = new ArrayList<>();
        for (int i = 0; i < width(); i++) {
            String name = Phrases.folded(fields.cells().get(i));
            if (name.isEmpty() && hasText(rows, i)) {
                faults.add(new Fault(
                        new Place(file, row(), ""),
                        "no name for field " + (i + 1) + ", which has text below",
                        "a column name above every field in use"));
            } else if (!name.isEmpty() && positions.get(name) != i) {
                faults.add(new Fault(
                        new Place(file, row(), name),
                        "this name for field " + (positions.get(name) + 1) + " and again for field " + (i + 1),
                        "each column name once"));
            }
        }
        return faults;
    }

    private static boolean hasText(List<CsvText.Fields> rows, int position) {
        return rows.stream()
                .anyMatch(row -> position < row.cells().size()
                        && !row.cells().get(position).isEmpty());
    }

    /** The one fault that names every missing column, or nothing. */
    List<Fault> missing(List<String> required) {
        List<String> missing = new ArrayList<>(required);
        missing.removeAll(positions.keySet());
        if (missing.isEmpty()) {
            return List.of();
        }
        return List.of(new Fault(
                new Place(file, row(), ""),
                "no " + (missing.size() == 1 ? "column " : "columns ") + Phrases.quotedList(missing),
                "a header with " + Phrases.quotedList(required) + " (it has " + Phrases.quotedList(names()) + ")"));
    }
}
