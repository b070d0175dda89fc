package org.benchmetre.batch;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;

/** One run of the command, as a user sees it. */
record Ran(int exit, String out, String err) {

    /** A house of which nothing is told. */
    static final Path SAMPLE = Path.of("..", "samples", "trough-house");

    /** Another one. */
    static final Path CONTAINERS = Path.of("..", "samples", "container-house");

    static Ran with(Object... arguments) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        ByteArrayOutputStream err = new ByteArrayOutputStream();
        int exit = Main.run(out, err, Stream.of(arguments).map(Object::toString).toArray(String[]::new));
        return new Ran(exit, out.toString(StandardCharsets.UTF_8), err.toString(StandardCharsets.UTF_8));
    }

    List<String> outLines() {
        return out.lines().toList();
    }

    List<String> errLines() {
        return err.lines().toList();
    }

    /** A copy of the sample to spoil. */
    static Path copy(Path into) {
        Path folder = into.resolve("scenario");
        try (Stream<Path> files = Files.list(SAMPLE)) {
            Files.createDirectory(folder);
            for (Path file : files.toList()) {
                Files.copy(file, folder.resolve(file.getFileName()));
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return folder;
    }

    /** Replaces a text that must be there. */
    static void replace(Path file, String old, String with) {
        try {
            String text = Files.readString(file, StandardCharsets.UTF_8);
            if (!text.contains(old)) {
                throw new IllegalStateException(file + " does not have '" + old + "'.");
            }
            Files.writeString(file, text.replace(old, with), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
