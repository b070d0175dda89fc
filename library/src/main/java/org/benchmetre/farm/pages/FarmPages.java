package org.benchmetre.farm.pages;

import java.util.ArrayList;
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
        List<Page> pages = new ArrayList<>();
        pages.add(AnswerPage.of(budget));
        pages.add(IrrigationPage.of(budget));
        pages.add(ToBuyPage.of(budget));
        pages.add(BudgetPage.of(budget));
        pages.add(CalendarPage.of(budget));
        pages.add(WhatIfPage.of(budget));
        pages.add(FundsPage.of(budget));
        pages.add(LoansPage.of(budget));
        pages.add(CashPage.of(budget));
        pages.add(StatementsPage.of(budget));
        pages.add(StressPage.of(budget));
        pages.add(ChallengePage.of(budget));
        pages.add(SubmittedPage.of(budget));
        pages.add(EntriesPage.of(budget));
        pages.addAll(TablePages.of(budget));
        pages.add(SourcesPage.of(budget));
        return List.copyOf(pages);
    }
}
