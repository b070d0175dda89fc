package org.benchmetre.farm.lending;

import static org.benchmetre.budget.Formulas.and;
import static org.benchmetre.budget.Formulas.countPositive;
import static org.benchmetre.budget.Formulas.greater;
import static org.benchmetre.budget.Formulas.joined;
import static org.benchmetre.budget.Formulas.least;
import static org.benchmetre.budget.Formulas.lookup;
import static org.benchmetre.budget.Formulas.none;
import static org.benchmetre.budget.Formulas.not;
import static org.benchmetre.budget.Formulas.number;
import static org.benchmetre.budget.Formulas.onlyWhen;
import static org.benchmetre.budget.Formulas.shown;
import static org.benchmetre.budget.Formulas.text;
import static org.benchmetre.budget.Formulas.when;
import static org.benchmetre.farm.input.TradeUnits.ONE;

import org.benchmetre.budget.BudgetBuilder;
import org.benchmetre.budget.Formula;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.ScheduleBuilder;
import org.benchmetre.budget.unit.Unit;
import org.benchmetre.farm.input.FarmEntries;
import org.benchmetre.farm.input.Sheets;

/**
 * Whether debt can be paid back: what is left of income to pay it, against what falls due. Farm Financial Standards Council, Financial
 * Guidelines for Agricultural Producers: capital debt repayment capacity, its margin, and term-debt coverage.
 */
final class Repayment {

    private static final Unit NOMINAL = Unit.MONEY_NOMINAL;
    /** Stands for a coverage where nothing falls due. */
    static final double NO_DEBT = 1000;

    private static final String STANDARDS =
            "(net farm income + depreciation + interest - income tax - owner's draw) / (principal + interest): Farm Financial Standards";

    /** What is left to pay debt with. */
    final Line capacity;
    /** What falls due. */
    final Line payments;
    /** What is left after that. */
    final Line margin;
    /** Coverage of each year, 1000 where nothing falls due. */
    final Line counted;
    /** Coverage of each year. */
    final Line coverage;
    /** What coverage lacks of the limit, above zero where it is below. */
    final Line belowLimit;
    /** The lowest of them. */
    final Line lowest;
    /** Coverage that a bank asks for. */
    final Line limit;
    /** Years in which debt falls due. */
    final Line yearsWithDebt;
    /** The year in which it is lowest, as a text. */
    final Line lowestYear;

    Repayment(BudgetBuilder b, FarmEntries entries, Income income, DebtService debt, CashPosition cash, Formula tax) {
        ScheduleBuilder s = b.schedule(Sheets.LENDING, "Repayment by year");
        ScheduleBuilder single = b.schedule(Sheets.LENDING, "Lowest coverage");
        Formula able = income.beforeDepreciation.minus(tax).minus(cash.draw);
        limit = entries.add(b.schedule(Sheets.LENDING, "What a bank asks for")
                .entry("coverage_limit", "Term-debt coverage asked for", ONE)
                .from(0, 100));
        capacity = s.line("repayment_capacity", "Capital debt repayment capacity", NOMINAL, able, STANDARDS);
        s.line("income_after_tax", "Net farm income after tax", NOMINAL, income.beforeTax.minus(tax));
        Formula due = debt.duePlanned.plus(debt.added);
        payments = s.line("repayment_due", "Principal and interest due", NOMINAL, due);
        margin = s.line(
                "repayment_margin", "Capital debt repayment margin", NOMINAL, capacity.minus(payments), STANDARDS);
        counted = s.line(
                "coverage_counted",
                "Coverage, 1000 where nothing is due",
                ONE,
                when(due.isPositive(), greater(able, none(NOMINAL)).over(due), number(NO_DEBT, ONE)),
                STANDARDS + "; 0 where nothing is left");
        belowLimit = s.line("coverage_lacking", "Below what is asked for by", ONE, limit.minus(counted));
        coverage = s.line(
                "term_debt_coverage",
                "Term-debt coverage",
                ONE,
                onlyWhen(number(NO_DEBT, ONE).exceeds(counted), counted, "no debt due"),
                STANDARDS + "; 1000 stands for no debt");
        lowest = single.line(
                "coverage_lowest",
                "Lowest coverage, 1000 without debt",
                ONE,
                least(counted, counted.axes().get(0)));
        yearsWithDebt = single.line(
                "years_with_debt",
                "Years in which debt falls due",
                ONE,
                countPositive(payments, payments.axes().get(0)));
        Formula isLowest = and(payments.isPositive(), not(counted.exceeds(lowest)));
        Line mark = s.line(
                "coverage_mark",
                "Lowest",
                ONE,
                when(isLowest, text(CashPosition.MARK), text("")),
                "the first of those alike within a millionth");
        Formula firstMarked = lookup(cash.year, mark, text(CashPosition.MARK));
        s.textLine(
                "year_words",
                "Year, in words",
                when(cash.year.isPositive(), joined(text("Year "), shown(cash.year.counting(ONE), 0)), text("Start")));
        lowestYear = single.textLine(
                "coverage_lowest_year",
                "Year of the lowest coverage",
                when(yearsWithDebt.isPositive(), shown(firstMarked.counting(ONE), 0), text("")));
    }
}
