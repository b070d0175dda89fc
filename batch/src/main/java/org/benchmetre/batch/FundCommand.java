package org.benchmetre.batch;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.benchmetre.Plan;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.Schedule;
import org.benchmetre.budget.run.Figures;
import org.benchmetre.farm.input.Sheets;
import org.benchmetre.page.Block;
import org.benchmetre.page.Page;
import org.benchmetre.page.Sentences;
import org.benchmetre.page.Table;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** Prints what a lender asks: how much, what for, who pays, whether it can be paid back, and what breaks first. */
@Command(
        name = "fund",
        description =
                "Tells what a lender asks: how much the start takes and who pays, when loans are paid back, when cash is"
                        + " lowest, whether income covers what falls due, and what breaks first.")
final class FundCommand extends ScenarioCommand {

    /** Pages of the review, in reading order. */
    private static final List<String> PAGES = List.of("Funds", "Loans", "Cash", "Statements", "Stress");

    private static final Set<String> SHEETS = Set.of(Sheets.LOANS, Sheets.LENDING, Sheets.STRESS);

    /** Lines that the whole answer takes at most. */
    private static final int MOST = 60;

    @Option(
            names = "--csv",
            description = "Prints line,index,value,unit for every line of the workings of funds, loans and stress, with"
                    + " all digits.")
    private boolean csv;

    @Override
    int run(Plan plan) {
        Figures figures = plan.figures();
        print(csv ? LineValues.csv(figures, lines(figures)) : review(plan));
        return Exit.DONE;
    }

    /** Sentences of each page, and below them its first table where there is room for it. */
    private static String review(Plan plan) {
        List<Page> pages = plan.pages().stream()
                .filter(page -> PAGES.contains(page.name()))
                .toList();
        List<String> words = pages.stream().map(page -> words(plan, page)).toList();
        String others = new PageShelf(plan.pages()).others("", "In full: price --page NAME, of ");
        long room = MOST - count(words.stream().collect(Collectors.joining())) - count(others) - pages.size();
        List<String> all = new ArrayList<>();
        for (int i = 0; i < pages.size(); i++) {
            String table = table(plan, pages.get(i)).orElse("");
            boolean fits = count(table) <= room;
            room -= fits ? count(table) : 0;
            all.add(words.get(i) + (fits ? table : ""));
        }
        return String.join("\n", all) + "\n" + others;
    }

    private static long count(String text) {
        return text.lines().count();
    }

    private static String words(Plan plan, Page page) {
        PageText drawer = drawer(plan, page);
        return TextTable.wrapped(page.name() + ": " + page.question())
                + blocks(page, Sentences.class).map(block -> block.show(drawer)).collect(Collectors.joining());
    }

    private static Optional<String> table(Plan plan, Page page) {
        PageText drawer = drawer(plan, page);
        return blocks(page, Table.class).findFirst().map(block -> block.show(drawer));
    }

    private static PageText drawer(Plan plan, Page page) {
        return new PageText(plan.figures(), false).of(page.kind()).tight();
    }

    private static Stream<Block> blocks(Page page, Class<? extends Block> kind) {
        return page.blocks().stream().filter(kind::isInstance);
    }

    private static List<Line> lines(Figures figures) {
        Stream<Schedule> schedules = figures.budget().schedules().stream();
        return schedules
                .filter(schedule -> SHEETS.contains(schedule.sheet()))
                .flatMap(schedule -> schedule.lines().stream())
                .toList();
    }
}
