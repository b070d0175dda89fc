package org.benchmetre.farm.loans;

import static org.benchmetre.budget.Formulas.and;
import static org.benchmetre.budget.Formulas.joined;
import static org.benchmetre.budget.Formulas.lesser;
import static org.benchmetre.budget.Formulas.none;
import static org.benchmetre.budget.Formulas.not;
import static org.benchmetre.budget.Formulas.one;
import static org.benchmetre.budget.Formulas.previous;
import static org.benchmetre.budget.Formulas.shown;
import static org.benchmetre.budget.Formulas.text;
import static org.benchmetre.budget.Formulas.when;
import static org.benchmetre.farm.input.TradeUnits.ONE;

import java.util.List;
import org.benchmetre.budget.BudgetBuilder;
import org.benchmetre.budget.Formula;
import org.benchmetre.budget.Kind;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.ScheduleBuilder;
import org.benchmetre.budget.unit.Unit;
import org.benchmetre.farm.input.Months;
import org.benchmetre.farm.input.Sheets;

/** Each payment of each loan: when it is due, what of it is interest and principal, what is owed after it. Nothing past the last one. */
public final class LoanRows {

    private static final Unit MONEY = Unit.MONEY_NOMINAL;

    /** The number of a payment, as a text that is looked up. */
    public final Line key;
    /** Year of the plan in which it is due, such as {@code Year 2}; empty past the last one. */
    public final Line dueYear;
    /** Interest, money_nominal. */
    public final Line interest;
    /** Principal, money_nominal. */
    public final Line principal;
    /** What is owed after the payment, money_nominal. */
    public final Line balance;

    LoanRows(BudgetBuilder b, Loans loans, Line amount, LoanTerms terms, CentRounding cents) {
        ScheduleBuilder n = b.schedule(Sheets.LOANS, "Numbers of payments");
        Line number = n.declare(
                "loan_payment_number", "Payment", ONE, Kind.NUMBER, List.of(loans.payments), "plain counting");
        b.define(number, previous(number, none(ONE)).plus(one()));
        key = n.textLine("loan_payment_key", "As a text", shown(number, 0));

        LoanTable s = new LoanTable(
                b, b.schedule(Sheets.LOANS, "Schedule of payments by loan"), List.of(loans.axis, loans.payments));
        Formula past = number.exceeds(terms.count);
        Formula sinceFirst = LoanTerms.MONTHS.over(terms.aYear).times(number.minus(one()));
        Formula year = terms.firstDue.plus(sinceFirst).over(LoanTerms.MONTHS).wholeUp();
        dueYear = s.line(
                "loan_due_year",
                "Year due",
                ONE,
                when(past, text(""), yearName(year)),
                "a payment each period from the first on, month 12 the last one of year 1; " + Months.COUNTING);
        interest = s.money("loan_interest", "Interest", CentRounding.SOURCE);
        principal = s.money("loan_principal", "Principal", LoanTerms.ANNUITY);
        balance = s.money("loan_balance", "Owed after it", "");
        Formula owed = previous(balance, amount);
        Formula regular = cents.of(terms.regular(owed, loans.rate.counting(Unit.parse("1/a"))));
        Formula isLater = number.exceeds(one());
        b.define(interest, when(past, none(MONEY), when(isLater, regular, terms.firstInterest)));
        Formula paid = when(loans.kind.is(Loans.EQUAL_PRINCIPAL), terms.level, terms.level.minus(interest));
        Formula usual = lesser(owed, when(isLater, paid, terms.firstPrincipal));
        Formula isBack = and(number.exceeds(terms.onlyInterest), not(past));
        b.define(principal, when(isBack, when(terms.count.exceeds(number), usual, owed), none(MONEY)));
        b.define(balance, owed.minus(principal));
    }

    /** What a year of the plan is called. */
    static Formula yearName(Formula year) {
        return joined(text("Year "), shown(year, 0));
    }
}
