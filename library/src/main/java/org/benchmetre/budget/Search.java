package org.benchmetre.budget;

import java.io.Serializable;
import java.util.List;

/**
 * How a figure is found that no formula gives. It is declared together with the line it fills and runs when somebody reads that
 * line, on the entries as they are then.
 */
public interface Search extends Serializable {

    /**
     * The lines the search looks at. None of them may follow from a line that a search fills; a budget in which one does is not
     * built.
     *
     * @return lines of the same budget
     */
    List<Line> reads();

    /**
     * Runs the search.
     *
     * @param budget the budget with its entries
     * @return one value for each cell of the line it fills; for a line of numbers alone all of them numbers
     */
    List<Solved> find(Budget budget);
}
