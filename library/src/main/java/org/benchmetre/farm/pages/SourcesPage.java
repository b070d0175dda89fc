package org.benchmetre.farm.pages;

import java.util.ArrayList;
import java.util.List;
import org.benchmetre.budget.Budget;
import org.benchmetre.budget.Line;
import org.benchmetre.page.Block;
import org.benchmetre.page.CautionList;
import org.benchmetre.page.Column;
import org.benchmetre.page.Evidence;
import org.benchmetre.page.Page;
import org.benchmetre.page.Table;

/** Where the entries come from, how the plan stands beside published farms, and what can hurt. */
final class SourcesPage {

    private SourcesPage() {}

    static Page of(Budget budget) {
        List<Block> blocks = new ArrayList<>();
        blocks.add(new CautionList("Cautions", budget.cautions(), true));
        blocks.add(new Evidence("Entries by where they come from"));
        budget.find("published_label").ifPresent(label -> blocks.add(published(budget, label)));
        return Page.answer("Sources and safety", "Where do the figures come from, and what can hurt?")
                .left(List.of(45, 12, 100), blocks.toArray(Block[]::new));
    }

    private static Table published(Budget budget, Line label) {
        return Table.of(
                "This plan beside published farms",
                label.axes().get(0),
                Column.of("", label),
                Column.of("This plan", budget.line("published_figure")),
                Column.of("Published", budget.line("published_told")));
    }
}
