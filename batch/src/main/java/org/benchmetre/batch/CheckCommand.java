package org.benchmetre.batch;

import java.util.List;
import org.benchmetre.Plan;
import org.benchmetre.budget.entry.Quoted;
import picocli.CommandLine.Command;

/** Reads and checks a scenario. */
@Command(
        name = "check",
        description = "Reads a scenario, warns of values that are unlikely, and checks that all sums agree.")
final class CheckCommand extends ScenarioCommand {

    @Override
    int run(Plan plan) {
        tell("Warning: ", plan.doubts());
        int warnings = plan.warnings().size() + plan.doubts().size();
        return finished(plan.disagreements(), warnings);
    }

    /** Tells how it ended. */
    int finished(List<String> disagreements, int warnings) {
        if (!disagreements.isEmpty()) {
            disagreements.forEach(sentence -> complain("Check failed: " + sentence));
            return Exit.CHECK_FAILED;
        }
        String count = warnings == 0 ? "no warnings" : warnings == 1 ? "1 warning" : warnings + " warnings";
        print(Quoted.visible(scenario() + ": no faults, " + count + ".") + "\n");
        return Exit.DONE;
    }
}
