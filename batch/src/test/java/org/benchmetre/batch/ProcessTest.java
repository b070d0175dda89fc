package org.benchmetre.batch;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What only a Java machine of its own shows: classes loaded, bytes printed, exit codes. */
class ProcessTest {

    private static final String LOADED_FROM_POI = "org.apache.poi.";

    @TempDir
    Path folder;

    private String output(List<String> machine, int exit, String... arguments)
            throws IOException, InterruptedException {
        List<String> command = new ArrayList<>();
        command.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
        command.addAll(machine);
        command.addAll(List.of("-cp", System.getProperty("java.class.path"), Main.class.getName()));
        command.addAll(List.of(arguments));
        Process process = new ProcessBuilder(command).redirectErrorStream(true).start();
        String output = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        assertThat(process.waitFor()).as(output).isEqualTo(exit);
        return output;
    }

    @ParameterizedTest
    @ValueSource(strings = {"price", "lines", "check", "explain"})
    void commands_without_a_workbook_do_not_load_the_spreadsheet_library(String command) throws Exception {
        String[] arguments = command.equals("explain")
                ? new String[] {command, Ran.SAMPLE.toString(), "bench_metres"}
                : new String[] {command, Ran.SAMPLE.toString()};

        String output = output(List.of("-verbose:class"), 0, arguments);

        assertThat(output).contains("org.benchmetre.Benchmetre ").doesNotContain(LOADED_FROM_POI);
    }

    @Test
    void the_workbook_command_does_load_it() throws Exception {
        String target = folder.resolve("house.xlsx").toString();

        assertThat(output(List.of("-verbose:class"), 0, "workbook", Ran.SAMPLE.toString(), "-o", target))
                .contains(LOADED_FROM_POI);
    }

    @Test
    void output_is_utf_8_with_points_whatever_the_locale() throws Exception {
        List<String> machine = List.of("-Dfile.encoding=ISO-8859-1", "-Duser.language=de", "-Duser.country=DE");

        assertThat(output(machine, 0, "price", Ran.SAMPLE.toString()))
                .contains(" m² ", "returns by, USD/m²/yr")
                .containsPattern("First cost \\(to build\\) +[0-9]+\\.[0-9]{2}");
    }

    @Test
    void the_exit_code_of_a_command_is_that_of_the_program() throws Exception {
        output(List.of(), 1, "price", folder.resolve("nowhere").toString());
        output(List.of(), 2, "price");
    }
}
