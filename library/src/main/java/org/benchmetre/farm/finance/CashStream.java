package org.benchmetre.farm.finance;

import org.benchmetre.budget.Axis;
import org.benchmetre.budget.FormulaException;
import org.benchmetre.budget.Line;

/**
 * A stream of yearly cash, the first of it at once and the others a year apart.
 *
 * @param prefix what its lines are called by, such as {@code equity_}; empty for the stream before finance
 * @param about which cash it is, such as <i>after finance</i>; empty for the stream before finance
 * @param net cash of each year, money or money of its year, along the years
 * @param rate single rate that discounts it, {@code real/a} or {@code nominal/a} as its money asks, above -1
 * @param horizon single number of years of the plan, {@code a}, 1 or more
 * @param year number of the year, {@code a}, 0 at the start, along the years
 */
public record CashStream(String prefix, String about, Line net, Line rate, Line horizon, Line year) {

    /** Refuses cash and numbers of years that do not run along the same single axis. */
    public CashStream {
        if (net.axes().size() != 1 || !net.axes().equals(year.axes())) {
            throw new FormulaException("Cash and number of a year run along the same years, but found " + net
                    + " along " + net.axes() + " and " + year + " along " + year.axes() + ".");
        }
    }

    Axis years() {
        return net.axes().get(0);
    }

    String id(String name) {
        return prefix + name;
    }

    String label(String words) {
        return about.isEmpty() ? words : words + ", " + about;
    }

    /** A label that says whether money is of today or of its year. */
    String tagged(String words) {
        return label(words) + (net.unit().isNominal() ? " (nominal)" : " (real)");
    }
}
