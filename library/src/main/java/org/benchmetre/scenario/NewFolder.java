package org.benchmetre.scenario;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/** Writes files into a new or empty folder, all of them or none. */
public final class NewFolder {

    private static final int TRIES = 1000;

    private NewFolder() {}

    /**
     * Writes the files. They are written beside the folder and moved into place; when that fails, nothing of them is left.
     *
     * @param folder where they go; the folder around it exists
     * @param files text by name
     * @throws FileAlreadyExistsException when the folder exists and is not empty, or is a file; it is left as it is
     * @throws IOException when the folder cannot be written
     */
    public static void write(Path folder, Map<String, String> files) throws IOException {
        Path target = folder.toAbsolutePath().normalize();
        refuseFilled(target);
        Path part = newPart(target);
        try {
            for (Map.Entry<String, String> file : files.entrySet()) {
                Files.writeString(part.resolve(file.getKey()), file.getValue(), StandardCharsets.UTF_8);
            }
            if (Files.isDirectory(target)) {
                moveFiles(part, target, files.keySet());
            } else {
                Files.move(part, target);
            }
        } finally {
            delete(part, files.keySet());
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

    /** An empty folder stays the folder it was, because somebody may stand in it. */
    private static void moveFiles(Path part, Path target, Collection<String> names) throws IOException {
        List<Path> moved = new ArrayList<>();
        try {
            for (String name : names) {
                moved.add(Files.move(part.resolve(name), target.resolve(name)));
            }
        } catch (IOException e) {
            for (Path file : moved) {
                Files.deleteIfExists(file);
            }
            throw e;
        }
    }

    private static void delete(Path part, Collection<String> names) throws IOException {
        for (String name : names) {
            Files.deleteIfExists(part.resolve(name));
        }
        Files.deleteIfExists(part);
    }
}
