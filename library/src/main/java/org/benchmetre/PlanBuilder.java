package org.benchmetre;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.benchmetre.budget.entry.Home;
import org.benchmetre.farm.input.FarmTables;
import org.benchmetre.scenario.CsvTable;
import org.benchmetre.scenario.ScenarioTables;

/**
 * Puts a scenario together in memory, in the words of its files: rows of tables and single entries, each as text. It reads as a folder
 * with the same cells does. Not for use by several threads.
 */
public final class PlanBuilder {

    private static final List<String> SINGLE_COLUMNS = List.of("line", "value", "unit", "low", "high", "source");

    private final String name;
    private final Map<String, Rows> tables = new LinkedHashMap<>();

    PlanBuilder(String crop) {
        this.name = crop;
        entry("plan_crop", crop);
    }

    /** The rows of a table, each with its cells by column. */
    private record Rows(Set<String> columns, List<Map<String, String>> rows) {

        Rows() {
            this(new LinkedHashSet<>(), new ArrayList<>());
        }

        void add(Map<String, String> row) {
            columns.addAll(row.keySet());
            rows.add(row);
        }

        CsvTable table(String file) {
            List<String> names = List.copyOf(columns);
            return CsvTable.of(
                    file,
                    names,
                    rows.stream()
                            .map(row -> names.stream()
                                    .map(column -> row.getOrDefault(column, ""))
                                    .toList())
                            .toList());
        }
    }

    /**
     * Gives a single entry a value.
     *
     * @param line its name, or the address of a cell of a table
     * @param value a number, with a unit behind it where it is not in the entry's own, or a word
     * @return this
     */
    public PlanBuilder entry(String line, String value) {
        return entry(line, value, "");
    }

    /**
     * Gives a single entry a value and says where it comes from.
     *
     * @param line its name, or the address of a cell of a table
     * @param value a number, with a unit behind it where it is not in the entry's own, or a word
     * @param source where the value comes from
     * @return this
     */
    public PlanBuilder entry(String line, String value, String source) {
        return entry(line, value, "", "", source);
    }

    /**
     * Gives a single entry a value and a usual range of its own.
     *
     * @param line its name, or the address of a cell of a table
     * @param value a number, with a unit behind it where it is not in the entry's own, or a word
     * @param low the low end, with its unit, or empty
     * @param high the high end, with its unit, or empty
     * @param source where the value comes from
     * @return this
     */
    public PlanBuilder entry(String line, String value, String low, String high, String source) {
        rows(Home.SINGLE).add(Map.of("line", line, "value", value, "low", low, "high", high, "source", source));
        return this;
    }

    /**
     * Adds a row to a table.
     *
     * @param table its file, with or without {@code .csv}, such as {@code materials}
     * @param key names the row
     * @param cells by column, as text; columns that are left out are blank
     * @return this
     * @throws IllegalArgumentException when scenarios have no such table
     */
    public PlanBuilder row(String table, String key, Map<String, String> cells) {
        String file = table.endsWith(".csv") ? table : table + ".csv";
        Map<String, String> row = new LinkedHashMap<>();
        row.put(FarmTables.form(file).key().column(), key);
        row.putAll(cells);
        rows(file).add(row);
        return this;
    }

    private Rows rows(String file) {
        return tables.computeIfAbsent(file, any -> new Rows());
    }

    /**
     * Reads what was put together.
     *
     * @return the plan
     * @throws ScenarioException when there are faults; it carries all of them
     */
    public Plan build() throws ScenarioException {
        rows(Home.SINGLE).columns().addAll(SINGLE_COLUMNS);
        return Benchmetre.read(new InMemory(name, tables));
    }

    private record InMemory(String name, Map<String, Rows> rows) implements ScenarioTables {
        @Override
        public CsvTable table(String file) {
            Rows found = rows.get(file);
            if (found == null) {
                return CsvTable.none(file);
            }
            if (!file.equals(Home.SINGLE)) {
                found.columns().addAll(FarmTables.form(file).needed());
            }
            return found.table(file);
        }
    }
}
