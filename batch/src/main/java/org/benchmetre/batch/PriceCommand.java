package org.benchmetre.batch;

import org.benchmetre.Plan;
import picocli.CommandLine.ArgGroup;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Prints a page of a plan: what a metre of bench costs and returns, unless another is asked for. */
@Command(
        name = "price",
        description =
                "Prints what a metre of bench costs and returns, what decides and what is left out, or another page.")
final class PriceCommand extends ScenarioCommand {

    /** What a console shows at once; a first page that is longer has no empty lines, and no table that a sentence tells. */
    private static final int SCREEN = 40;

    @ArgGroup(exclusive = true)
    private Output output = new Output();

    @Mixin
    private CautionOption cautions;

    /** What is printed in place of the first page. */
    static final class Output {

        @Option(
                names = "--page",
                paramLabel = "NAME",
                description =
                        "Prints another page, such as irrigation, to-buy, budget, calendar, what-if or entries; all"
                                + " prints every page. The last line of a page names the others.")
        private String page;

        @Option(
                names = "--csv",
                description = "Prints line,index,value,unit for every value of every line, with all digits.")
        private boolean csv;
    }

    @Override
    int run(Plan plan) {
        print(output.csv ? LineValues.csv(plan.figures(), plan.budget().lines()) : page(plan));
        return Exit.DONE;
    }

    private String page(Plan plan) {
        PageShelf shelf = new PageShelf(plan.pages());
        String name = output.page == null ? shelf.first() : output.page;
        PageText drawer = new PageText(plan.figures(), cautions.inFull());
        String drawn = shelf.drawn(name, output.page == null ? drawer.shortened() : drawer)
                .orElseThrow(() -> usage(shelf.missing(name)));
        String text = drawn + shelf.others(name);
        boolean tight =
                output.page == null && !cautions.inFull() && text.lines().count() > SCREEN;
        return tight ? text.replaceAll("\n{2,}", "\n") : text;
    }
}
