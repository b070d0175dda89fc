package org.benchmetre.farm.lending;

import static org.benchmetre.budget.Formulas.greater;
import static org.benchmetre.budget.Formulas.none;
import static org.benchmetre.budget.Formulas.previous;
import static org.benchmetre.budget.Formulas.text;
import static org.benchmetre.budget.Formulas.when;

import java.util.List;
import org.benchmetre.budget.Axis;
import org.benchmetre.budget.BudgetBuilder;
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
 * p = y - a - d     x = max(0, p - L')     L = max(0, L' - p)     T = r x
 * p  income of the year     y  income before depreciation and tax     a  bought again     d  depreciation of what was built at the start
 * x  taxable income     L  loss carried to the next year, L' that of the year before     r  rate     T  tax of the year
 * </pre>
 */
public final class IncomeTax {

    /** Heading of the years. */
    static final String BY_YEAR = "Income tax by year";

    private static final Unit MONEY = Unit.MONEY_NOMINAL;
    private static final String OURS = "a choice of this project, no source; ask a licensed tax adviser";

    /** Income that is taxed, by year, money of its year; never negative. */
    public final Line taxable;
    /** Loss that is carried to the next year, by year, money of its year; never negative. */
    public final Line lossCarried;
    /** Tax of each year, money of its year; 0 while the rate is 0. */
    public final Line tax;
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
    public IncomeTax(BudgetBuilder b, TaxDepreciation depreciation, Axis years, Line year, Line income, Line bought) {
        ScheduleBuilder s = b.shared(Sheets.CASH_FLOW, BY_YEAR);
        Formula left = income.minus(bought).minus(depreciation.total);
        Line profit = s.line(
                "tax_profit",
                "Income less what is bought again and depreciation",
                MONEY,
                when(year.isPositive(), left, none(MONEY)),
                "what is bought again is deducted at once: " + OURS);
        lossCarried = s.declare(
                "tax_loss_carried",
                "Loss carried forward",
                MONEY,
                Kind.NUMBER,
                List.of(years),
                "without a limit: " + OURS);
        Formula before = previous(lossCarried, none(MONEY));
        b.define(lossCarried, greater(none(MONEY), before.minus(profit)));
        taxable = s.line("tax_taxable", "Taxable income", MONEY, greater(none(MONEY), profit.minus(before)));
        tax = s.line(
                "tax_of_year",
                "Income tax",
                MONEY,
                depreciation.rate.times(taxable),
                "paid in the year it is for: " + OURS);
        told = b.schedule(Sheets.CASH_FLOW, "Income tax, in words")
                .textLine(
                        "tax_told",
                        "Before or after income tax",
                        when(depreciation.rate.isPositive(), text("after income tax"), text("before tax")));
    }
}
