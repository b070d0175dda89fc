package org.benchmetre.batch;

import java.nio.file.Path;
import java.util.List;
import org.benchmetre.FarmWorkbook;
import org.benchmetre.Plan;
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

    @Option(names = "--overwrite", description = OVERWRITE)
    private boolean overwrite;

    @Override
    int run(Plan plan) {
        return write(
                new WorkbookFile(target, overwrite, filesOf(List.of(scenario()))),
                (file, replaced) -> FarmWorkbook.write(plan.figures(), file, replaced));
    }
}
