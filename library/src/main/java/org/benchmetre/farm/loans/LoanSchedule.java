package org.benchmetre.farm.loans;

import static org.benchmetre.budget.Formulas.sumProduct;

import org.benchmetre.budget.BudgetBuilder;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.ScheduleBuilder;
import org.benchmetre.budget.unit.Unit;
import org.benchmetre.farm.input.FarmEntries;
import org.benchmetre.farm.input.Sheets;

/**
 * Loans paid back, payment by payment, and what falls due in each month and year of the plan. Money is that of its year. A loan without
 * an amount has no payments; one without a term, which only a spare row can lack, is never paid back.
 */
public final class LoanSchedule {

    /** What follows from the terms of each loan alone. */
    public final LoanTerms terms;
    /** Each payment of each loan. */
    public final LoanRows rows;
    /** What is due by month. */
    public final LoanMonths months;
    /** What is due and owed by year. */
    public final LoanYears years;

    /**
     * Declares the entry of rounding, and lines.
     *
     * @param b where schedules are added
     * @param entries gives entries their values
     * @param loans the loans as entered
     * @param amount what is lent, money_nominal, along the loans; not negative
     * @param monthNumber numbers of the months of the plan, from 1, plain numbers along them
     * @param yearNumber numbers of its years, from 0, a, along them
     */
    public LoanSchedule(
            BudgetBuilder b, FarmEntries entries, Loans loans, Line amount, Line monthNumber, Line yearNumber) {
        CentRounding cents = new CentRounding(b, entries, b.schedule(Sheets.LOANS, "Rounding of loans"));
        terms = new LoanTerms(b, loans, amount, cents);
        rows = new LoanRows(b, loans, amount, terms, cents);
        months = new LoanMonths(b, loans, terms, rows, monthNumber);
        years = new LoanYears(b, loans, amount, new LoanYears.Paid(terms, rows), yearNumber);
    }

    /**
     * What was owed times how long it was, as the interest on it tells.
     *
     * @param s where the line is added
     * @param id identifier
     * @param interest money_nominal along the loans and a run of periods
     * @param loans the loans
     * @param terms of the loans
     * @return money_nominal a, along the periods
     */
    static Line owed(ScheduleBuilder s, String id, Line interest, Loans loans, LoanTerms terms) {
        return s.line(
                id,
                "Owed, times how long",
                Unit.parse("money_nominal.a"),
                sumProduct(interest, terms.inverse, loans.axis),
                "interest over its rate; nothing where the rate is zero: plain arithmetic");
    }
}
