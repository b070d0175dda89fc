package org.benchmetre.batch;

import java.util.List;
import java.util.stream.Stream;
import org.benchmetre.Plan;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.Schedule;
import org.benchmetre.budget.run.Figures;
import org.benchmetre.farm.input.Sheets;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Prints which irrigation system costs less over its life, and at which values the answer flips. */
@Command(
        name = "irrigation",
        description =
                "Holds the irrigation systems against each other: which waters evenly, survives clogging and costs less"
                        + " per metre and year; and at which value of each doubtful entry the answer flips.")
final class IrrigationCommand extends ScenarioCommand {

    private static final String PAGE = "Irrigation";

    @Mixin
    private CautionOption cautions;

    @Option(
            names = "--csv",
            description = "Prints line,index,value,unit for every line of the workings of irrigation, with all digits.")
    private boolean csv;

    @Override
    int run(Plan plan) {
        Figures figures = plan.figures();
        print(csv ? LineValues.csv(figures, lines(figures)) : page(plan));
        return Exit.DONE;
    }

    private String page(Plan plan) {
        PageText drawer = new PageText(plan.figures(), cautions.inFull());
        return new PageShelf(plan.pages()).drawn(PAGE, drawer).orElseThrow();
    }

    private static List<Line> lines(Figures figures) {
        Stream<Schedule> schedules = figures.budget().schedules().stream();
        return schedules
                .filter(schedule -> schedule.sheet().equals(Sheets.IRRIGATION))
                .flatMap(schedule -> schedule.lines().stream())
                .toList();
    }
}
