package org.benchmetre.batch;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What was printed but not written is told; a reader who has enough is no fault. */
class CheckedOutputTest {

    private static final Path FULL = Path.of("/dev/full");

    /** Takes so many bytes, then fails. */
    private static final class Failing extends OutputStream {

        private final String message;
        private int room;

        Failing(int room, String message) {
            this.room = room;
            this.message = message;
        }

        @Override
        public void write(int one) throws IOException {
            room--;
            if (room < 0) {
                throw new IOException(message);
            }
        }
    }

    private final ByteArrayOutputStream err = new ByteArrayOutputStream();

    private String told() {
        return err.toString(StandardCharsets.UTF_8);
    }

    @ParameterizedTest
    @ValueSource(ints = {0, 1, 131_072})
    void a_full_disk_is_told_and_is_no_success(int room) {
        int exit = Main.run(new Failing(room, "No space left on device"), err, "price", Ran.SAMPLE.toString(), "--csv");

        assertThat(exit).isEqualTo(3);
        assertThat(told()).isEqualTo("Not all of the output could be written: No space left on device.\n");
    }

    @ParameterizedTest
    @ValueSource(strings = {"lines", "check", "irrigation", "fund", "price"})
    void every_command_looks_at_what_it_printed(String command) {
        assertThat(Main.run(new Failing(0, "Input/output error"), err, command, Ran.SAMPLE.toString()))
                .isEqualTo(3);
        assertThat(told()).isEqualTo("Not all of the output could be written: Input/output error.\n");
    }

    @Test
    void help_that_could_not_be_printed_is_no_success() {
        assertThat(Main.run(new Failing(10, "No space left on device"), err, "--help"))
                .isEqualTo(3);
    }

    @Test
    void warnings_that_could_not_be_printed_are_no_success() {
        OutputStream out = new ByteArrayOutputStream();

        assertThat(Main.run(out, new Failing(0, "full"), "check", Ran.SAMPLE.toString(), "--set", "bench_count=9000"))
                .isEqualTo(3);
    }

    @Test
    void a_reader_who_leaves_is_no_fault() {
        assertThat(Main.run(new Failing(100, "Broken pipe"), err, "price", Ran.SAMPLE.toString(), "--csv"))
                .isZero();
        assertThat(told()).isEmpty();
    }

    @Test
    void another_exit_code_stays() {
        assertThat(Main.run(new Failing(0, "full"), err, "price", "nowhere")).isEqualTo(1);
        assertThat(Main.run(new Failing(0, "full"), err, "price")).isEqualTo(2);
    }

    private static ProcessBuilder price() {
        String java = Path.of(System.getProperty("java.home"), "bin", "java").toString();
        return new ProcessBuilder(
                java,
                "-cp",
                System.getProperty("java.class.path"),
                Main.class.getName(),
                "price",
                Ran.SAMPLE.toString(),
                "--csv");
    }

    private static String text(InputStream stream) throws IOException {
        return new String(stream.readAllBytes(), StandardCharsets.UTF_8);
    }

    @Test
    void a_device_without_room_is_a_full_disk() throws Exception {
        assumeTrue(Files.exists(FULL), "There is no " + FULL + " here.");

        Process process = price().redirectOutput(FULL.toFile()).start();

        assertThat(text(process.getErrorStream()))
                .startsWith("Not all of the output could be written: ")
                .hasLineCount(1);
        assertThat(process.waitFor()).isEqualTo(3);
    }

    @Test
    void the_first_line_may_be_read_alone() throws Exception {
        Process process = price().start();
        assertThat(process.inputReader(StandardCharsets.UTF_8).readLine()).isEqualTo("line,index,value,unit");
        process.getInputStream().close();

        assertThat(text(process.getErrorStream())).isEmpty();
        assertThat(process.waitFor()).isZero();
    }
}
