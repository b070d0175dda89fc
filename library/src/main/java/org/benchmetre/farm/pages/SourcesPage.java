package org.benchmetre.farm.pages;

import org.benchmetre.budget.Budget;
import org.benchmetre.page.Cautions;
import org.benchmetre.page.Evidence;
import org.benchmetre.page.Page;

/** Where the entries come from, and what can hurt. */
final class SourcesPage {

    private SourcesPage() {}

    static Page of(Budget budget) {
        return Page.answer("Sources and safety", "Where do the figures come from, and what can hurt?")
                .head(new Evidence("Entries by where they come from"))
                .foot(new Cautions("Cautions", budget.cautions(), true));
    }
}
