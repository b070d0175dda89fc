package org.benchmetre.batch;

import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.util.Optional;
import org.benchmetre.budget.entry.Quoted;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** The command {@code benchmetre}. */
@Command(
        name = "benchmetre",
        description = "Prices a soilless bench crop by the metre of bench.",
        mixinStandardHelpOptions = true,
        versionProvider = Version.class,
        usageHelpWidth = 100,
        synopsisSubcommandLabel = "COMMAND",
        descriptionHeading = "%n",
        optionListHeading = "%n",
        commandListHeading = "%nCommands:%n",
        exitCodeListHeading = Exit.HEADING,
        exitCodeList = {Exit.ZERO, Exit.ONE, Exit.TWO, Exit.THREE, Exit.FOUR},
        footer = {"", "benchmetre COMMAND --help tells the options of a command."},
        subcommands = {
            StartCommand.class,
            PriceCommand.class,
            IrrigationCommand.class,
            FundCommand.class,
            CompareCommand.class,
            WorkbookCommand.class,
            LinesCommand.class,
            ExplainCommand.class,
            CheckCommand.class
        })
public final class Main implements Runnable {

    @Spec
    private CommandSpec spec;

    Main() {}

    /** Answers that a command is missing, which is wrong usage. */
    @Override
    public void run() {
        throw new ParameterException(spec.commandLine(), "A command is missing.");
    }

    /**
     * Runs one command and ends with its exit code, which only {@link System#exit} hands to who started it. It prints straight to the
     * descriptors: {@link System#out} swallows the reason why something could not be written.
     *
     * @param arguments as typed
     */
    public static void main(String[] arguments) {
        System.exit(run(new FileOutputStream(FileDescriptor.out), new FileOutputStream(FileDescriptor.err), arguments));
    }

    /** Runs one command and looks whether all that it printed was written. */
    static int run(OutputStream standard, OutputStream error, String... arguments) {
        CheckedOutput out = new CheckedOutput(standard);
        CheckedOutput err = new CheckedOutput(error);
        int exit = commandLine().setOut(out.writer()).setErr(err.writer()).execute(arguments);
        Optional<IOException> lost = out.failure();
        lost.ifPresent(problem -> err.writer()
                .print(Quoted.visible("Not all of the output could be written: " + Reason.of(problem) + ".") + "\n"));
        boolean failed = err.failure().isPresent() || lost.isPresent();
        return exit == Exit.DONE && failed ? Exit.NOT_WRITTEN : exit;
    }

    /** The command line, writing to standard output and error unless told otherwise. */
    static CommandLine commandLine() {
        return new CommandLine(new Main()).setExpandAtFiles(false).setParameterExceptionHandler(new WrongUse());
    }
}
