package org.benchmetre.farm.pages;

import java.util.List;
import org.benchmetre.budget.Budget;
import org.benchmetre.page.CautionList;
import org.benchmetre.page.Evidence;
import org.benchmetre.page.Page;

/** Where the entries come from, and what can hurt. */
final class SourcesPage {

    private SourcesPage() {}

    static Page of(Budget budget) {
        return Page.answer("Sources and safety", "Where do the figures come from, and what can hurt?")
                .left(
                        List.of(30, 12, 100),
                        new CautionList("Cautions", budget.cautions(), true),
                        new Evidence("Entries by where they come from"));
    }
}
