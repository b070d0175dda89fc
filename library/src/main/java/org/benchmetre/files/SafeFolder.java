package org.benchmetre.files;

import java.io.IOException;
import java.nio.file.DirectoryStream;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/**
 * Writes a folder of files beside its target and moves it into place, so that nobody ever finds half of it; not a temporary folder of the
 * system's making, which would be closed to everybody else. Only a new or an empty
 * folder is written, and no file in it is ever replaced.
 */
public final class SafeFolder {

    private SafeFolder() {}

    /** Puts files into a folder. */
    @FunctionalInterface
    public interface Filling {

        /**
         * Writes the files.
         *
         * @param folder an empty folder
         * @throws IOException when one cannot be written
         */
        void fill(Path folder) throws IOException;
    }

    /**
     * Writes a folder.
     *
     * @param folder where the files go; the folder around it exists
     * @param filling writes them, plain files without folders
     * @throws FileAlreadyExistsException when the folder exists and is not empty, or is a file; it is left as it is
     * @throws IOException when it cannot be written; nothing is left behind
     */
    public static void write(Path folder, Filling filling) throws IOException {
        Path target = folder.toAbsolutePath().normalize();
        refuseFilled(target);
        Path around = target.getParent();
        Parts.clear(around);
        try (PartLock lock = Parts.make(around)) {
            Path part = Parts.folderOf(lock.file());
            try {
                Files.createDirectory(part);
                filling.fill(part);
                move(part, target);
            } finally {
                Parts.deleteFolder(part);
                Files.deleteIfExists(lock.file());
            }
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

    private static void move(Path part, Path target) throws IOException {
        if (Files.isDirectory(target)) {
            moveFiles(part, target);
        } else {
            Files.move(part, target);
        }
    }

    /** An empty folder stays the folder it was, because somebody may stand in it. */
    private static void moveFiles(Path part, Path target) throws IOException {
        List<Path> moved = new ArrayList<>();
        try (DirectoryStream<Path> files = Files.newDirectoryStream(part)) {
            for (Path file : files) {
                Path place = target.resolve(file.getFileName());
                Parts.place(file, place);
                moved.add(place);
            }
        } catch (IOException e) {
            for (Path file : moved) {
                Files.deleteIfExists(file);
            }
            throw e;
        }
    }
}
