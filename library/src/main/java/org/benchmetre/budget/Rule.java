package org.benchmetre.budget;

import java.io.Serializable;
import java.util.List;
import java.util.Set;
import org.benchmetre.budget.entry.Given;

/**
 * What cells of entries must hold together: a salvage no more than its price, shares that add up to one. Looked at whenever one of
 * its lines is given a value, whoever gives it.
 */
public interface Rule extends Serializable {

    /**
     * The entries it is about.
     *
     * @return one or more
     */
    Set<Line> lines();

    /**
     * Looks at the values.
     *
     * @param values the cells as they are after all changes
     * @return what is wrong; empty when all is well
     */
    List<Refused> broken(Values values);

    /** The values of entries, as they would be. */
    interface Values {

        /**
         * The cells of an entry.
         *
         * @param line an entry of the budget
         * @return one for each cell
         */
        List<Given> of(Line line);

        /**
         * The currency of all money.
         *
         * @return ISO 4217 code
         */
        String currency();
    }
}
