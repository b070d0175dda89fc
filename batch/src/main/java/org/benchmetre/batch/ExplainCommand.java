package org.benchmetre.batch;

import org.benchmetre.Plan;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Tells where a figure comes from. */
@Command(
        name = "explain",
        description =
                "Tells where a figure comes from: its formula, what that reads, down to the entries and their sources.")
final class ExplainCommand extends ScenarioCommand {

    @Parameters(
            index = "1",
            paramLabel = "ADDRESS",
            description = "A line, with keys when it has more than one value: first_cost_per_metre,"
                    + " material_quantity[tape].")
    private String text;

    @Option(
            names = "--depth",
            paramLabel = "LEVELS",
            defaultValue = "" + Integer.MAX_VALUE,
            showDefaultValue = CommandLine.Help.Visibility.NEVER,
            description = "How many formulas deep, 1 or more; all of them unless given.")
    private int depth;

    @Override
    int run(Plan plan) {
        if (depth < 1) {
            throw usage("--depth is 1 or more, but found " + depth + ".");
        }
        return explain(plan.figures(), text, depth);
    }
}
