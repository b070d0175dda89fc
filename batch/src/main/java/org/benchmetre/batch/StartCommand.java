package org.benchmetre.batch;

import java.io.IOException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import org.benchmetre.Starter;
import org.benchmetre.budget.entry.Quoted;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Gives a grower a scenario to begin with. */
@Command(
        name = "start",
        description = "Writes a commented starter scenario, an invented house, to a new folder.",
        mixinStandardHelpOptions = true,
        versionProvider = Version.class,
        usageHelpWidth = 100,
        sortOptions = false,
        descriptionHeading = "%n",
        parameterListHeading = "%n",
        optionListHeading = "%n",
        exitCodeListHeading = Exit.HEADING,
        exitCodeList = {Exit.ZERO, Exit.TWO, "3:the folder could not be written, or exists and is not empty"})
final class StartCommand implements Callable<Integer> {

    @Spec
    private CommandSpec spec;

    @Parameters(index = "0", paramLabel = "FOLDER", description = "The folder to write: a new or an empty one.")
    private Path folder;

    @Override
    public Integer call() {
        try {
            Starter.copyTo(folder);
        } catch (IOException e) {
            return notWritten(reason(e));
        }
        spec.commandLine()
                .getOut()
                .print(Quoted.visible("Wrote " + folder + "; its README.md tells how to go on.") + "\n");
        spec.commandLine().getOut().flush();
        return Exit.DONE;
    }

    private int notWritten(String why) {
        spec.commandLine()
                .getErr()
                .print(Quoted.visible("The folder " + folder + " could not be written: " + why + ".") + "\n");
        spec.commandLine().getErr().flush();
        return Exit.NOT_WRITTEN;
    }

    private String reason(IOException problem) {
        if (problem instanceof FileAlreadyExistsException) {
            return Files.isDirectory(folder) ? "it exists, is not empty, and is left as it is" : "a file has its name";
        }
        return Reason.of(problem);
    }
}
