package org.benchmetre;

import java.io.IOException;
import java.nio.file.Path;
import org.benchmetre.budget.Budget;
import org.benchmetre.budget.run.Figures;
import org.benchmetre.farm.pages.FarmPages;
import org.benchmetre.workbook.Paper;
import org.benchmetre.workbook.Setup;
import org.benchmetre.workbook.WorkbookWriter;

/** A farm's workbook: the pages of its readers, and the workings behind them. */
public final class FarmWorkbook {

    private FarmWorkbook() {}

    /**
     * Writes the workbook beside its target and moves it into place.
     *
     * @param figures the farm, computed
     * @param target where it goes
     * @param overwrite whether an existing file is replaced
     * @throws IOException when the target exists and is not to be replaced, is no plain file, or cannot be written
     */
    public static void write(Figures figures, Path target, boolean overwrite) throws IOException {
        new WorkbookWriter(setup(figures.budget())).write(figures, target, overwrite);
    }

    /**
     * What the workbook holds beside its workings.
     *
     * @param budget a farm
     * @return its pages, and how they are printed
     */
    public static Setup setup(Budget budget) {
        boolean letter = budget.given(budget.line("plan_paper")).get(0).text().equals("letter");
        return new Setup(FarmPages.of(budget), budget.line("plan_heading"), letter ? Paper.LETTER : Paper.A4);
    }
}
