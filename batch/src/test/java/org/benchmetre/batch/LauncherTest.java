package org.benchmetre.batch;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.File;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.jar.Attributes;
import java.util.jar.JarOutputStream;
import java.util.jar.Manifest;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.DisabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The launcher for sh, as it stands in the sources, beside a jar that points at the classes under test. */
@DisabledOnOs(value = OS.WINDOWS, disabledReason = "There is no sh; see WindowsLauncherTest for the other launcher.")
class LauncherTest {

    private static final Path SOURCES = Path.of("src", "main", "launcher");
    private static final String SAMPLE = Ran.SAMPLE.toAbsolutePath().normalize().toString();
    private static final String QUICK = "[-XX:TieredStopAtLevel=1]";
    private static final int NO_JAVA = 127;

    @TempDir
    Path folder;

    private Path launcher;

    @BeforeEach
    void install() throws IOException {
        Path installed = Files.createDirectory(folder.resolve("installed here"));
        launcher = installed.resolve("benchmetre");
        Files.copy(SOURCES.resolve("benchmetre"), launcher);
        executable(launcher);
        Manifest manifest = new Manifest();
        manifest.getMainAttributes().put(Attributes.Name.MANIFEST_VERSION, "1.0");
        manifest.getMainAttributes().put(Attributes.Name.MAIN_CLASS, Main.class.getName());
        manifest.getMainAttributes().put(Attributes.Name.CLASS_PATH, classPath());
        new JarOutputStream(Files.newOutputStream(installed.resolve("benchmetre.jar")), manifest).close();
    }

    private static String classPath() {
        return Arrays.stream(System.getProperty("java.class.path").split(File.pathSeparator))
                .map(entry -> Path.of(entry).toUri().toString())
                .collect(Collectors.joining(" "));
    }

    private static void executable(Path file) throws IOException {
        Files.setPosixFilePermissions(file, PosixFilePermissions.fromString("rwxr-xr-x"));
    }

    /** What a run printed, and how it ended. */
    private record Ended(int exit, String output) {}

    /** Runs a command in a folder with an environment of its own. */
    private static Ended run(Path where, Map<String, String> environment, Object... command)
            throws IOException, InterruptedException {
        List<String> words = Stream.of(command).map(Object::toString).toList();
        ProcessBuilder builder =
                new ProcessBuilder(words).directory(where.toFile()).redirectErrorStream(true);
        builder.environment().clear();
        builder.environment().putAll(environment);
        Process process = builder.start();
        process.getOutputStream().close();
        String output = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        return new Ended(process.waitFor(), output);
    }

    private static Map<String, String> thisJava() {
        return Map.of("PATH", System.getenv("PATH"), "JAVA_HOME", System.getProperty("java.home"));
    }

    /** A Java that tells its version and prints what it is called with, each word in brackets. */
    private Map<String, String> javaThatPrints(String version, String... more) throws IOException {
        Path home = folder.resolve("java of version " + version);
        Path java = Files.createDirectories(home.resolve("bin")).resolve("java");
        Files.writeString(java, "#!/bin/sh\nprintf '[%s]' \"$@\"\n");
        executable(java);
        Files.writeString(
                home.resolve("release"), "IMPLEMENTOR=\"N\"\nJAVA_VERSION=\"" + version + "\"\nOS_NAME=\"O\"\n");
        Map<String, String> environment = new HashMap<>();
        environment.put("PATH", System.getenv("PATH"));
        environment.put("JAVA_HOME", home.toString());
        for (int i = 0; i < more.length; i += 2) {
            environment.put(more[i], more[i + 1]);
        }
        return environment;
    }

    @Test
    void it_finds_its_jar_from_another_folder_and_through_links() throws Exception {
        Path elsewhere = Files.createDirectory(folder.resolve("elsewhere"));
        Files.createSymbolicLink(elsewhere.resolve("first"), Path.of("..", "installed here", "benchmetre"));
        Files.createSymbolicLink(elsewhere.resolve("second"), elsewhere.resolve("first"));

        for (Object name : List.of(launcher, "../installed here/benchmetre", "./first", elsewhere.resolve("second"))) {
            Ended ended = run(elsewhere, thisJava(), name, "--version");

            assertThat(ended.output()).startsWith("benchmetre ").hasLineCount(1);
            assertThat(ended.exit()).isZero();
        }
        assertThat(run(elsewhere, thisJava(), "./first", "explain", SAMPLE, "bench_metres")
                        .output())
                .startsWith("Bench metres (bench_metres) = ");
    }

    @Test
    void it_finds_its_jar_when_a_shell_reads_it_in_its_own_folder() throws Exception {
        Ended ended = run(launcher.getParent(), thisJava(), "/bin/sh", "benchmetre", "--version");

        assertThat(ended.output()).startsWith("benchmetre ").hasLineCount(1);
        assertThat(ended.exit()).isZero();
    }

    @Test
    void exit_codes_and_arguments_pass_through() throws Exception {
        Ended faults = run(folder, thisJava(), launcher, "check", "no such * folder");

        assertThat(faults.exit()).isEqualTo(1);
        assertThat(faults.output()).contains("no such * folder");
        assertThat(run(folder, thisJava(), launcher).exit()).isEqualTo(2);
    }

