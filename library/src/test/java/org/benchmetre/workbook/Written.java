package org.benchmetre.workbook;

import java.io.IOException;
import org.benchmetre.budget.Budget;
import org.benchmetre.budget.run.Figures;

/**
 * A budget as it is written: its figures, where everything stands, and what is drawn.
 *
 * @param figures the figures
 * @param plan where everything stands
 * @param setup pages and print
 */
record Written(Figures figures, WorkbookPlan plan, Setup setup) {

    static Written of(Budget budget, Setup setup) {
        Figures figures = Figures.of(budget);
        return new Written(figures, WorkbookPlan.of(figures, setup.pages()), setup);
    }

    /** Workings alone. */
    static Written bare(Budget budget) {
        return of(budget, Setup.WORKINGS_ALONE);
    }

    Budget budget() {
        return figures.budget();
    }

    byte[] bytes() throws IOException {
        return new WorkbookWriter(setup).bytes(figures);
    }
}
