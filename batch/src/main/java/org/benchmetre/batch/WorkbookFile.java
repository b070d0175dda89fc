package org.benchmetre.batch;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Optional;
import org.benchmetre.workbook.TargetExistsException;

/**
 * The workbook that a command was told to write.
 *
 * @param target an .xlsx file
 * @param overwrite whether an existing file is replaced
 */
record WorkbookFile(Path target, boolean overwrite) {

    /** What writes the workbook. */
    @FunctionalInterface
    interface Drawn {

        /** Writes to a file, which is replaced only if so asked. */
        void write(Path target, boolean overwrite) throws IOException;
    }

    /** What is wrong with the name of the file, as a sentence. */
    Optional<String> wrongName() {
        boolean named = target.toString().toLowerCase(Locale.ROOT).endsWith(".xlsx");
        return named ? Optional.empty() : Optional.of("A workbook is an .xlsx file, but found " + target + ".");
    }

    /** Writes it, and answers why it was not written. */
    Optional<String> write(Drawn workbook) {
        try {
            workbook.write(target, overwrite);
            return Optional.empty();
        } catch (TargetExistsException e) {
            return notWritten("exists and is left as it is; --overwrite replaces it");
        } catch (IOException | UncheckedIOException e) {
            return notWritten("could not be written: " + reason(e));
        }
    }

    private Optional<String> notWritten(String why) {
        return Optional.of("The file " + target + " " + why + ".");
    }

    private String reason(Exception problem) {
        if (problem instanceof NoSuchFileException) {
            return "its folder does not exist";
        }
        if (problem instanceof AccessDeniedException) {
            return "access is denied";
        }
        return Files.isDirectory(target) ? "it is a folder" : String.valueOf(problem.getMessage());
    }
}
