package org.benchmetre.farm.loans;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.benchmetre.budget.Budget;
import org.benchmetre.budget.Line;
import org.benchmetre.farm.Sample;
import org.benchmetre.scenario.Faults;
import org.benchmetre.scenario.ScenarioWriter;
import org.benchmetre.scenario.Settings;
import org.benchmetre.scenario.TableForm;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The schedule is as long as the longest loan of the file, and loans are written as they are read. */
class LoanStructureTest {

    private static final String HEADER = "loan,rate,term,payments_per_year";

    private static int room(Budget plan) {
        return plan.line("loan_payment_number").size();
    }

    @ParameterizedTest
    @CsvSource({
        "30, , 360",
        "30 yr, 12, 360",
        "30, 4, 120",
        "30, 1, 36",
        "18 mo, 12, 24",
        "1, 1, 12",
        "0.5, 4, 12",
        "40, 12, 480"
    })
    void the_schedule_has_room_for_the_payments_of_a_loan(String term, String payments, int room) {
        Budget plan = LoanPlan.of(HEADER, "bank,0.08," + term + "," + (payments == null ? "" : payments));
        assertThat(room(plan)).isEqualTo(room);
    }

    @Test
    void the_longest_loan_counts() {
        String header = "loan,amount,rate,term,payments_per_year";
        assertThat(room(LoanPlan.of(header, "pump,1,0.08,5,12", "land,2,0.06,25,4", "house,3,0.06,30,1")))
                .isEqualTo(108);
    }

    @Test
    void without_a_loan_there_is_room_for_five_years() {
        assertThat(room(LoanPlan.of(""))).isEqualTo(60);
    }

    /** Nothing of such a cell is read for the structure; one fault says what is wrong with it. */
    @ParameterizedTest
    @CsvSource({"1e300", "-3", "five", "1000", "0"})
    void a_term_that_is_none_makes_no_schedule(String term) {
        assertThat(LoanPlan.faults(HEADER, "bank,0.08," + term + ",12")).hasSize(1);
    }

    @Test
    void a_decimal_comma_is_read_as_one() {
        Budget plan = LoanPlan.of("loan;rate;term;payments_per_year", "bank;0,08;7,5;4");
        assertThat(room(plan)).isEqualTo(36);
        assertThat(plan.given(plan.line("loan_term")).get(0).number()).isEqualTo(7.5);
    }

    @Test
    void loans_are_written_as_they_are_read() {
        String header =
                "loan,label,amount,rate,term,payments_per_year,kind,interest_only_months,balloon,fee,security,first_month,"
                        + "source";
        Budget plan = LoanPlan.of(
                header,
                "bank,Farm bank,150000,6.5 %,20,4,equal_principal,12,20000,0.01,land house,6,quoted May 2026",
                "pump,Dealer,9000,0.09,4 yr,12,,,,,equipment,,invented");
        plan = Sample.with(plan, "loan_key[spare_1]=tools", "loan_amount[spare_1]=500 money_nominal");
        Map<String, String> files = new ScenarioWriter(LoanPlan.FORMS).files(plan);
        assertThat(files.get(LoanPlan.FILE)).startsWith("loan,");
        assertThat(files.get("farm.csv")).contains("loan_amount[spare_1],500");
        Faults faults = new Faults();
        Budget again = LoanPlan.read(faults, files.get(LoanPlan.FILE), files.get("farm.csv"), new Settings(List.of()))
                .orElseThrow();
        assertThat(faults.isEmpty()).isTrue();
        assertThat(faults.warnings()).isEmpty();
        assertThat(room(again)).isEqualTo(room(plan)).isEqualTo(84);
        for (Line line : plan.lines()) {
            if (plan.entry(line).isPresent()) {
                for (int cell = 0; cell < line.size(); cell++) {
                    assertThat(again.given(again.line(line.id())).get(cell).number())
                            .as(line.address(cell))
                            .isEqualTo(plan.given(line).get(cell).number());
                    assertThat(again.given(again.line(line.id())).get(cell).text())
                            .as(line.address(cell))
                            .isEqualTo(plan.given(line).get(cell).text());
                }
            }
        }
    }

    /** A term that was set for one run is written where the structure reads it. */
    @Test
    void a_term_that_was_set_is_written_in_the_file_of_loans() {
        Optional<Budget> plan = LoanPlan.read(
                new Faults(),
                HEADER + "\nbank,0.08,30,12\n",
                "",
                Settings.parse(List.of("loan_term[bank]=18 mo", "loan_payments_a_year[bank]=4")));
        Map<String, String> files = new ScenarioWriter(LoanPlan.FORMS).files(plan.orElseThrow());
        Faults faults = new Faults();
        Budget again = LoanPlan.read(faults, files.get(LoanPlan.FILE), files.get("farm.csv"), new Settings(List.of()))
                .orElseThrow();
        assertThat(again.given(again.line("loan_term")).get(0).number()).isEqualTo(1.5);
        assertThat(room(again)).isEqualTo(12);
    }

    @Test
    void a_plan_made_in_memory_has_the_structure_of_its_files() throws Exception {
        Budget plan = Sample.bare()
                .row("loans", "bank", Map.of("rate", "0.06", "term", "15", "payments_per_year", "4"))
                .build()
                .budget();
        assertThat(plan.structure().keys(TableForm.lengthOf(LoanPlan.FILE)).keys())
                .hasSize(60)
                .endsWith("60");
    }
}
