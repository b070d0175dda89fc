package org.benchmetre.farm.lending;

import static org.benchmetre.budget.Formulas.greater;
import static org.benchmetre.budget.Formulas.lesser;
import static org.benchmetre.budget.Formulas.none;
import static org.benchmetre.budget.Formulas.previous;
import static org.benchmetre.budget.Formulas.text;
import static org.benchmetre.budget.Formulas.when;

import java.util.List;
import org.benchmetre.budget.Axis;
import org.benchmetre.budget.BudgetBuilder;
import org.benchmetre.budget.Element;
import org.benchmetre.budget.Formula;
import org.benchmetre.budget.Kind;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.ScheduleBuilder;
import org.benchmetre.budget.unit.Unit;
import org.benchmetre.farm.input.Sheets;

/**
 * Income tax of each year, paid in that year. What is bought again in a year is deducted at once; a loss is carried forward until income
 * has made up for it, whatever it takes. Both are choices of this project and no statement of law: ask a licensed tax adviser.
 *
 * <pre>
 * z = y - a - d + min(0, z')     T = r max(0, z)
 * z  income after losses, z' that of the year before, a loss carried forward while below 0     y  income before depreciation and tax
 * a  bought again     d  depreciation of what was built at the start     r  rate     T  tax of the year
 * </pre>
 */
public final class IncomeTax {

    /** Heading of the years. */
    static final String BY_YEAR = "Income tax by year";

    private static final Unit MONEY = Unit.MONEY_NOMINAL;
    private static final String OURS = "a choice of this project, no source; ask a licensed tax adviser";

    /** Tax of each year, money of its year; 0 while the rate is 0. */
    public final Line tax;
    /** The same as a formula, for lines that are repeated in many cases. */
    final Formula due;

    private final Line profit;
    private final Line rate;
    /** Whether figures are before or after income tax, in words. */
    public final Line told;

    /**
     * Declares the lines.
     *
     * @param b where schedules are added
     * @param depreciation the rate, and what was built at the start
     * @param years periods 0 to the longest plan
     * @param year number of each, a
     * @param income by year, before depreciation and tax and after interest, money of its year; the start does not count
     * @param bought what is bought again in each year, money of its year
     */
    public IncomeTax(
            BudgetBuilder b, TaxDepreciation depreciation, Axis years, Line year, Formula income, Line bought) {
        ScheduleBuilder s = b.shared(Sheets.CASH_FLOW, BY_YEAR);
        Formula left = income.minus(bought).minus(depreciation.total);
        rate = depreciation.rate;
        profit = s.declare(
                "tax_after_losses",
                "Income that is taxed; below zero the loss that is carried on",
                MONEY,
                Kind.NUMBER,
                List.of(years),
                "less what is bought again, depreciation and losses so far, without a limit: " + OURS);
        Formula losses = lesser(none(MONEY), previous(profit, none(MONEY)));
        b.define(profit, when(year.isPositive(), left.plus(losses), none(MONEY)));
        due = dueOn(profit);
        tax = s.line("tax_of_year", "Income tax", MONEY, due, "paid in the year it is for: " + OURS);
        told = b.schedule(Sheets.CASH_FLOW, "Income tax, in words")
                .textLine(
                        "tax_told",
                        "Before or after income tax",
                        when(depreciation.rate.isPositive(), text("after income tax"), text("before tax")));
    }

    private Formula dueOn(Formula income) {
        return rate.times(greater(none(MONEY), income));
    }

    /** Tax of one year, as a formula. */
    Formula in(int year) {
        return dueOn(new Element(profit, profit.axes().get(0), year));
    }
}
