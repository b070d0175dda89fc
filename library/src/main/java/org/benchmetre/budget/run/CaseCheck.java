package org.benchmetre.budget.run;

import java.util.Map;
import org.benchmetre.budget.CellRef;
import org.benchmetre.budget.Texts;

/** Looks at the values of cases before they are run, one cell of the cut at a time and a whole chunk of cases at once. */
@FunctionalInterface
public interface CaseCheck {

    /** Lets every value in. */
    CaseCheck ANY = (cell, values, texts) -> Map.of();

    /**
     * Looks at the values of one cell.
     *
     * @param cell a cell of the cut
     * @param values its value in each case of a chunk; for a text its code
     * @param texts what the codes stand for
     * @return for each case that must not be run, by its place among the values, a sentence that says why
     */
    Map<Integer, String> refused(CellRef cell, double[] values, Texts texts);
}
