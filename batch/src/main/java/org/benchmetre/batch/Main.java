package org.benchmetre.batch;

import java.io.OutputStream;
import java.io.OutputStreamWriter;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
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
     * Runs one command and ends with its exit code.
     *
     * @param arguments as typed
     */
    public static void main(String[] arguments) {
        System.exit(
                commandLine().setOut(utf8(System.out)).setErr(utf8(System.err)).execute(arguments));
    }

    /** The command line, writing to standard output and error unless told otherwise. */
    static CommandLine commandLine() {
        return new CommandLine(new Main()).setExpandAtFiles(false);
    }

    private static PrintWriter utf8(OutputStream stream) {
        return new PrintWriter(new OutputStreamWriter(stream, StandardCharsets.UTF_8), true);
    }
}
