package org.benchmetre.workbook;

import java.io.IOException;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;

/** Writes a file beside its target and moves it into place, so that nobody ever finds half of it. */
final class SafeFile {

    private static final int TRIES = 1000;

    private SafeFile() {}

    static void refuseExisting(Path target, boolean overwrite) throws TargetExistsException {
        if (!overwrite && Files.exists(target)) {
            throw new TargetExistsException(target);
        }
    }

    static void write(byte[] bytes, Path target, boolean overwrite) throws IOException {
        refuseExisting(target, overwrite);
        Path part = newPart(target);
        try {
            Files.write(part, bytes, StandardOpenOption.TRUNCATE_EXISTING);
            refuseExisting(target, overwrite);
            move(part, target);
        } finally {
            Files.deleteIfExists(part);
        }
    }

    private static Path newPart(Path target) throws IOException {
        for (int i = 0; i < TRIES; i++) {
            Path part = target.resolveSibling("." + target.getFileName() + "." + i + ".part");
            try {
                return Files.createFile(part);
            } catch (FileAlreadyExistsException taken) {
                continue;
            }
        }
        throw new IOException("There is no free name beside " + target + " to write it under first.");
    }

    private static void move(Path part, Path target) throws IOException {
        try {
            Files.move(part, target, StandardCopyOption.ATOMIC_MOVE);
        } catch (AtomicMoveNotSupportedException notHere) {
            Files.move(part, target, StandardCopyOption.REPLACE_EXISTING);
        }
    }
}
