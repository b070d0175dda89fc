package org.benchmetre.farm.loans;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.assertj.core.data.Offset;
import org.benchmetre.budget.Budget;
import org.benchmetre.budget.run.Figures;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Published loans and small ones that a reader can redo. */
class LoanScheduleTest {

    /** Half a cent, to which the sources print. */
    private static final Offset<Double> PRINTED = within(0.005);

    /** Some dozen operations on doubles of money. */
    private static final Offset<Double> NEAR = within(1e-8);

    private static final String HEADER =
            "loan,amount,rate,term,payments_per_year,kind,interest_only_months,balloon,first_month";

    private static Figures bank(String cells) {
        return Figures.of(LoanPlan.of(HEADER, "bank," + cells));
    }

    private static double at(Figures f, String line, int payment) {
        return f.number(line, "bank", Integer.toString(payment));
    }

    private static String year(Figures f, int payment) {
        return f.text(f.budget().line("loan_due_year"), payment - 1);
    }

    private static void payment(Figures f, int payment, double interest, double principal, double balance) {
        assertThat(at(f, "loan_interest", payment)).as("interest %s", payment).isCloseTo(interest, NEAR);
        assertThat(at(f, "loan_principal", payment)).as("principal %s", payment).isCloseTo(principal, NEAR);
        assertThat(at(f, "loan_balance", payment)).as("balance %s", payment).isCloseTo(balance, NEAR);
    }

    /** Documentation of numpy-financial, function ppmt: 2,500 over a year of months at 8.24 %. */
    @ParameterizedTest
    @CsvSource({
        "1, 200.58", "2, 201.96", "3, 203.35", "4, 204.74", "5, 206.15", "6, 207.56",
        "7, 208.99", "8, 210.42", "9, 211.87", "10, 213.32", "11, 214.79", "12, 216.26"
    })
    void principal_of_twelve_months_is_that_of_numpy(int month, double principal) {
        assertThat(at(bank("2500,0.0824,1,12,,,,"), "loan_principal", month)).isCloseTo(principal, PRINTED);
    }

    /** Farm loan lesson: 12,000 over three yearly payments at 8 %, in equal payments; 664.29 of the second is interest. */
    @Test
    void equal_payments_are_those_of_the_farm_loan_lesson() {
        Figures f = bank("12000,0.08,3,1,,,,");
        assertThat(f.number("loan_level", "bank")).isCloseTo(4656.402168555936, within(4656 * 1e-9));
        assertThat(at(f, "loan_interest", 1)).isCloseTo(960, NEAR);
        assertThat(at(f, "loan_interest", 2)).isCloseTo(664.2878265, within(1e-6));
        assertThat(at(f, "loan_balance", 3)).isZero();
        assertThat(year(f, 3)).isEqualTo("Year 3");
    }

    /** The same in equal principal: 4,000 each year and 960, 640, 320 of interest. */
    @Test
    void equal_principal_is_that_of_the_farm_loan_lesson() {
        Figures f = bank("12000,0.08,3,1,equal_principal,,,");
        payment(f, 1, 960, 4000, 8000);
        payment(f, 2, 640, 4000, 4000);
        payment(f, 3, 320, 4000, 0);
        payment(f, 4, 0, 0, 0);
    }

    /** 1 % a quarter, six quarters: the three that are due within 11 months pay interest alone, the other three pay back. */
    @Test
    void interest_alone_comes_first() {
        Figures f = bank("30301,0.04,1.5,4,,11,,");
        payment(f, 3, 303.01, 0, 30301);
        double level = 30301 * 0.01 / (1 - 1 / (1.01 * 1.01 * 1.01));
        payment(f, 4, 303.01, level - 303.01, 30301 - (level - 303.01));
        assertThat(at(f, "loan_balance", 6)).isZero();
        assertThat(year(f, 4)).isEqualTo("Year 1");
        assertThat(year(f, 5)).isEqualTo("Year 2");
        assertThat(year(f, 7)).isEmpty();
    }

    /** 10,000 at 10 % with 4,000 left: each payment has 400 of interest on the balloon, and pays back 6,000 beside it. */
    @Test
    void a_balloon_is_paid_with_the_last_payment() {
        Figures f = bank("10000,0.1,2,1,,,4000,");
        double level = 400 + 6000 * 0.1 / (1 - 1 / 1.21);
        payment(f, 1, 1000, level - 1000, 11000 - level);
        double owed = 11000 - level;
        payment(f, 2, 0.1 * owed, owed, 0);
        assertThat(0.1 * owed + owed).isCloseTo(level + 4000, NEAR);
        payment(bank("10000,0.1,2,1,equal_principal,,4000,"), 2, 700, 7000, 0);
        payment(bank("10000,0.1,2,1,,,10000,"), 1, 1000, 0, 10000);
    }

    @Test
    void without_interest_equal_payments_are_equal_principal() {
        Figures f = bank("1200,0,1,12,,,,");
        payment(f, 1, 0, 100, 1100);
        payment(f, 12, 0, 100, 0);
        assertThat(f.number("owed_in_year", "1")).isZero();
    }

    /** 12,000 at 6 %, first due in month 5: interest of five months, 300; principal as in a schedule from month 1. */
    @Test
    void a_longer_first_period_bears_interest_for_its_months() {
        Figures f = bank("12000,0.06,1,12,equal_principal,,,5");
        payment(f, 1, 300, 1000, 11000);
        payment(f, 2, 55, 1000, 10000);
        assertThat(year(f, 8)).isEqualTo("Year 1");
        assertThat(year(f, 9)).isEqualTo("Year 2");
        double level = 12000 * 0.005 / (1 - Math.pow(1.005, -12));
        payment(bank("12000,0.06,1,12,,,,5"), 1, 300, level - 60, 12060 - level);
    }

    /** 1,000 at 10 % in three yearly payments: 402.1148 each, paid as 402.11; 100, 69.79, 36.56 of interest; the last is 402.13. */
    @Test
    void each_payment_is_rounded_and_the_last_takes_the_rest() {
        Budget plan = LoanPlan.with(
                "line,value,unit,source\nloan_rounding,each_payment,,\n", HEADER, "bank,1000,0.1,3,1,,,,");
        Figures f = Figures.of(plan);
        payment(f, 1, 100, 302.11, 697.89);
        payment(f, 2, 69.79, 332.32, 365.57);
        payment(f, 3, 36.56, 365.57, 0);
        assertThat(at(f, "loan_balance", 3)).isZero();
    }

    @Test
    void in_yen_there_are_no_cents() {
        Budget plan = LoanPlan.with(
                "line,value,unit,source\nplan_currency,JPY,,\nloan_rounding,each_payment,,\n",
                HEADER,
                "bank,1000,0.1,3,1,,,,");
        Figures f = Figures.of(plan);
        payment(f, 1, 100, 302, 698);
        payment(f, 2, 70, 332, 366);
        payment(f, 3, 37, 366, 0);
    }

    @Test
    void a_blank_amount_and_a_spare_row_are_nothing() {
        Figures f = bank(",0.08,3,1,,,,");
        payment(f, 1, 0, 0, 0);
        assertThat(f.number("loan_payment_count", "bank")).isZero();
        assertThat(f.number("loan_interest", "spare_1", "1")).isZero();
        assertThat(f.number("debt_at_year_end", "30")).isZero();
    }
}
