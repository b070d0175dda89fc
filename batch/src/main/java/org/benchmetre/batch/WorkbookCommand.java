package org.benchmetre.batch;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import org.benchmetre.FarmWorkbook;
import org.benchmetre.Plan;
import org.benchmetre.workbook.TargetExistsException;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** Writes the filled workbook. */
@Command(
        name = "workbook",
        description = "Writes the scenario as a live workbook: every derived figure is a formula over the entries.")
final class WorkbookCommand extends ScenarioCommand {

    @Option(
            names = {"-o", "--output"},
            paramLabel = "FILE",
            required = true,
            description = "The workbook to write, an .xlsx file.")
    private Path target;

    @Option(names = "--overwrite", description = "Replaces the file when it exists.")
    private boolean overwrite;

    @Override
    int run(Plan plan) {
        try {
            FarmWorkbook.write(plan.figures(), target, overwrite);
        } catch (TargetExistsException e) {
            return notWritten("exists and is left as it is; --overwrite replaces it");
        } catch (IOException | UncheckedIOException e) {
            return notWritten("could not be written: " + reason(e));
        }
        print("Wrote " + target + ".\n");
        return Exit.DONE;
    }

    private int notWritten(String why) {
        err().print("The file " + target + " " + why + ".\n");
        err().flush();
        return Exit.NOT_WRITTEN;
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
