package org.benchmetre.batch;

import java.io.PrintWriter;
import org.benchmetre.budget.entry.Quoted;
import picocli.CommandLine;
import picocli.CommandLine.IParameterExceptionHandler;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.UnmatchedArgumentException;

/** Tells what is wrong with a command line, and what it could have been. */
final class WrongUse implements IParameterExceptionHandler {

    @Override
    public int handleParseException(ParameterException problem, String[] arguments) {
        CommandLine command = problem.getCommandLine();
        PrintWriter err = command.getErr();
        err.print(Quoted.visible(problem.getMessage()) + "\n");
        if (!UnmatchedArgumentException.printSuggestions(problem, err)) {
            command.usage(err);
        }
        err.flush();
        return Exit.USAGE;
    }
}
