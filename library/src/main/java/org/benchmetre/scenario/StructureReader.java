package org.benchmetre.scenario;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import org.benchmetre.budget.Structure;
import org.benchmetre.budget.entry.Folding;
import org.benchmetre.budget.entry.Home;
import org.benchmetre.budget.entry.NearNames;
import org.benchmetre.budget.entry.Quoted;
import org.benchmetre.budget.entry.TextForm;

/** Reads which rows a scenario has: the keys of each table, the names of its groups and how long its runs are, and nothing else. */
public final class StructureReader {

    /** Groups that the rows of a table may be in. */
    private static final int MOST_GROUPS = 60;

    private static final Pattern SPARE = Pattern.compile("spare_[0-9]+");

    private final ScenarioTables tables;
    private final Faults faults;

    /**
     * Runs of periods that single values ask for.
     *
     * @param all the runs
     * @param settings what goes before the rows of the file
     */
    public record Runs(List<EntryRun> all, Settings settings) {}

    private StructureReader(ScenarioTables tables, Faults faults) {
        this.tables = tables;
        this.faults = faults;
    }

    /**
     * Reads the structure.
     *
     * @param tables of the scenario
     * @param heading title, currency and crop
     * @param forms how its tables are kept
     * @param runs runs of periods that single values ask for
     * @param faults where keys that are missing, badly formed or there twice are reported, and tables that are too long
     * @return the structure, of the rows that can be told apart
     */
    public static Structure read(
            ScenarioTables tables, Heading heading, List<TableForm> forms, Runs runs, Faults faults) {
        StructureReader reader = new StructureReader(tables, faults);
        Map<String, Structure.Keys> found = new LinkedHashMap<>();
        for (TableForm form : forms) {
            CsvTable table = tables.table(form.file());
            table.requireColumns(form.needed().toArray(String[]::new));
            Map<String, Row> rows = reader.rows(table, form);
            found.put(form.file(), new Structure.Keys(List.copyOf(rows.keySet()), List.of()));
            form.group()
                    .ifPresent(group -> found.put(
                            TableForm.groupsOf(form.file()),
                            new Structure.Keys(List.of(), reader.groups(table, rows.values(), group))));
            form.run()
                    .ifPresent(run -> found.put(
                            TableForm.lengthOf(form.file()), new Structure.Keys(run.keys(rows.values()), List.of())));
        }
        for (EntryRun run : runs.all()) {
            Map.Entry<String, Structure.Keys> keys = run.keys(tables.table(Home.SINGLE), runs.settings());
            found.put(keys.getKey(), keys.getValue());
        }
        return new Structure(heading.title(), heading.currency(), heading.crop(), found, heading.choices());
    }

    /** The rows of a table by their keys; of rows with the same key the first. */
    static Map<String, Row> rowsByKey(CsvTable table, TableForm form) {
        return new StructureReader(null, new Faults()).rows(table, form);
    }

    private Map<String, Row> rows(CsvTable table, TableForm form) {
        Map<String, Row> byKey = new LinkedHashMap<>();
        table.requireAtMost(form.most());
        for (Row row : table.rows()) {
            String key = key(row, form.key());
            if (key.isEmpty()) {
                continue;
            }
            Row first = byKey.putIfAbsent(key, row);
            if (first != null) {
                String column = form.key().count().isEmpty()
                        ? form.key().column()
                        : form.key().count();
                faults.add(
                        row.place(column),
                        Quoted.text(row.text(column)) + ", which row " + first.rowNumber() + " has already",
                        "each row of " + table.file() + " once");
            }
        }
        return byKey;
    }

    private String key(Row row, TableForm.Key form) {
        String key = row.key(form.column(), faults);
        if (!form.allowed().isEmpty() && !key.isEmpty() && !form.allowed().contains(key)) {
            String near = faults.areMany() ? "" : NearNames.didYouMean(key, form.allowed());
            String expected = "one of " + String.join(", ", form.allowed()) + (near.isEmpty() ? "" : "; " + near);
            faults.add(row.place(form.column()), Quoted.text(row.text(form.column())), expected);
            return "";
        }
        if (SPARE.matcher(key).matches()) {
            faults.add(
                    row.place(form.column()),
                    Quoted.text(key),
                    "another key; this one names an empty row of the workbook");
            return "";
        }
        if (form.count().isEmpty() || key.isEmpty()) {
            return key;
        }
        String count = row.text(form.count()).replaceAll("[^0-9]+", "_");
        return count.isEmpty() ? "" : key + "_" + form.joint() + "_" + count;
    }

    private List<String> groups(CsvTable table, Iterable<Row> rows, GroupColumn group) {
        Map<String, String> names = new LinkedHashMap<>();
        for (Row row : rows) {
            String name = row.text(group.column());
            String folded = Folding.folded(name);
            boolean reserved = group.reserved().stream()
                    .anyMatch(each -> Folding.folded(each).equals(folded));
            if (reserved) {
                faults.add(
                        row.place(group.column()),
                        Quoted.text(name),
                        "a group of parts; this one holds what is no part");
            } else if (!name.isEmpty() && !TextForm.GROUP.isFit(name)) {
                faults.add(row.place(group.column()), Quoted.text(name), TextForm.GROUP.expected());
            } else if (!name.isEmpty()) {
                names.putIfAbsent(folded, name);
            }
        }
        if (names.size() > MOST_GROUPS) {
            faults.add(
                    Place.wholeFile(table.file()),
                    names.size() + " different groups",
                    "at most " + MOST_GROUPS + ", for each group is summed in many tables");
        }
        return names.values().stream().limit(MOST_GROUPS).toList();
    }
}
