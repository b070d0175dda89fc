package org.benchmetre.scenario;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.benchmetre.budget.Budget;
import org.benchmetre.budget.Entry;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.entry.Home;
import org.benchmetre.files.SafeFolder;

/**
 * Writes the values of a budget as the tables of a scenario, which read as the same budget: each cell where its entry is kept, as it was
 * typed. What a table cannot say (another unit than its column's, another source than its row's, a spare row) goes among the single
 * values, under the address of the cell.
 *
 * @param forms how the tables are kept
 */
public record ScenarioWriter(List<TableForm> forms) {

    /** Keeps its own copy. */
    public ScenarioWriter {
        forms = List.copyOf(forms);
    }

    /**
     * Writes a folder.
     *
     * @param budget whose values are written
     * @param folder a new or empty folder; the files are written beside it and moved into place
     * @throws IOException when the folder is not empty or cannot be written
     */
    public void write(Budget budget, Path folder) throws IOException {
        SafeFolder.write(folder, part -> {
            for (Map.Entry<String, String> file : files(budget).entrySet()) {
                Files.writeString(part.resolve(file.getKey()), file.getValue(), StandardCharsets.UTF_8);
            }
        });
    }

    /**
     * The files as they would be written.
     *
     * @param budget whose values are written
     * @return text by file name
     */
    public Map<String, String> files(Budget budget) {
        SingleCells single = new SingleCells(budget);
        Map<String, TableCells> tables = new LinkedHashMap<>();
        forms.forEach(form -> tables.put(form.file(), new TableCells(budget, form)));
        for (Line line : budget.lines()) {
            budget.entry(line)
                    .ifPresent(
                            entry -> write(line, entry, tables.get(entry.home().table()), single));
        }
        Map<String, String> files = new LinkedHashMap<>();
        files.put(Home.SINGLE, single.text());
        tables.forEach((file, table) -> table.text().ifPresent(text -> files.put(file, text)));
        return files;
    }

    private static void write(Line line, Entry entry, TableCells table, SingleCells single) {
        if (table == null) {
            for (int cell = 0; cell < line.size(); cell++) {
                single.addIfSaid(line, cell);
            }
            return;
        }
        for (int cell : table.add(line, entry)) {
            single.add(line, cell);
        }
    }
}
