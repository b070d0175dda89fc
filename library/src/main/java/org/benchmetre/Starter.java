package org.benchmetre;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

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

    private static final int TRIES = 1000;

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
        Path target = folder.toAbsolutePath().normalize();
        refuseFilled(target);
        Path part = newPart(target);
        try {
            for (String name : FILES) {
                copy(name, part.resolve(name));
            }
            if (Files.isDirectory(target)) {
                moveFiles(part, target);
            } else {
                Files.move(part, target);
            }
        } finally {
            delete(part);
        }
    }

    private static void refuseFilled(Path target) throws IOException {
        if (Files.exists(target) && !isEmptyFolder(target)) {
            throw new FileAlreadyExistsException(target.toString(), null, "It is not an empty folder.");
        }
    }

    private static boolean isEmptyFolder(Path target) throws IOException {
        if (!Files.isDirectory(target)) {
            return false;
        }
        try (Stream<Path> found = Files.list(target)) {
            return found.findAny().isEmpty();
        }
    }

    /** Not a temporary folder of the system's making: that would be closed to everybody else. */
    private static Path newPart(Path target) throws IOException {
        for (int i = 0; i < TRIES; i++) {
            Path part = target.resolveSibling("." + target.getFileName() + "." + i + ".part");
            try {
                return Files.createDirectory(part);
            } catch (FileAlreadyExistsException taken) {
                continue;
            }
        }
        throw new IOException("There is no free name beside " + target + " to write it under first.");
    }

    private static void copy(String name, Path file) throws IOException {
        try (InputStream packed = Starter.class.getResourceAsStream("templates/starter/" + name)) {
            if (packed == null) {
                throw new IllegalStateException("The library was packed without " + name + " of the starter scenario.");
            }
            Files.copy(packed, file);
        }
    }

    /** An empty folder stays the folder it was, because somebody may stand in it. */
    private static void moveFiles(Path part, Path target) throws IOException {
        List<Path> moved = new ArrayList<>();
        try {
            for (String name : FILES) {
                moved.add(Files.move(part.resolve(name), target.resolve(name)));
            }
        } catch (IOException e) {
            for (Path file : moved) {
                Files.deleteIfExists(file);
            }
            throw e;
        }
    }

    private static void delete(Path part) throws IOException {
        for (String name : FILES) {
            Files.deleteIfExists(part.resolve(name));
        }
        Files.deleteIfExists(part);
    }
}
