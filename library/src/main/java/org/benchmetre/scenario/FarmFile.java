package org.benchmetre.scenario;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * The single entries of a scenario, by line. The owner of each line takes its row; what is left at the end belongs to
 * nobody.
 *
 * <p>Needs the columns {@code line}, {@code value} and {@code unit}; may have {@code low}, {@code high} and {@code
 * source}. A line that stands twice is a fault, and its first row counts.
 */
public final class FarmFile {

    private final Map<String, FarmRow> rows = new LinkedHashMap<>();
    private final Map<String, FarmRow> untaken = new LinkedHashMap<>();

    private FarmFile() {}

    /**
     * Reads the entries of a table.
     *
     * @param table {@code farm.csv}
     * @param faults where rows without a line and repeated lines are reported
     * @return the entries; none when the table is unreadable
     */
    public static FarmFile of(Table table, Faults faults) {
        table.requireColumns("line", "value", "unit");
        table.allowColumns("low", "high", "source");
        FarmFile farm = new FarmFile();
        table.rows().forEach(row -> farm.add(FarmRow.of(row), faults));
        farm.untaken.putAll(farm.rows);
        return farm;
    }

    private void add(FarmRow entry, Faults faults) {
        Row row = entry.row();
        if (entry.line().isEmpty()) {
            faults.add(row.place("line"), "nothing", "the name of a line");
            return;
        }
        FarmRow first = rows.putIfAbsent(entry.line(), entry);
        if (first != null) {
            faults.add(
                    row.place("line"),
                    Fault.quoted(entry.line()) + ", which row " + first.row().rowNumber() + " has already",
                    "each line once");
        }
    }

    /**
     * Takes the row of a line. It may be taken again.
     *
     * @param line the line's address in lower case
     * @return its row; empty when the file does not have it, so that the default holds
     */
    public Optional<FarmRow> take(String line) {
        untaken.remove(line);
        return Optional.ofNullable(rows.get(line));
    }

    /**
     * The rows that nobody has taken so far: lines that do not exist.
     *
     * @return in the order of the file, unchangeable
     */
    public List<FarmRow> untaken() {
        return List.copyOf(untaken.values());
    }
}
