package org.benchmetre.farm.loans;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.benchmetre.scenario.Fault;
import org.benchmetre.scenario.Faults;
import org.benchmetre.scenario.Settings;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What is wrong with a loan is told with file, row, column, what was found and what is expected. */
class LoanFaultsTest {

    private static final String HEADER =
            "loan,amount,rate,term,payments_per_year,interest_only_months,balloon,first_month";

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "5000,0.08,0,,,, | column term: found \"0 yr\", expected a number above 0 and of at most 40 yr for Term (loan_term[bank]).",
                "5000,8,5,,,, | column rate: found \"8 1/yr (nominal)\", expected a number from 0 to 0.5 1/yr (nominal) for Rate"
                        + " (loan_rate[bank]); did you mean 0.08 or 8 %? 8 would be 800 % a year.",
                "5000,60 %,5,,,, | column rate: found \"60 %/yr (nominal)\", expected a number from 0 to 50 %/yr (nominal) for Rate"
                        + " (loan_rate[bank]).",
                "5000,,5,,,, | column rate: found nothing, expected a number from 0 to 0.5 1/yr (nominal) for Rate (loan_rate[bank]).",
                "5000,0.08,5,2,,, | column payments_per_year: found \"2\", expected one of 12, 4, 1 for Payments a year"
                        + " (loan_payments_a_year[bank]); did you mean 12?",
                "5000,0.08,2.5,1,,, | column term: found \"2.5 yr\", expected a term of whole payments, which come once a year,"
                        + " for Term (loan_term[bank]).",
                "5000,0.08,5,,60,, | column interest_only_months: found \"60 mo\", expected fewer months than the term of the loan,"
                        + " \"5 yr\", has, for Interest only (loan_interest_only[bank]).",
                "5000,0.08,5,,,5001, | column balloon: found \"5001 USD (nominal)\", expected at most Amount, \"5000 USD (nominal)\", for"
                        + " Balloon (loan_balloon[bank]).",
                "5000,0.08,5,,,,0 | column first_month: found \"0 mo\", expected a whole number from 1 to 480 mo for First payment in"
                        + " month (loan_first_month[bank])."
            })
    void a_fault_names_its_place_and_what_is_expected(String cells, String fault) {
        assertThat(LoanPlan.faults(HEADER, "bank," + cells)).containsExactly(LoanPlan.FILE + ", row 2, " + fault);
    }

    @Test
    void two_loans_of_one_name_are_a_fault() {
        assertThat(LoanPlan.faults(HEADER, "bank,1,0,1,,,,", "bank,2,0,1,,,,"))
                .containsExactly(
                        "loans.csv, row 3, column loan: found \"bank\", which row 2 has already, expected each row of"
                                + " loans.csv once.");
    }

    @Test
    void two_loans_without_an_amount_are_a_fault() {
        assertThat(LoanPlan.faults(HEADER, "bank,,0.08,5,,,,", "dealer,,0.08,5,,,,", "third,0,0.08,5,,,,"))
                .containsExactly(
                        "loans.csv, row 3, column amount: found nothing, expected an amount, since \"bank\" has none already and"
                                + " brings what is missing, for Amount (loan_amount[dealer]).",
                        "loans.csv, row 4, column amount: found \"0 USD (nominal)\", expected an amount, since \"bank\" has none"
                                + " already and brings what is missing, for Amount (loan_amount[third]).");
        LoanPlan.of(HEADER, "bank,,0.08,5,,,,", "dealer,1,0.08,5,,,,");
    }

    @Test
    void security_is_named_by_kinds_of_use() {
        assertThat(LoanPlan.faults("loan,rate,term,security", "bank,0.08,5,house equipmint"))
                .containsExactly(
                        "loans.csv, row 2, column security: found \"equipmint\", expected one of land, house, equipment,"
                                + " growing, plants, cash, other for Secured by (loan_security[bank]); did you mean equipment?");
        LoanPlan.of("loan,rate,term,security", "bank,0.08,5,house equipment");
    }

    /** A balloon is held against an amount only where there is one: the amount of a balancing loan follows from the plan. */
    @Test
    void a_balloon_of_a_loan_without_an_amount_is_taken() {
        LoanPlan.of(HEADER, "bank,,8 %,5,,,5001,");
    }

    @Test
    void a_term_that_is_made_longer_elsewhere_has_no_room() {
        Faults faults = new Faults();
        LoanPlan.read(faults, HEADER + "\nbank,1,0,5,,,,\n", "", Settings.parse(List.of("loan_term[bank]=30")));
        assertThat(faults.faults())
                .extracting(Fault::message)
                .singleElement()
                .asString()
                .contains(
                        "found \"30 yr\", which takes 360 payments, expected at most 60 payments, as many as the schedule has rows; to"
                                + " have more, write the term in loans.csv, not elsewhere, for Term (loan_term[bank])");
    }
}
