package org.benchmetre;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.benchmetre.files.SafeFolder;

/** The starter scenario: an invented house with comments, to be made one's own. */
public final class Starter {

    /** What {@code templates/starter} holds; the jar cannot be asked. */
    static final List<String> FILES = List.of(
            "README.md",
            "channels.csv",
            "farm.csv",
            "irrigation.csv",
            "materials.csv",
            "months.csv",
            "plant_stock.csv",
            "stock_prices.csv",
            "tasks.csv");

    private Starter() {}

    /**
     * Copies the starter scenario into a new or empty folder. The files are written beside it and moved into place; when that
     * fails, nothing of them is left.
     *
     * @param folder where the scenario goes; the folder around it exists
     * @throws FileAlreadyExistsException when the folder exists and is not empty, or is a file; it is left as it is
     * @throws IOException when the folder cannot be written
     */
    public static void copyTo(Path folder) throws IOException {
        SafeFolder.write(folder, part -> {
            for (String name : FILES) {
                copy(name, part.resolve(name));
            }
        });
    }

    private static void copy(String name, Path file) throws IOException {
        try (InputStream packed = Starter.class.getResourceAsStream("templates/starter/" + name)) {
            if (packed == null) {
                throw new IllegalStateException("The library was packed without " + name + " of the starter scenario.");
            }
            Files.copy(packed, file);
        }
    }
}
