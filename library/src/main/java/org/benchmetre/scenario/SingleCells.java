package org.benchmetre.scenario;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.benchmetre.budget.Budget;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.entry.Given;
import org.benchmetre.budget.entry.Numbers;
import org.benchmetre.budget.entry.Plausible;

/** The rows of the file of single values on their way to the file. */
final class SingleCells {

    private final Budget budget;
    private final List<Map<String, String>> rows = new ArrayList<>();

    SingleCells(Budget budget) {
        this.budget = budget;
        row(HeadingReader.TITLE, budget.title());
        row(HeadingReader.CURRENCY, budget.currency());
        if (!budget.structure().kind().isEmpty()) {
            row(HeadingReader.CROP, budget.structure().kind());
        }
        budget.structure().choices().forEach(this::row);
    }

    private Map<String, String> row(String line, String value) {
        Map<String, String> row = new HashMap<>();
        row.put(SingleRows.LINE, line);
        row.put(SingleRows.VALUE, value);
        rows.add(row);
        return row;
    }

    /** Adds a cell that holds anything but its documented default, or has a range or a source of its own. */
    void addIfSaid(Line line, int cell) {
        Given given = budget.given(line).get(cell);
        Given usual = budget.usual(line, cell);
        boolean credited =
                !given.range().equals(Plausible.UNKNOWN) || !given.source().equals(usual.source());
        if (credited || CellText.isSaid(budget, line, cell)) {
            add(line, cell);
        }
    }

    /** Adds a cell. */
    void add(Line line, int cell) {
        Given given = budget.given(line).get(cell);
        Map<String, String> row = row(line.address(cell), CellText.of(given));
        row.put(SingleRows.SOURCE, CellText.source(given));
        if (!FileLayer.isNumber(line)) {
            return;
        }
        row.put(SingleRows.UNIT, given.filled() ? given.typedIn().inFiles(budget.currency()) : "");
        row.put(SingleRows.LOW, end(line, given, given.range().low()));
        row.put(SingleRows.HIGH, end(line, given, given.range().high()));
    }

    /** An end of a range; in the line's own unit where the value was typed in another, so that no digit is lost. */
    private String end(Line line, Given given, double end) {
        if (Double.isNaN(end)) {
            return "";
        }
        boolean own = given.typedIn().equals(line.unit());
        return Numbers.plain(end) + (own ? "" : " " + line.unit().inFiles(budget.currency()));
    }

    String text() {
        return CellText.csv(SingleRows.COLUMNS, rows);
    }
}
