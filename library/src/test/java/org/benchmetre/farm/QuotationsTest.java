package org.benchmetre.farm;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.benchmetre.Benchmetre;
import org.benchmetre.Plan;
import org.benchmetre.PlanBuilder;
import org.benchmetre.ScenarioException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A part has a supplier, the days of a quotation and the loan that pays it; none of them moves a figure. */
class QuotationsTest {

    private static final Map<String, String> QUOTED =
            Map.of("supplier", "=Sheds & Co", "quoted", "2026-03-01", "valid_until", "2026-06-30", "paid_by", "Bank_1");

    @TempDir
    Path folder;

    private static PlanBuilder with(Map<String, String> more) {
        Map<String, String> cells = new HashMap<>(
                Map.of("driver", "bench_metres", "rate", "1", "price", "2", "price_year", "2026", "group", "Benches"));
        cells.putAll(more);
        return Sample.bare()
                .row("materials", "frame", cells)
                .row("loans", "bank_1", Map.of("label", "First bank", "amount", "100", "rate", "8 %", "term", "10"));
    }

    private static String text(Plan plan, String line) {
        return plan.figures().text(plan.budget().line(line), 1);
    }

    @Test
    void a_quotation_is_kept_as_it_was_given() throws ScenarioException, IOException {
        Plan plan = with(QUOTED).build();
        plan.writeScenario(folder.resolve("house"));
        for (Plan each : List.of(plan, Benchmetre.read(folder.resolve("house")))) {
            assertThat(text(each, "material_supplier")).isEqualTo("=Sheds & Co");
            assertThat(text(each, "material_quoted")).isEqualTo("2026-03-01");
            assertThat(text(each, "material_valid_until")).isEqualTo("2026-06-30");
            assertThat(text(each, "material_paid_by")).isEqualTo("bank_1");
        }
    }

    @Test
    void it_may_be_left_out_and_moves_no_figure() throws ScenarioException {
        Plan without = with(Map.of()).build();
        assertThat(text(without, "material_quoted")).isEmpty();
        assertThat(text(without, "material_paid_by")).isEmpty();
        for (String line : List.of("first_cost_total", "yearly_cost_total", "net_present_value")) {
            assertThat(with(QUOTED).build().figures().number(line))
                    .isEqualTo(without.figures().number(line));
        }
    }

    @Test
    void dates_of_another_form_or_in_the_wrong_order_are_named() {
        assertThatThrownBy(with(Map.of("quoted", "3/31/2026"))::build)
                .hasMessageContaining("found \"3/31/2026\", expected a date written year-month-day, such as 2026-03-31,"
                        + " of the years 1990 to 2100, for Quoted on (material_quoted[frame]).");
        assertThatThrownBy(with(Map.of("quoted", "2026-03-31", "valid_until", "2026-03-01"))::build)
                .hasMessageContaining(
                        "column valid_until: found \"2026-03-01\", expected a date not before 2026-03-31 of"
                                + " Quoted on for Quote valid until (material_valid_until[frame]).");
    }

    @Test
    void a_part_is_paid_by_a_loan_that_is_listed() throws ScenarioException {
        assertThat(text(with(Map.of("paid_by", " BANK_1 ")).build(), "material_paid_by"))
                .isEqualTo("bank_1");
        assertThatThrownBy(with(Map.of("paid_by", "bank_2"))::build)
                .hasMessageContaining("column paid_by: found \"bank_2\", expected one of bank_1 for Paid by loan"
                        + " (material_paid_by[frame]); did you mean bank_1?");
        assertThatThrownBy(Sample.bare().row("materials", "frame", Map.of("paid_by", "bank_1"))::build)
                .hasMessageContaining("expected a key of the table Loan, which has no row, for Paid by loan");
    }
}
