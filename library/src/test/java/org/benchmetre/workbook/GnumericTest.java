package org.benchmetre.workbook;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.File;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.benchmetre.ScenarioException;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.entry.Given;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * A third spreadsheet engine, Gnumeric, recalculates every formula cell of the workbooks of both samples and the starter: as written
 * and after seeded adjustments, which leave values in the file that are out of date. It runs where {@code ssconvert} is on the path.
 */
class GnumericTest {

    private static final String PROGRAM = "ssconvert";
    private static final long MINUTES = 2;
    private static final int SEEDS = 3;

    @TempDir
    private Path folder;

    @Test
    void gnumeric_agrees_on_every_formula_cell() throws IOException, ScenarioException, InterruptedException {
        Assumptions.assumeTrue(isInstalled(), "Gnumeric is not on the path.");
        List<String> differences = new ArrayList<>();
        for (OpenedBook book : OpenedBook.all()) {
            for (int seed = 0; seed <= SEEDS; seed++) {
                String which = book + ", seed " + seed + ": ";
                differences(book, seed).stream().map(which::concat).forEach(differences::add);
            }
        }
        assertThat(differences).isEmpty();
    }

    private static boolean isInstalled() {
        String path = System.getenv().getOrDefault("PATH", "");
        return List.of(path.split(File.pathSeparator)).stream()
                .anyMatch(place -> Files.isExecutable(Path.of(place, PROGRAM)));
    }

    private List<String> differences(OpenedBook book, int seed) throws IOException, InterruptedException {
        Map<Line, Map<Integer, Given>> changes =
                seed == 0 ? Map.of() : Adjustments.seeded(book.plan().budget(), seed);
        Path typed = folder.resolve("typed.xlsx");
        Agreement agreement;
        try (XSSFWorkbook workbook = book.again();
                OutputStream out = Files.newOutputStream(typed)) {
            agreement = Agreement.of(workbook, book.plan());
            Typing.of(book.plan(), changes).forEach(typing -> typing.into(workbook));
            workbook.write(out);
        }
        try (InputStream in = Files.newInputStream(recalculated(typed));
                XSSFWorkbook workbook = new XSSFWorkbook(in)) {
            return agreement.differences(
                    Agreement.cached(workbook), book.written().figures().typedOver(changes));
        }
    }

    private Path recalculated(Path typed) throws IOException, InterruptedException {
        Path target = folder.resolve("recalculated.xlsx");
        Process process = new ProcessBuilder(PROGRAM, "--recalc", typed.toString(), target.toString())
                .redirectErrorStream(true)
                .redirectOutput(ProcessBuilder.Redirect.DISCARD)
                .start();
        assertThat(process.waitFor(MINUTES, TimeUnit.MINUTES)).isTrue();
        assertThat(process.exitValue()).isZero();
        return target;
    }
}
