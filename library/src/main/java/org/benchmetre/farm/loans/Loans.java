package org.benchmetre.farm.loans;

import static org.benchmetre.farm.input.TradeUnits.ONE;

import java.util.List;
import org.benchmetre.budget.Axis;
import org.benchmetre.budget.BudgetBuilder;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.ScheduleBuilder;
import org.benchmetre.budget.entry.Bounds;
import org.benchmetre.budget.rule.AtMost;
import org.benchmetre.budget.rule.OneBlank;
import org.benchmetre.budget.unit.Unit;
import org.benchmetre.farm.input.Columns;
import org.benchmetre.farm.input.FarmTable;
import org.benchmetre.farm.input.Sheets;
import org.benchmetre.scenario.RunLength;
import org.benchmetre.scenario.TableForm;

/** Loans as entered: one row each, with amount, rate, term, how it is paid back, and what secures it. Money is that of its year. */
public final class Loans {

    /** Equal payments of interest and principal together, the word files hold. */
    public static final String EQUAL_PAYMENT = "equal_payment";

    /** Equal parts of principal, interest beside them, the word files hold. */
    public static final String EQUAL_PRINCIPAL = "equal_principal";

    /** The highest rate of interest, a year: 0.5 is 50 %. A choice of this project. */
    private static final double HIGHEST_RATE = 0.5;

    private static final double LONGEST_TERM = 40;
    private static final double MONTHS_OF_IT = 480;
    private static final Unit MONEY = Unit.MONEY_NOMINAL;
    private static final Unit RATE = Unit.parse("nominal/a");
    private static final Unit YEAR = Unit.parse("a");
    private static final Unit MONTH = Unit.parse("mo");
    private static final Bounds AMOUNT = new Bounds(0, true, 1000 * Columns.HIGHEST_PRICE, false);

    /** One row for each loan, spare rows last. */
    public final Axis axis;
    /** Key. */
    public final Line key;
    /** What a reader calls it. */
    public final Line label;
    /** What is borrowed, money_nominal; blank where it follows from elsewhere. */
    public final Line amount;
    /** Rate of interest, nominal/a: 0.08 is 8 % a year. */
    public final Line rate;
    /** Time until the last payment, a. */
    public final Line term;
    /** Payments a year, one of the words 1, 4 and 12; blank in a spare row, which counts as 12. */
    public final Line paymentsAYear;
    /** {@link #EQUAL_PAYMENT} or {@link #EQUAL_PRINCIPAL}; blank in a spare row, which counts as the former. */
    public final Line kind;
    /** Months from the start in which only interest is paid, mo; 0 where not entered. */
    public final Line interestOnly;
    /** Principal left for the last payment, money_nominal; 0 where not entered. */
    public final Line balloon;
    /** Fees at the start, share of the amount; 0 where not entered. */
    public final Line fee;
    /** Keys of the kinds of use that secure it, apart by spaces. */
    public final Line security;
    /** Month of the plan, from 1, in which the first payment is due, mo; 0 where not entered. */
    public final Line firstMonth;
    /** One period for each payment of the longest loan. */
    public final Axis payments;

    /**
     * Declares the entries.
     *
     * @param b where schedules are added
     * @param kinds what may secure a loan
     */
    public Loans(BudgetBuilder b, SecurityKinds kinds) {
        ScheduleBuilder s = b.schedule(Sheets.LOANS, "Loans");
        s.note(
                "A rate of 8 % is 0.08. Months count from the start of the plan; the first payment is due one period after it unless a "
                        + "month is entered. The balloon is paid with the last payment.");
        Columns c = Columns.of(b, FarmTable.LOANS, s);
        axis = c.axis();
        label = c.names("loan_label", "Loan");
        key = c.keys("loan_key", "Key");
        amount = c.numbers("amount", "loan_amount", "Amount", MONEY, AMOUNT, 0);
        rate = c.numbers("rate", "loan_rate", "Rate", RATE, new Bounds(0, true, HIGHEST_RATE, false), Double.NaN);
        term = c.numbers("term", "loan_term", "Term", YEAR, new Bounds(0, false, LONGEST_TERM, false), Double.NaN);
        paymentsAYear = c.choice(
                "payments_per_year",
                "loan_payments_a_year",
                "Payments a year",
                List.of("12", "4", "1"),
                Integer.toString(FarmTable.USUAL_PAYMENTS));
        kind = c.choice("kind", "loan_kind", "Kind", List.of(EQUAL_PAYMENT, EQUAL_PRINCIPAL), EQUAL_PAYMENT);
        interestOnly = c.numbers(
                "interest_only_months",
                "loan_interest_only",
                "Interest only",
                MONTH,
                new Bounds(0, true, MONTHS_OF_IT, true),
                0);
        balloon = c.numbers("balloon", "loan_balloon", "Balloon", MONEY, AMOUNT, 0);
        fee = c.numbers("fee", "loan_fee", "Fees, share", ONE, new Bounds(0, true, 1, false), 0);
        security = c.keyList("security", "loan_security", "Secured by", kinds.key.id());
        firstMonth = c.numbers(
                "first_month",
                "loan_first_month",
                "First payment in month",
                MONTH,
                new Bounds(1, true, MONTHS_OF_IT, true),
                0);
        c.words("source", "loan_source", "Source");
        payments = payments(b);
        b.rule(new PaymentsFit(term, paymentsAYear, payments.size()));
        b.rule(new InterestOnlyEnds(interestOnly, term));
        b.rule(new AtMost(balloon, amount));
        b.rule(new OneBlank(key, amount));
    }

    private static Axis payments(BudgetBuilder b) {
        List<String> asked =
                b.structure().keys(TableForm.lengthOf(FarmTable.LOANS.file())).keys();
        return Axis.periods(
                "loan_payment", "Payment", asked.isEmpty() ? RunLength.keys(FarmTable.ROOM_WITHOUT_LOANS) : asked);
    }
}
