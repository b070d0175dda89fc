package org.benchmetre.scenario;

import java.util.Collection;
import java.util.List;
import java.util.Map;
import org.apache.commons.csv.CSVFormat;
import org.benchmetre.budget.Budget;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.entry.Given;
import org.benchmetre.budget.entry.Numbers;

/** Values as the text of cells that read as the same values. */
final class CellText {

    private CellText() {}

    /** A text, or a number as it was typed without its unit; empty for a blank cell. */
    static String of(Given given) {
        if (!given.text().isEmpty()) {
            return given.text();
        }
        return given.filled() ? Numbers.plain(given.typed()) : "";
    }

    /** Whether a cell holds anything but its documented default. */
    static boolean isSaid(Budget budget, Line line, int cell) {
        Given given = budget.given(line).get(cell);
        Given usual = budget.usual(line, cell);
        boolean same = given.filled() == usual.filled()
                && given.text().equals(usual.text())
                && Double.compare(given.typed(), usual.typed()) == 0
                && given.typedIn().equals(usual.typedIn());
        return !same;
    }

    /** Where a value comes from; empty where nobody has said so. */
    static String source(Given given) {
        return given.source().equals(FileLayer.NO_SOURCE) ? "" : given.source();
    }

    /** Rows of cells as a CSV file. */
    static String csv(List<String> columns, Collection<Map<String, String>> rows) {
        StringBuilder text = new StringBuilder(record(columns));
        rows.forEach(row -> text.append(record(
                columns.stream().map(column -> row.getOrDefault(column, "")).toList())));
        return text.toString();
    }

    private static String record(List<String> cells) {
        return CSVFormat.DEFAULT.format(cells.toArray()) + "\n";
    }
}
