package org.benchmetre.batch;

import java.util.Optional;
import org.benchmetre.Plan;
import org.benchmetre.budget.CellRef;
import org.benchmetre.budget.run.Explanation;
import org.benchmetre.scenario.Address;
import org.benchmetre.scenario.Faults;
import org.benchmetre.scenario.Place;
import org.benchmetre.scenario.SettingSyntaxException;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Tells where a figure comes from. */
@Command(
        name = "explain",
        description =
                "Tells where a figure comes from: its formula, what that reads, down to the entries and their sources.")
final class ExplainCommand extends ScenarioCommand {

    @Spec
    private CommandSpec spec;

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
            throw new ParameterException(spec.commandLine(), "--depth is 1 or more, but found " + depth + ".");
        }
        Faults faults = new Faults();
        Optional<CellRef> cell = address().in(plan.budget(), Place.wholeFile("address " + text), faults);
        if (cell.isEmpty()) {
            return refused(faults);
        }
        print(Explanation.of(plan.figures(), cell.get().line(), cell.get().cell(), depth)
                .toString());
        return Exit.DONE;
    }

    private Address address() {
        try {
            return Address.parse(text);
        } catch (SettingSyntaxException e) {
            throw new ParameterException(spec.commandLine(), e.getMessage(), e);
        }
    }
}
