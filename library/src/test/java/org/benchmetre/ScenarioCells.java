package org.benchmetre;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.benchmetre.budget.Budget;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.entry.Home;
import org.benchmetre.budget.entry.Meaning;
import org.benchmetre.farm.input.FarmTables;
import org.benchmetre.scenario.CsvTable;
import org.benchmetre.scenario.GroupColumn;
import org.benchmetre.scenario.ScenarioTables;
import org.benchmetre.scenario.ScenarioWriter;
import org.benchmetre.scenario.TableForm;

/**
 * The tables of a budget as they would be written, with single cells replaced.
 *
 * @param budget what was written
 * @param tables rows of cells by column, by file
 */
record ScenarioCells(Budget budget, Map<String, List<Map<String, String>>> tables) implements ScenarioTables {

    static ScenarioCells of(Budget budget) {
        Map<String, List<Map<String, String>>> tables = new LinkedHashMap<>();
        new ScenarioWriter(FarmTables.FORMS).files(budget).forEach((file, text) -> tables.put(file, rows(text)));
        return new ScenarioCells(budget, tables);
    }

    private static List<Map<String, String>> rows(String text) {
        CSVFormat format = CSVFormat.DEFAULT
                .builder()
                .setHeader()
                .setSkipHeaderRecord(true)
                .get();
        List<Map<String, String>> rows = new ArrayList<>();
        try (CSVParser parser = CSVParser.parse(text, format)) {
            parser.forEach(record -> rows.add(new LinkedHashMap<>(record.toMap())));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return rows;
    }

    ScenarioCells copy() {
        Map<String, List<Map<String, String>>> copy = new LinkedHashMap<>();
        tables.forEach((file, rows) -> copy.put(
                file,
                new ArrayList<>(rows.stream()
                        .map(row -> (Map<String, String>) new LinkedHashMap<>(row))
                        .toList())));
        return new ScenarioCells(budget, copy);
    }

    /** Gives a cell a row among the single values, in place of the one it has. */
    void single(String address, String value, String unit) {
        List<Map<String, String>> rows = tables.get(Home.SINGLE);
        rows.removeIf(row -> row.get("line").equals(address));
        rows.add(new LinkedHashMap<>(Map.of("line", address, "value", value, "unit", unit)));
    }

    /**
     * Whether the first cell of a line stands in a column of a table. What names the row, or a group, is no cell but structure, and a
     * cell in another unit than its column's stands among the single values.
     */
    boolean hasColumn(Line line) {
        Home home = budget.entry(line).orElseThrow().home();
        if (!home.isKept() || home.table().equals(Home.SINGLE)) {
            return false;
        }
        TableForm form = FarmTables.form(home.table());
        boolean structure = budget.entry(line).orElseThrow().meaning().equals(Meaning.KEY)
                || home.columns().contains(form.key().column())
                || home.columns().contains(form.key().count())
                || home.columns().contains(form.group().map(GroupColumn::column).orElse(""));
        boolean spare = line.axes().stream().anyMatch(axis -> axis.isSpare(0));
        return !structure && !spare && ImpossibleValue.unitOf(budget, line).equals(line.unit());
    }

    /** Replaces the first cell of a line in its own column. */
    void column(Line line, String value) {
        Home home = budget.entry(line).orElseThrow().home();
        String row = line.axes().stream()
                .filter(axis -> axis.name().equals(home.rows()))
                .map(axis -> axis.keys().get(0))
                .findFirst()
                .orElseThrow();
        String other = line.axes().stream()
                .filter(axis -> !axis.name().equals(home.rows()))
                .map(axis -> axis.keys().get(0))
                .findFirst()
                .orElse("");
        TableForm.Key key = FarmTables.form(home.table()).key();
        int index = key.allowed().isEmpty() ? 0 : key.allowed().indexOf(row);
        List<Map<String, String>> rows = tables.get(home.table());
        rows.get(index).put(home.columns(other).get(0), value);
        tables.get(Home.SINGLE).removeIf(each -> each.get("line").equals(line.address(0)));
    }

    @Override
    public String name() {
        return "cells";
    }

    @Override
    public CsvTable table(String file) {
        List<Map<String, String>> rows = tables.getOrDefault(file, List.of());
        if (rows.isEmpty()) {
            return CsvTable.none(file);
        }
        Set<String> columns = new LinkedHashSet<>();
        rows.forEach(row -> columns.addAll(row.keySet()));
        return CsvTable.of(
                file,
                List.copyOf(columns),
                rows.stream()
                        .map(row -> columns.stream()
                                .map(column -> row.getOrDefault(column, ""))
                                .toList())
                        .toList());
    }
}
