package org.benchmetre.farm.loans;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.assertj.core.data.Offset;
import org.benchmetre.budget.run.Figures;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** Two loans in equal principal: 2,400 at 12 % over 24 months, and 9,000 at 10 % over three years, first paid in month 6. */
class LoanTotalsTest {

    /** Sums of some dozen doubles of money. */
    private static final Offset<Double> NEAR = within(1e-8);

    private static Figures f;

    @BeforeAll
    static void read() {
        f = Figures.of(LoanPlan.of(
                "loan,amount,rate,term,payments_per_year,kind,first_month",
                "pump,2400,0.12,2,12,equal_principal,",
                "house,9000,0.1,3,1,equal_principal,6"));
    }

    private static void is(String line, String period, double expected) {
        assertThat(f.number(line, period)).as("%s %s", line, period).isCloseTo(expected, NEAR);
    }

    /** The pump pays 100 and 1 % of what is left each month; the house 3,000 in month 6, with half a year of interest, 450, and 18. */
    @Test
    void months_have_what_falls_due_in_them() {
        is("interest_in_month", "1", 24);
        is("principal_in_month", "1", 100);
        is("interest_in_month", "6", 19 + 450);
        is("principal_in_month", "6", 3100);
        is("interest_in_month", "18", 7 + 600);
        is("principal_in_month", "24", 100);
        assertThat(f.number("loan_interest_in_month", "house", "7")).isZero();
    }

    /** The house is paid off in month 30, with 300 of interest on the last 3,000. */
    @Test
    void years_are_the_sum_of_their_months() {
        is("interest_of_year", "0", 0);
        is("interest_of_year", "1", 24 + 23 + 22 + 21 + 20 + 19 + 18 + 17 + 16 + 15 + 14 + 13 + 450);
        is("principal_of_year", "0", 0);
        is("principal_of_year", "1", 1200 + 3000);
        is("interest_of_year", "2", 78 + 600);
        is("interest_of_year", "3", 300);
        is("principal_of_year", "3", 3000);
        is("interest_of_year", "4", 0);
        double months = 0;
        for (int month = 1; month <= 12; month++) {
            months += f.number("interest_in_month", Integer.toString(month));
        }
        assertThat(months).isCloseTo(f.number("interest_of_year", "1"), NEAR);
    }

    @Test
    void debt_runs_down_from_the_amounts_to_exactly_nothing() {
        is("debt_at_year_end", "0", 11_400);
        is("debt_at_year_end", "1", 1200 + 6000);
        is("debt_at_year_end", "2", 3000);
        assertThat(f.number("debt_at_year_end", "3")).isZero();
        assertThat(f.number("debt_at_year_end", "30")).isZero();
    }

    /** At the end of year 1 the house owes half a year on 6,000, at the end of year 2 on 3,000. */
    @Test
    void interest_is_owed_since_the_last_payment() {
        is("accrued_interest", "0", 0);
        is("accrued_interest", "1", 300);
        is("accrued_interest", "2", 150);
        is("accrued_interest", "3", 0);
    }

    /** 24 of interest at 12 % is 2,400 owed for a twelfth of a year; a point more of rate would cost a hundredth of what is owed. */
    @Test
    void what_is_owed_times_how_long_carries_a_shock_of_interest() {
        is("owed_in_month", "1", 200);
        is("owed_in_month", "6", 1900 / 12.0 + 4500);
        is("owed_in_year", "3", 3000);
        Figures dearer = Figures.of(LoanPlan.of(
                "loan,amount,rate,term,payments_per_year,kind,first_month",
                "pump,2400,0.13,2,12,equal_principal,",
                "house,9000,0.11,3,1,equal_principal,6"));
        double more = dearer.number("interest_of_year", "1") - f.number("interest_of_year", "1");
        assertThat(more).isCloseTo(0.01 * f.number("owed_in_year", "1"), NEAR);
    }
}
