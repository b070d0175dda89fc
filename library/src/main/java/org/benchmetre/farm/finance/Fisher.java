package org.benchmetre.farm.finance;

import static org.benchmetre.budget.Formulas.one;
import static org.benchmetre.farm.input.TradeUnits.ONE;

import org.benchmetre.budget.Formula;
import org.benchmetre.budget.FormulaException;
import org.benchmetre.budget.unit.Unit;

/**
 * Rates on money of today and rates on money of its year: 1 + nominal = (1 + real)(1 + inflation), all of them shares a year, 0.035 for
 * 3.5 %. Irving Fisher, The Theory of Interest, 1930. The sum of the two, which many use instead, leaves out their product.
 */
public final class Fisher {

    /** Where the rule comes from, as a note of a line. */
    public static final String SOURCE = "1 + nominal = (1 + real)(1 + inflation): Fisher, The Theory of Interest, 1930";

    private static final Unit REAL = Unit.parse("real/a");
    private static final Unit NOMINAL = Unit.parse("nominal/a");
    private static final Unit A_YEAR = Unit.parse("1/a");

    private Fisher() {}

    /**
     * The rate on money of its year.
     *
     * @param real rate on money of today, {@code real/a}, above -1
     * @param inflation rise of prices, {@code 1/a}, above -1
     * @return {@code nominal/a}
     * @throws FormulaException when a unit is another one
     */
    public static Formula nominal(Formula real, Formula inflation) {
        return growth(real, REAL).times(growth(inflation, A_YEAR)).minus(one()).counting(NOMINAL);
    }

    /**
     * The rate on money of today.
     *
     * @param nominal rate on money of its year, {@code nominal/a}, above -1
     * @param inflation rise of prices, {@code 1/a}, above -1
     * @return {@code real/a}
     * @throws FormulaException when a unit is another one
     */
    public static Formula real(Formula nominal, Formula inflation) {
        return growth(nominal, NOMINAL)
                .over(growth(inflation, A_YEAR))
                .minus(one())
                .counting(REAL);
    }

    private static Formula growth(Formula rate, Unit wanted) {
        if (!rate.unit().equals(wanted)) {
            throw new FormulaException(
                    "The relation of Fisher takes a rate in " + wanted + ", but found one in " + rate.unit() + ".");
        }
        return one().plus(rate.counting(ONE));
    }
}
