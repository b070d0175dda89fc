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

    /** What a console shows at once; a first page that is longer is drawn tight. */
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
        String text = page(shelf, name, drawer);
        boolean isLong =
                output.page == null && !cautions.inFull() && text.lines().count() > SCREEN;
        return isLong ? page(shelf, name, drawer.tight()) : text;
    }

    private String page(PageShelf shelf, String name, PageText drawer) {
        return shelf.drawn(name, drawer).orElseThrow(() -> usage(shelf.missing(name))) + shelf.others(name);
    }
}
