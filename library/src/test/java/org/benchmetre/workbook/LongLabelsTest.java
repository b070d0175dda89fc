package org.benchmetre.workbook;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.benchmetre.Benchmetre;
import org.benchmetre.budget.Addresses;
import org.benchmetre.budget.Budget;
import org.benchmetre.budget.Formula;
import org.benchmetre.budget.FormulaText;
import org.benchmetre.budget.Line;
import org.benchmetre.farm.Sample;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The limits on texts keep cells and formulas within what spreadsheet programs take. */
class LongLabelsTest {

    private static final Path SAMPLE = Sample.TROUGH_HOUSE;

    /** The longest formula of the common spreadsheet programs. */
    private static final int LONGEST_FORMULA = 8_192;

    /** The longest name that a cell takes. */
    private static final int LONGEST_LABEL = 250;

    @TempDir
    Path folder;

    @Test
    void labels_as_long_as_they_may_be_keep_every_formula_within_its_limit() throws Exception {
        Budget budget = Benchmetre.read(withLongTexts()).budget();
        Addresses addresses = new CellPlaces(Written.bare(budget).plan(), "");

        for (Line line : budget.lines()) {
            Formula formula = budget.formula(line).orElse(null);
            for (int cell = 0; formula != null && cell < line.size(); cell++) {
                assertThat(FormulaText.of(line, formula, cell, addresses).length())
                        .as(line.address(cell))
                        .isLessThanOrEqualTo(LONGEST_FORMULA);
            }
        }
    }

    /** The sample with every label and group as long as may be, and no two labels alike. */
    private Path withLongTexts() throws IOException {
        try (Stream<Path> files = Files.list(SAMPLE)) {
            for (Path file :
                    files.filter(each -> each.toString().endsWith(".csv")).toList()) {
                List<String> rows = new ArrayList<>();
                for (String row : Files.readAllLines(file)) {
                    rows.add(lengthened(row, rows));
                }
                Files.write(folder.resolve(file.getFileName()), rows);
            }
        }
        return folder;
    }

    /** In every table the second column is the label, in those of parts and tasks the third the group; quoted labels are left alone. */
    private static String lengthened(String row, List<String> before) {
        boolean labelled =
                !before.isEmpty() && before.get(0).contains(",label,") && !row.startsWith("#") && !row.contains(",\"");
        if (!labelled) {
            return row;
        }
        String[] cells = row.split(",", -1);
        cells[1] = longer(cells[1]);
        if (before.get(0).contains(",label,group,")) {
            cells[2] = longer(cells[2]);
        }
        return String.join(",", cells);
    }

    private static String longer(String text) {
        return text + "x".repeat(LONGEST_LABEL - text.length());
    }
}
