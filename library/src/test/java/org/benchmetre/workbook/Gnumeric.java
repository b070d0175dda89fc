package org.benchmetre.workbook;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.File;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.entry.Given;
import org.junit.jupiter.api.Assumptions;

/** Gnumeric without a screen: it recalculates a workbook that was typed over. */
final class Gnumeric {

    private static final String PROGRAM = "ssconvert";
    private static final long MINUTES = 2;

    private Gnumeric() {}

    /** Skips the test when Gnumeric is not installed. */
    static void require() {
        String path = System.getenv().getOrDefault("PATH", "");
        boolean isInstalled = List.of(path.split(File.pathSeparator)).stream()
                .anyMatch(place -> Files.isExecutable(Path.of(place, PROGRAM)));
        Assumptions.assumeTrue(isInstalled, "Gnumeric is not on the path.");
    }

    /**
     * Recalculates.
     *
     * @param written the open workbook, which is typed into
     * @param plan where its entries stand
     * @param changes what is typed into them
     * @param folder where files may be written
     * @return the workbook as Gnumeric saved it; the caller closes it
     */
    static XSSFWorkbook recalculated(
            XSSFWorkbook written, WorkbookPlan plan, Map<Line, Map<Integer, Given>> changes, Path folder)
            throws IOException, InterruptedException {
        Path typed = folder.resolve("typed.xlsx");
        try (OutputStream out = Files.newOutputStream(typed)) {
            Typing.of(plan, changes).forEach(typing -> typing.into(written));
            written.write(out);
        }
        Path target = folder.resolve("recalculated.xlsx");
        Process process = new ProcessBuilder(PROGRAM, "--recalc", typed.toString(), target.toString())
                .redirectErrorStream(true)
                .redirectOutput(ProcessBuilder.Redirect.DISCARD)
                .start();
        assertThat(process.waitFor(MINUTES, TimeUnit.MINUTES)).isTrue();
        assertThat(process.exitValue()).isZero();
        try (InputStream in = Files.newInputStream(target)) {
            return new XSSFWorkbook(in);
        }
    }
}
