package org.benchmetre.batch;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.benchmetre.Benchmetre;
import org.benchmetre.Plan;
import org.benchmetre.ScenarioException;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;

/** What most commands share: they read one scenario, tell everything found in it on standard error, and go on if there is no fault. */
@Command
abstract class ScenarioCommand extends ReadingCommand {

    @Parameters(index = "0", paramLabel = "SCENARIO", description = "The scenario: a folder of CSV files.")
    private Path scenario;

    @Override
    final int read(Optional<Path> priceList, List<String> changes) throws ScenarioException {
        Plan plan = Benchmetre.read(scenario, priceList, changes);
        tell("Warning: ", plan.warnings());
        tell("Note: ", plan.notes());
        return run(plan);
    }

    /** Does what the command is for. */
    abstract int run(Plan plan);

    /** The scenario as it was named on the command line. */
    final Path scenario() {
        return scenario;
    }
}
