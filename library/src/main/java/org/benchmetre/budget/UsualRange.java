package org.benchmetre.budget;

import java.io.Serializable;
import java.util.List;
import java.util.function.Function;
import org.benchmetre.budget.entry.Given;
import org.benchmetre.budget.entry.Usual;

/** The documented range of an entry where it follows from other entries of its row, such as a price from the unit that is sold. */
public interface UsualRange extends Serializable {

    /**
     * The range of one cell.
     *
     * @param cell from 0
     * @param values the cells of any entry of the budget
     * @return range and source; unknown where nothing is documented
     */
    Usual of(int cell, Function<Line, List<Given>> values);
}
