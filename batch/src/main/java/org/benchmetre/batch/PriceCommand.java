package org.benchmetre.batch;

import org.benchmetre.Plan;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** Prints what a scenario costs to build and to run, what it brings, and the kinds of plant stock side by side. */
@Command(
        name = "price",
        description =
                "Prints first and yearly cost by group and irrigation system, the enterprise budget with its break-evens,"
                        + " labour and energy, and plant stock side by side.")
final class PriceCommand extends ScenarioCommand {

    @Option(
            names = "--csv",
            description = "Prints line,index,value,unit for every value of every line, with all digits.")
    private boolean csv;

    @Override
    int run(Plan plan) {
        print(csv ? LineValues.csv(plan.figures(), plan.budget().lines()) : new PriceReport(plan.figures()).toString());
        return Exit.DONE;
    }
}
