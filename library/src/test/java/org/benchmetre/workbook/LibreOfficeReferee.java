package org.benchmetre.workbook;

import java.io.File;
import java.io.IOException;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.benchmetre.budget.Budget;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.entry.Given;
import org.benchmetre.budget.run.Figures;
import org.junit.jupiter.api.Assumptions;

/**
 * LibreOffice without a screen as a second referee: it recalculates files as it converts them, which a profile of its own asks for,
 * since by default it shows the cached values. Any number of cases of one budget share two runs that work side by side, each with
 * a profile of its own.
 */
public final class LibreOfficeReferee {

    private static final String PROGRAM = "soffice";
    private static final long MINUTES = 5;
    private static final String ALWAYS_RECALCULATE = """
            <?xml version="1.0" encoding="UTF-8"?>
            <oor:items xmlns:oor="http://openoffice.org/2001/registry">
            <item oor:path="/org.openoffice.Office.Calc/Formula/Load">
            <prop oor:name="OOXMLRecalcMode" oor:op="fuse"><value>0</value></prop>
            </item>
            </oor:items>
            """;

    private final Path folder;
    private final Figures figures;
    private final List<Case> cases = new ArrayList<>();

    /** What is typed into the workbook, and the file that has it. */
    private record Case(Map<Line, Map<Integer, Given>> changes, Path file) {}

    /**
     * A referee that works in a folder of its own.
     *
     * @param folder an empty folder that the caller removes
     * @param budget the budget that is written
     */
    public LibreOfficeReferee(Path folder, Budget budget) {
        this.folder = folder;
        this.figures = Figures.of(budget);
    }

    /** Skips the test when LibreOffice is not installed; in continuous integration ({@code CI=true}) fails instead. */
    public static void require() {
        if (!isInstalled() && "true".equals(System.getenv("CI"))) {
            throw new AssertionError(
                    "LibreOffice (" + PROGRAM + ") is not on the path, and continuous integration needs it.");
        }
        Assumptions.assumeTrue(isInstalled(), "LibreOffice is not on the path.");
    }

    private static boolean isInstalled() {
        String path = System.getenv().getOrDefault("PATH", "");
        return List.of(path.split(File.pathSeparator)).stream()
                .anyMatch(place -> Files.isExecutable(Path.of(place, PROGRAM)));
    }

    /**
     * Adds a case.
     *
     * @param changes what is typed in; may be empty
     * @return this
     */
    public LibreOfficeReferee add(Map<Line, Map<Integer, Given>> changes) {
        cases.add(new Case(changes, folder.resolve("case" + cases.size() + ".xlsx")));
        return this;
    }

    /**
     * Recalculates all cases and compares them.
     *
     * @return differences, empty when all agree
     * @throws IOException when a file cannot be written or LibreOffice does not do its work
     */
    public List<String> differences() throws IOException {
        byte[] written = new WorkbookWriter().bytes(figures);
        try {
            cases.parallelStream().forEach(one -> type(one, written));
            int half = cases.size() / 2;
            Stream.of(cases.subList(0, half), cases.subList(half, cases.size()))
                    .parallel()
                    .filter(part -> !part.isEmpty())
                    .forEach(part -> recalculate(part.stream().map(Case::file).toList()));
            return cases.parallelStream()
                    .flatMap(one -> differences(one).stream())
                    .toList();
        } catch (UncheckedIOException e) {
            throw e.getCause();
        }
    }

    private void type(Case one, byte[] written) {
        try (XSSFWorkbook workbook = Agreement.typed(written, figures.budget(), one.changes());
                OutputStream out = Files.newOutputStream(one.file())) {
            workbook.write(out);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private List<String> differences(Case one) {
        try (XSSFWorkbook workbook = open(recalculated(one.file()))) {
            Figures after = figures.typedOver(one.changes());
            return Agreement.differences(workbook, Agreement::cached, after).stream()
                    .map(difference -> one.file().getFileName() + ": " + difference)
                    .toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Opens a workbook without keeping its file open. */
    static XSSFWorkbook open(Path file) {
        try (var in = Files.newInputStream(file)) {
            return new XSSFWorkbook(in);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Where the recalculated copy of a file stands. */
    Path recalculated(Path file) {
        return folder.resolve("recalculated").resolve(file.getFileName());
    }

    /** Recalculates files in one run with a profile of its own. */
    void recalculate(List<Path> files) {
        try {
            Path profile = Files.createTempDirectory(folder, "profile");
            Files.createDirectories(profile.resolve("user"));
            Files.writeString(
                    profile.resolve("user/registrymodifications.xcu"), ALWAYS_RECALCULATE, StandardCharsets.UTF_8);
            List<String> command = new ArrayList<>(List.of(
                    PROGRAM,
                    "-env:UserInstallation=" + profile.toUri(),
                    "--headless",
                    "--norestore",
                    "--convert-to",
                    "xlsx:Calc MS Excel 2007 XML",
                    "--outdir",
                    folder.resolve("recalculated").toString()));
            files.forEach(file -> command.add(file.toString()));
            run(command, profile.resolve("log.txt"));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static void run(List<String> command, Path log) throws IOException {
        Process process = new ProcessBuilder(command)
                .redirectErrorStream(true)
                .redirectOutput(log.toFile())
                .start();
        try {
            if (!process.waitFor(MINUTES, TimeUnit.MINUTES)) {
                process.destroyForcibly();
                throw new IOException("LibreOffice was not done after " + MINUTES + " minutes.");
            }
        } catch (InterruptedException e) {
            process.destroyForcibly();
            Thread.currentThread().interrupt();
            throw new IOException("LibreOffice was interrupted.", e);
        }
        if (process.exitValue() != 0) {
            throw new IOException("LibreOffice failed: " + Files.readString(log, StandardCharsets.UTF_8));
        }
    }
}
