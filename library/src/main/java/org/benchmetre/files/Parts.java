package org.benchmetre.files;

import java.io.IOException;
import java.nio.file.DirectoryIteratorException;
import java.nio.file.DirectoryStream;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Pattern;

/**
 * Files in the making, {@code .benchmetre-PROCESS-MOMENT.part}; one that stands for a folder in the making has that beside it. What a
 * killed run leaves over is removed by the next one that writes to the same folder.
 */
final class Parts {

    private static final Pattern NAME = Pattern.compile("\\.benchmetre-[0-9]+-[0-9a-f]+\\.part");
    private static final int TRIES = 1000;

    private Parts() {}

    /** A new part in a folder, held until it is closed. */
    static PartLock make(Path folder) throws IOException {
        for (int i = 0; i < TRIES; i++) {
            String name = String.format(
                    Locale.ROOT,
                    ".benchmetre-%d-%x.part",
                    ProcessHandle.current().pid(),
                    System.nanoTime());
            Optional<PartLock> made = PartLock.create(folder.resolve(name));
            if (made.isPresent()) {
                return made.get();
            }
        }
        throw new FileSystemException(folder.toString(), null, "there is no free name to write under first");
    }

    /** Removes what killed runs left over in a folder. */
    static void clear(Path folder) {
        try (DirectoryStream<Path> found = Files.newDirectoryStream(folder, ".benchmetre-*.part")) {
            for (Path part : found) {
                if (NAME.matcher(part.getFileName().toString()).matches()) {
                    clear(part, folderOf(part));
                }
            }
        } catch (IOException | DirectoryIteratorException leftAlone) {
            return;
        }
    }

    private static void clear(Path part, Path folder) {
        PartLock.removeIfLeft(part, () -> {
            deleteFolder(folder);
            Files.deleteIfExists(part);
        });
    }

    /** The folder in the making that a part stands for. */
    static Path folderOf(Path part) {
        return part.resolveSibling(part.getFileName() + ".folder");
    }

    /** Deletes a folder with the plain files in it. */
    static void deleteFolder(Path folder) throws IOException {
        if (!Files.isDirectory(folder, LinkOption.NOFOLLOW_LINKS)) {
            return;
        }
        try (DirectoryStream<Path> files = Files.newDirectoryStream(folder)) {
            for (Path file : files) {
                Files.deleteIfExists(file);
            }
        }
        Files.deleteIfExists(folder);
    }

    /**
     * Gives a finished part its name without ever replacing anything: as a second name of the same file, or, where a file system has no
     * such links, by reserving the name first.
     */
    static void place(Path part, Path target) throws IOException {
        try {
            Files.createLink(target, part);
        } catch (FileAlreadyExistsException | NoSuchFileException e) {
            throw e;
        } catch (FileSystemException | UnsupportedOperationException noLinksHere) {
            reserve(part, target);
        }
    }

    /** The way without links. */
    static void reserve(Path part, Path target) throws IOException {
        Files.createFile(target);
        try {
            Files.move(part, target, StandardCopyOption.REPLACE_EXISTING);
        } catch (IOException e) {
            Files.deleteIfExists(target);
            throw e;
        }
    }
}
