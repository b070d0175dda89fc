package org.benchmetre.batch;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * The workbook that a command was told to write.
 *
 * @param target an .xlsx file
 * @param overwrite whether an existing file is replaced
 * @param read files that were read, none of which it may be
 */
record WorkbookFile(Path target, boolean overwrite, List<Path> read) {

    /** What writes the workbook. */
    @FunctionalInterface
    interface Drawn {

        /** Writes to a file, which is replaced only if so asked. */
        void write(Path target, boolean overwrite) throws IOException;
    }

    /** Why the workbook must not go there, as a sentence. */
    Optional<String> wrongUse() {
        if (!target.toString().toLowerCase(Locale.ROOT).endsWith(".xlsx")) {
            return Optional.of("A workbook is an .xlsx file, but found " + target + ".");
        }
        return read.stream()
                .filter(this::isTarget)
                .findFirst()
                .map(file -> "The workbook would replace a file that was read, " + file + ".");
    }

    /** Whether both are one file, by whatever names. */
    private boolean isTarget(Path file) {
        try {
            return Files.isSameFile(file, target);
        } catch (IOException oneIsNotThere) {
            return false;
        }
    }

    /** Writes it, and answers why it was not written. */
    Optional<String> write(Drawn workbook) {
        try {
            workbook.write(target, overwrite);
            return Optional.empty();
        } catch (FileAlreadyExistsException e) {
            return notWritten("exists and is left as it is; --overwrite replaces it");
        } catch (IOException e) {
            return notWritten("could not be written: " + Reason.of(e));
        } catch (UncheckedIOException e) {
            return notWritten("could not be written: " + Reason.of(e.getCause()));
        }
    }

    private Optional<String> notWritten(String why) {
        return Optional.of("The file " + target + " " + why + ".");
    }
}
