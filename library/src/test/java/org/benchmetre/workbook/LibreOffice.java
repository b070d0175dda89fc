package org.benchmetre.workbook;

import java.io.File;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Assumptions;

/**
 * LibreOffice without a screen, told by a job file which workbooks to open, what to type into them and where to save what they
 * show then. It runs with a profile of its own, which holds the macro that reads the job and asks for recalculation on opening:
 * by default cached values are shown.
 */
final class LibreOffice {

    private static final String PROGRAM = "soffice";
    private static final long MINUTES = 5;
    private static final String MACRO = "Referee";
    private static final String DONE = "done";

    /** Said to be set up, because LibreOffice replaces macros when it sets a profile up. */
    private static final String SETTINGS = """
            <?xml version="1.0" encoding="UTF-8"?>
            <oor:items xmlns:oor="http://openoffice.org/2001/registry">
            <item oor:path="/org.openoffice.Setup/Office">
            <prop oor:name="ooSetupInstCompleted" oor:op="fuse"><value>true</value></prop>
            </item>
            <item oor:path="/org.openoffice.Office.Calc/Formula/Load">
            <prop oor:name="OOXMLRecalcMode" oor:op="fuse"><value>0</value></prop>
            </item>
            </oor:items>
            """;

    private static final String LIBRARIES = """
            <?xml version="1.0" encoding="UTF-8"?>
            <library:libraries xmlns:library="http://openoffice.org/2000/library">
            <library:library library:name="Standard" library:link="false"/>
            </library:libraries>
            """;

    private static final String LIBRARY = """
            <?xml version="1.0" encoding="UTF-8"?>
            <library:library xmlns:library="http://openoffice.org/2000/library" library:name="Standard" \
            library:readonly="false" library:passwordprotected="false">
            <library:element library:name="Referee"/>
            </library:library>
            """;

    private static final String MODULE = """
            <?xml version="1.0" encoding="UTF-8"?>
            <script:module xmlns:script="http://openoffice.org/2000/script" script:name="Referee" \
            script:language="StarBasic"><![CDATA[%s]]></script:module>
            """;

    private LibreOffice() {}

    /** Skips the test when LibreOffice is not installed; in continuous integration ({@code CI=true}) fails instead. */
    static void require() {
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
     * Works through a job. LibreOffice 7.4 was seen to abort in a run of fifty workbooks, in a library of its own; what ends without
     * a word of the macro is tried once more.
     *
     * @param folder for the job, the profile and the log; the caller removes it
     * @param steps of the job, as {@code referee.bas} reads them
     * @throws IOException when LibreOffice did not come to the end of the job
     */
    static void run(Path folder, List<String> steps) throws IOException {
        Path job = Files.write(folder.resolve("job.txt"), steps, StandardCharsets.UTF_8);
        Path log = folder.resolve("log.txt");
        String said = said(folder, job, log);
        if (said.isEmpty()) {
            said = said(folder, job, log);
        }
        if (!said.equals(DONE)) {
            throw new IOException("LibreOffice did not end its job. Its macro said: " + said + ". The program said: "
                    + Files.readString(log, StandardCharsets.UTF_8));
        }
    }

    /** The last word of the macro, empty when it came to none. */
    private static String said(Path folder, Path job, Path log) throws IOException {
        Process process = new ProcessBuilder(
                        PROGRAM,
                        "-env:UserInstallation=" + profile(folder).toUri(),
                        "--headless",
                        "--norestore",
                        "macro:///Standard." + MACRO + ".Work(" + job.toUri() + ")")
                .redirectErrorStream(true)
                .redirectOutput(log.toFile())
                .start();
        try {
            if (!process.waitFor(MINUTES, TimeUnit.MINUTES)) {
                throw new IOException("LibreOffice was not done after " + MINUTES + " minutes.");
            }
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new IOException("LibreOffice was interrupted.", e);
        } finally {
            process.descendants().forEach(ProcessHandle::destroyForcibly);
            process.destroyForcibly();
        }
        Path done = folder.resolve("job.txt.done");
        return Files.exists(done) ? Files.readString(done, StandardCharsets.UTF_8) : "";
    }

    private static Path profile(Path folder) throws IOException {
        Path profile = Files.createTempDirectory(folder, "profile");
        Path basic = Files.createDirectories(profile.resolve("user/basic/Standard"));
        write(profile.resolve("user/registrymodifications.xcu"), SETTINGS);
        write(basic.resolveSibling("script.xlc"), LIBRARIES);
        write(basic.resolve("script.xlb"), LIBRARY);
        try (InputStream in = LibreOffice.class.getResourceAsStream("referee.bas")) {
            write(
                    basic.resolve(MACRO + ".xba"),
                    MODULE.formatted(new String(in.readAllBytes(), StandardCharsets.UTF_8)));
        }
        return profile;
    }

    private static void write(Path file, String text) throws IOException {
        Files.writeString(file, text, StandardCharsets.UTF_8);
    }
}