    @Test
    void the_first_java_on_the_path_serves_where_java_home_is_not_set() throws Exception {
        String path = Path.of(System.getProperty("java.home"), "bin") + File.pathSeparator + System.getenv("PATH");

        assertThat(run(folder, Map.of("PATH", path), launcher, "--version").exit())
                .isZero();
    }

    @Test
    void without_java_it_says_what_to_do() throws Exception {
        Ended none = run(folder, Map.of("PATH", folder.toString()), launcher, "check", SAMPLE);
        Ended wrong = run(folder, Map.of("JAVA_HOME", "/no/such/folder"), launcher, "check", SAMPLE);

        assertThat(none.output())
                .isEqualTo("benchmetre: there is no java on the PATH; install Java 17 or newer, or set JAVA_HOME to its"
                        + " folder.\n");
        assertThat(none.exit()).isEqualTo(NO_JAVA);
        assertThat(wrong.output())
                .isEqualTo("benchmetre: JAVA_HOME is '/no/such/folder', but there is no bin/java in it.\n");
        assertThat(wrong.exit()).isEqualTo(NO_JAVA);
    }

    @Test
    void without_its_jar_it_says_so() throws Exception {
        Files.delete(launcher.resolveSibling("benchmetre.jar"));

        Ended ended = run(folder, thisJava(), launcher, "--version");

        assertThat(ended.output()).contains("there is no ", "benchmetre.jar", "mvn package");
        assertThat(ended.exit()).isEqualTo(NO_JAVA);
    }

    @Test
    void an_older_java_is_refused_and_a_newer_one_is_not() throws Exception {
        for (String old : List.of("11.0.2", "1.8.0_292", "16")) {
            Ended ended = run(folder, javaThatPrints(old), launcher, "price");

            assertThat(ended.output())
                    .startsWith("benchmetre: Java 17 or newer is needed, but ")
                    .contains(old);
            assertThat(ended.exit()).isEqualTo(NO_JAVA);
        }
        for (String fit : List.of("17", "17.0.15", "21-ea", "100.1")) {
            assertThat(run(folder, javaThatPrints(fit), launcher, "price").output())
                    .endsWith("[price]");
        }
    }

    @Test
    void an_older_java_that_has_no_release_file_is_asked() throws Exception {
        Map<String, String> environment = javaThatPrints("unknown");
        Path home = Path.of(environment.get("JAVA_HOME"));
        Files.delete(home.resolve("release"));
        Files.writeString(
                home.resolve("bin").resolve("java"),
                "#!/bin/sh\necho 'Picked up JAVA_TOOL_OPTIONS: -Dx' >&2\necho 'java version \"1.8.0_292\"' >&2\n");

        Ended ended = run(folder, environment, launcher, "price");

        assertThat(ended.output()).contains("is version 1.8.0_292.");
        assertThat(ended.exit()).isEqualTo(NO_JAVA);
    }

    @ParameterizedTest
    @MethodSource("org.benchmetre.batch.WindowsLauncherTest#commands")
    void every_command_of_today_is_a_short_run(String command) throws Exception {
        assertThat(run(folder, javaThatPrints("17"), launcher, command).output())
                .contains(QUICK, "[-XX:+UseSerialGC]", "[-Xshare:auto]")
                .endsWith("[-jar][" + launcher.resolveSibling("benchmetre.jar") + "][" + command + "]");
    }

    @Test
    void a_command_it_does_not_know_has_all_that_java_has() throws Exception {
        assertThat(run(folder, javaThatPrints("17"), launcher, "some-long-command")
                        .output())
                .doesNotContain("TieredStopAtLevel", "GC")
                .endsWith("[some-long-command]");
    }

    @Test
    void options_of_the_environment_come_last_and_win() throws Exception {
        Map<String, String> environment =
                javaThatPrints("17", "JAVA_OPTS", "-Xmx1g -Dfiles=*", "BENCHMETRE_OPTS", "-XX:+UseG1GC");

        assertThat(run(launcher.getParent(), environment, launcher, "price").output())
                .contains(QUICK, "[-Xmx1g][-Dfiles=*][-XX:+UseG1GC][-jar]")
                .doesNotContain("UseSerialGC");
    }

    @Test
    void it_starts_from_the_archive_of_classes_where_there_is_one() throws Exception {
        Path archive = Files.createFile(launcher.resolveSibling("benchmetre.jsa"));

        assertThat(run(folder, javaThatPrints("17"), launcher, "price").output())
                .contains("[-XX:SharedArchiveFile=" + archive + "]");
    }

    @Test
    void an_archive_that_does_not_fit_is_passed_over_in_silence() throws Exception {
        Files.writeString(launcher.resolveSibling("benchmetre.jsa"), "made by another Java");

        Ended ended = run(folder, thisJava(), launcher, "--version");

        assertThat(ended.output()).startsWith("benchmetre ").hasLineCount(1);
        assertThat(ended.exit()).isZero();
    }
}
