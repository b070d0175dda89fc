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
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.benchmetre.budget.Budget;
import org.benchmetre.budget.Given;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.run.Figures;
import org.junit.jupiter.api.Assumptions;

/**
 * LibreOffice without a screen as a second referee: it recalculates files as it converts them, which a profile of its own asks for,
 * since by default it shows the cached values. Any number of cases share one run.
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
    private final List<Case> cases = new ArrayList<>();

    /** A budget with what is typed into its workbook. */
    private record Case(Budget budget, Map<Line, Map<Integer, Given>> changes, Path file) {}

    /**
     * A referee that works in a folder of its own.
     *
     * @param folder an empty folder that the caller removes
     */
    public LibreOfficeReferee(Path folder) {
        this.folder = folder;
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
     * @param budget the budget that is written
     * @param changes what is typed in; may be empty
     * @return this
     */
    public LibreOfficeReferee add(Budget budget, Map<Line, Map<Integer, Given>> changes) {
        cases.add(new Case(budget, changes, folder.resolve("case" + cases.size() + ".xlsx")));
        return this;
    }

    /**
     * Recalculates all cases in one run and compares them.
     *
     * @return differences, empty when all agree
     * @throws IOException when a file cannot be written or LibreOffice does not do its work
     */
    public List<String> differences() throws IOException {
        for (Case one : cases) {
            write(one);
        }
        recalculate(cases.stream().map(Case::file).toList());
        List<String> found = new ArrayList<>();
        for (Case one : cases) {
            try (XSSFWorkbook workbook = open(recalculated(one.file()))) {
                Figures figures = Figures.of(one.budget().with(one.changes()));
                Agreement.differences(workbook, Agreement::cached, figures)
                        .forEach(difference -> found.add(one.file().getFileName() + ": " + difference));
            }
        }
        return found;
    }

    private static void write(Case one) throws IOException {
        Files.write(one.file(), new WorkbookWriter().bytes(Figures.of(one.budget())));
        try (XSSFWorkbook workbook = open(one.file());
                OutputStream out = Files.newOutputStream(one.file())) {
            Agreement.type(workbook, one.budget(), one.changes());
            workbook.write(out);
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

    /** Recalculates files in one run. */
    void recalculate(List<Path> files) throws IOException {
        Path profile = folder.resolve("profile");
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
        run(command);
    }

    private void run(List<String> command) throws IOException {
        Path log = folder.resolve("log.txt");
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
