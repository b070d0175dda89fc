package org.benchmetre.batch;

import org.benchmetre.Plan;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.run.Figures;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** Prints what a scenario costs to build. */
@Command(
        name = "price",
        description = "Prints first cost by group: per metre of bench, per plant and per floor area, every way to water"
                + " beside the chosen one.")
final class PriceCommand extends ScenarioCommand {

    @Option(
            names = "--csv",
            description = "Prints line,index,value,unit for every value of every line, with all digits.")
    private boolean csv;

    @Override
    int run(Plan plan) {
        print(csv ? csv(plan.figures()) : new PriceReport(plan.figures()).toString());
        return Exit.DONE;
    }

    private static String csv(Figures figures) {
        Csv csv = new Csv("line", "index", "value", "unit");
        String currency = figures.budget().currency();
        for (Line line : figures.budget().lines()) {
            String unit = line.unit().display(currency);
            for (int cell = 0; cell < line.size(); cell++) {
                csv.row(line.id(), line.index(cell), figures.text(line, cell), unit);
            }
        }
        return csv.toString();
    }
}
