package org.benchmetre.batch;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The launcher for Windows, read as a text on every system. It is not run. */
class WindowsLauncherTest {

    private static final Path SOURCE = Path.of("src", "main", "launcher", "benchmetre.cmd");

    static List<String> commands() {
        return new ArrayList<>(Main.commandLine().getSubcommands().keySet());
    }

    @ParameterizedTest
    @MethodSource("commands")
    void every_command_of_today_is_a_short_run(String command) throws IOException {
        assertThat(Files.readString(SOURCE)).containsPattern("in \\([a-z ]*\\b" + command + "\\b");
    }
}
