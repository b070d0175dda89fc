package org.benchmetre.workbook;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.benchmetre.ScenarioException;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.entry.Given;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * A third spreadsheet engine, Gnumeric, recalculates every formula cell of the workbooks of both samples and the starter: as written
 * and after seeded adjustments, which leave values in the file that are out of date. It runs where {@code ssconvert} is on the path.
 */
class GnumericTest {

    private static final int SEEDS = 3;

    @TempDir
    private Path folder;

    @Test
    void gnumeric_agrees_on_every_formula_cell() throws IOException, ScenarioException, InterruptedException {
        Gnumeric.require();
        List<String> differences = new ArrayList<>();
        for (OpenedBook book : OpenedBook.all()) {
            for (int seed = 0; seed <= SEEDS; seed++) {
                String which = book + ", seed " + seed + ": ";
                differences(book, seed).stream().map(which::concat).forEach(differences::add);
            }
        }
        assertThat(differences).isEmpty();
    }

    private List<String> differences(OpenedBook book, int seed) throws IOException, InterruptedException {
        Map<Line, Map<Integer, Given>> changes =
                seed == 0 ? Map.of() : Adjustments.seeded(book.plan().budget(), seed);
        try (XSSFWorkbook workbook = book.again()) {
            Agreement agreement = Agreement.of(workbook, book.plan());
            try (XSSFWorkbook recalculated = Gnumeric.recalculated(workbook, book.plan(), changes, folder)) {
                return agreement.differences(
                        Agreement.cached(recalculated), book.written().figures().typedOver(changes));
            }
        }
    }
}
