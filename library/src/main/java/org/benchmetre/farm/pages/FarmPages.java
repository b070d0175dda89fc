package org.benchmetre.farm.pages;

import java.util.List;
import org.benchmetre.budget.Budget;
import org.benchmetre.page.Page;

/** The pages of a farm, in reading order. */
public final class FarmPages {

    private FarmPages() {}

    /**
     * All pages.
     *
     * @param budget a farm
     * @return answers first, entries after them
     */
    public static List<Page> of(Budget budget) {
        return List.of(IrrigationPage.of(budget));
    }
}
