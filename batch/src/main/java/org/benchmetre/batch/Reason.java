package org.benchmetre.batch;

import java.nio.file.AccessDeniedException;
import java.nio.file.FileSystemException;
import java.nio.file.NoSuchFileException;
import java.util.Optional;

/** Why something could not be written, in words that follow a colon. */
final class Reason {

    private Reason() {}

    static String of(Exception problem) {
        if (problem instanceof NoSuchFileException) {
            return "the folder around it does not exist";
        }
        if (problem instanceof AccessDeniedException) {
            return "access is denied";
        }
        String told = problem instanceof FileSystemException e ? e.getReason() : problem.getMessage();
        return Optional.ofNullable(told).orElse(problem.getClass().getSimpleName());
    }
}
