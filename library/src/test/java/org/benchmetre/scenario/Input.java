package org.benchmetre.scenario;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

/** Writes small input files for the tests, and reads them. */
final class Input {

    private final Path folder;
    private final Faults faults = new Faults();

    Input(Path folder) {
        this.folder = folder;
    }

    Faults faults() {
        return faults;
    }

    Path file(String name, byte[] bytes) {
        try {
            return Files.write(folder.resolve(name), bytes);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    Path file(String name, String... lines) {
        return file(name, (String.join("\n", lines) + "\n").getBytes(StandardCharsets.UTF_8));
    }

    CsvTable table(String... lines) {
        return CsvTable.read(file("parts.csv", lines), faults);
    }

    /** The only row of a table with one cell below the header {@code cell}. */
    Row cell(String text) {
        return table("first,cell", "x,\"" + text.replace("\"", "\"\"") + "\"")
                .rows()
                .get(0);
    }

    List<String> messages() {
        return faults.faults().stream().map(Fault::message).toList();
    }

    List<String> warnings() {
        return faults.warnings().stream().map(Remark::message).toList();
    }

    List<String> notes() {
        return faults.notes().stream().map(Remark::message).toList();
    }
}
