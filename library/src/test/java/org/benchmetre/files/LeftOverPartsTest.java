package org.benchmetre.files;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What another run holds is left alone while that run lives, and cleared when it was killed. */
class LeftOverPartsTest {

    private static final long SECONDS = 60;

    @TempDir
    Path folder;

    /** Another run, in the middle of its writing: holds a part and its folder, says so, and waits to be killed. */
    static final class Holding {

        private Holding() {}

        public static void main(String[] arguments) throws IOException {
            PartLock lock = Parts.make(Path.of(arguments[0]));
            Files.writeString(Files.createDirectory(Parts.folderOf(lock.file())).resolve("farm.csv"), "half");
            System.out.println("held");
            System.in.read();
            lock.close();
        }
    }

    private List<Path> found() throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            return files.sorted().toList();
        }
    }

    private Process otherRun() throws IOException {
        Process process = new ProcessBuilder(
                        Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                        "-cp",
                        System.getProperty("java.class.path"),
                        Holding.class.getName(),
                        folder.toString())
                .start();
        assertThat(process.inputReader().readLine()).isEqualTo("held");
        return process;
    }

    @Test
    void the_part_of_a_living_run_is_kept_and_that_of_a_killed_one_cleared() throws Exception {
        Process other = otherRun();
        try {
            SafeFile.write(new byte[] {1}, folder.resolve("a.xlsx"), false);
            assertThat(found()).hasSize(3);
        } finally {
            other.destroyForcibly();
        }
        assertThat(other.waitFor(SECONDS, TimeUnit.SECONDS)).isTrue();

        SafeFolder.write(folder.resolve("house"), part -> Files.writeString(part.resolve("farm.csv"), "whole"));

        assertThat(found()).containsExactly(folder.resolve("a.xlsx"), folder.resolve("house"));
        assertThat(folder.resolve("house").resolve("farm.csv")).hasContent("whole");
    }

    @Test
    void the_parts_of_this_run_are_kept() throws IOException {
        try (PartLock own = Parts.make(folder)) {
            Parts.clear(folder);
            assertThat(own.file()).exists();
        }
        Parts.clear(folder);
        assertThat(found()).isEmpty();
    }

    @Test
    void what_only_looks_alike_is_kept() throws IOException {
        List<Path> mine = List.of(
                Files.writeString(folder.resolve(".benchmetre-mine.part"), "mine"),
                Files.writeString(folder.resolve(".house.part"), "mine"),
                Files.writeString(folder.resolve("benchmetre-1-1.part"), "mine"));

        Parts.clear(folder);

        assertThat(found()).containsExactlyInAnyOrderElementsOf(mine);
    }

    @Test
    void what_cannot_be_filled_leaves_nothing_behind() throws IOException {
        IOException full = new IOException("No space left on device");

        org.assertj.core.api.Assertions.assertThatThrownBy(() -> SafeFolder.write(folder.resolve("house"), part -> {
                    Files.writeString(part.resolve("farm.csv"), "half");
                    throw full;
                }))
                .isSameAs(full);

        assertThat(found()).isEmpty();
    }
}
