package org.benchmetre.farm.lending;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.assertj.core.data.Offset;
import org.benchmetre.Benchmetre;
import org.benchmetre.Plan;
import org.benchmetre.ScenarioException;
import org.benchmetre.budget.Budget;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.entry.Given;
import org.benchmetre.budget.run.Figures;
import org.benchmetre.budget.unit.Unit;
import org.benchmetre.farm.Sample;
import org.benchmetre.scenario.Remark;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What a lender is handed: assumptions to doubt, what is complete, sales under contract, and the figures as they stood. */
class SubmissionTest {

    /** Two runs of a plan with the same entries, one of them a block of cases. */
    private static final Offset<Double> SAME = within(1e-6);

    private static Plan sample;

    @BeforeAll
    static void read() throws ScenarioException {
        sample = Benchmetre.read(Sample.SAMPLES.get(0));
    }

    private static String row(Plan plan, String line, String key) {
        Line found = plan.budget().line(line);
        return plan.figures().text(found, found.axes().get(0).indexOf(key));
    }

    private static Plan with(String... settings) throws ScenarioException {
        return sample.with(List.of(settings));
    }

    @ParameterizedTest
    @CsvSource({
        "picking_rate, 6 kg/h, 12 kg/h",
        "price_level, 0.75, 1.25",
        "fuel_price, 0.42, 0.9",
        "parts_price_level, 0.8, 1.25",
        "shock_late, 0, 6",
        "shock_interest, -0.03, 0.05"
    })
    void a_change_is_that_of_the_plan_with_the_end_of_the_range(String entry, String low, String high)
            throws ScenarioException {
        for (String end : List.of("low", "high")) {
            Plan moved = with(entry + "=" + (end.equals("low") ? low : high));
            for (Map.Entry<String, String> each : Map.of(
                            "challenge_worth_", "net_present_value", "challenge_coverage_", "coverage_lowest")
                    .entrySet()) {
                double change = moved.figures().number(each.getValue())
                        - sample.figures().number(each.getValue());
                assertThat(Double.parseDouble(row(sample, each.getKey() + end, entry)))
                        .as(each.getKey() + end)
                        .isCloseTo(change, SAME);
            }
        }
    }

    @Test
    void a_row_says_value_range_and_what_it_rests_on() throws ScenarioException {
        assertThat(row(sample, "challenge_value", "price_level")).isEqualTo("1.00 times");
        assertThat(row(sample, "challenge_range", "price_level")).isEqualTo("0.75 to 1.25 times");
        assertThat(row(sample, "challenge_evidence", "price_level")).isEqualTo("Invented for the demo");
        assertThat(row(sample, "challenge_source", "price_level")).isEqualTo("1: as entered");
        assertThat(row(sample, "challenge_value", "recovery_rate")).isEqualTo("5.0 % a year");
        assertThat(row(sample, "challenge_range", "fuel_price")).isEqualTo("0.42 to 0.90 USD/fuel unit");
        assertThat(row(with("picking_rate=8 kg/h"), "challenge_evidence", "picking_rate"))
                .isEqualTo("Own entry without source");
    }

    @Test
    void the_sentence_names_what_moves_most_and_no_coverage_without_debt() throws ScenarioException {
        String most = String.format(Locale.ROOT, "%,.0f", sample.figures().number("challenge_worth_most"));
        assertThat(sample.text("challenge_sentence"))
                .startsWith("Doubt first fruit per plant: within its usual range it moves net present value by up to "
                        + most + " USD, and lowest coverage by up to ");
        Plan bare = Sample.bare().build();
        assertThat(bare.text("challenge_sentence")).doesNotContain("coverage");
        assertThat(row(bare, "challenge_coverage_low", "price_level")).isEqualTo("no debt");
        assertThat(sample.text("challenge_evidence_sentence")).startsWith("Of 27 assumptions that decide most, 1 is");
    }

    @Test
    void nothing_is_searched_for_the_answer() {
        Figures figures = Figures.of(sample.budget());
        figures.text("answer_cost_and_return");
        figures.text("doubt_sentence");
        figures.text("expected_sentence");
        assertThat(figures.isSearched()).isFalse();
    }

    @Test
    void what_a_lender_expects_is_counted_or_not() throws ScenarioException {
        assertThat(row(sample, "expected_state", "site")).isEqualTo("counted");
        assertThat(row(sample, "expected_state", "fill")).isEqualTo("counted");
        assertThat(row(sample, "expected_state", "draw")).isEqualTo("not counted");
        assertThat(sample.text("expected_sentence"))
                .isEqualTo("Of 21 things a lender expects, 2 are not counted: say why.");
        assertThat(with("owner_draw=100").text("expected_sentence"))
                .isEqualTo("Of 21 things a lender expects, 1 is not counted: say why.");
        assertThat(with("owner_draw=100", "tax_rate=0.2").text("expected_sentence"))
                .isEqualTo("Everything a lender expects is counted.");
        assertThat(row(with("use_amount[site]=0"), "expected_state", "site")).isEqualTo("not counted");
        assertThat(row(with("building_months=0"), "expected_state", "interest")).isEqualTo("not counted");
        assertThat(row(Sample.bare().build(), "expected_state", "loans")).isEqualTo("not counted");
    }

    @Test
    void sales_under_contract_are_a_share_of_receipts() throws ScenarioException {
        Plan plan = with("contract_share=0.4", "contract_with=Berry Hall");
        String money = String.format(Locale.ROOT, "%,.0f", 0.4 * plan.figures().number("receipts_total"));
        assertThat(plan.text("contract_sentence"))
                .isEqualTo("40 % of sales, " + money + " USD a year, are under contract with Berry Hall.");
        assertThat(Sample.bare().build().text("contract_sentence"))
                .isEqualTo("No sales are under contract: ask who will buy the fruit.");
        assertThatThrownBy(() -> with("contract_share=1.4")).isInstanceOf(ScenarioException.class);
        assertThat(plan.figures().number("net_present_value"))
                .isEqualTo(sample.figures().number("net_present_value"));
    }

    @Test
    void who_prepared_it_and_when_is_said_as_far_as_it_is_entered() throws ScenarioException {
        assertThat(sample.text("prepared_sentence"))
                .isEqualTo(
                        "Prepared by the growers of the demonstration for a bank that is invented, submitted on 2026-03-31.");
        assertThat(Sample.bare().build().text("prepared_sentence"))
                .isEqualTo("Enter who prepared this plan, for whom, and when.");
        assertThatThrownBy(() -> with("submitted_on=30 June 2026")).isInstanceOf(ScenarioException.class);
    }

    @Test
    void figures_stay_as_they_were_submitted_while_entries_are_typed_over() {
        Budget budget = sample.budget();
        Figures figures = sample.figures();
        assertThat(figures.text("submitted_sentence"))
                .isEqualTo("None of these figures has moved since this was written.");
        Line level = budget.line("price_level");
        Figures after = figures.typedOver(Map.of(level, Map.of(0, Given.number(1.1, Unit.ONE))));
        double before = figures.number("receipts_total");
        assertThat(after.number("submitted_then", "receipts_total")).isEqualTo(before);
        assertThat(after.number("submitted_change", "receipts_total")).isCloseTo(0.1 * before, SAME);
        assertThat(after.number("submitted_change", "first_cost_total")).isZero();
        assertThat(after.number("submitted_coverage_change"))
                .isCloseTo(after.number("coverage_lowest") - figures.number("coverage_lowest"), SAME);
        assertThat(after.text("submitted_sentence")).isEqualTo("6 of 10 figures have moved since this was written.");
    }

    @Test
    void a_quotation_that_ended_before_the_day_of_submission_is_told() throws ScenarioException {
        Plan out = with("material_valid_until[mulch_film]=2026-03-30", "use_valid_until[site]=2026-01-31");
        assertThat(out.text("quotations_sentence"))
                .isEqualTo("2 quotations ran out before the plan was submitted: ask for new ones.");
        assertThat(out.warnings().stream().map(Remark::toString))
                .anyMatch(warning -> warning.contains("quotation ran out before the plan was submitted"));
        Plan onTheDay = with("material_valid_until[mulch_film]=2026-03-31");
        assertThat(onTheDay.text("quotations_sentence")).isEmpty();
        Plan undated = with("material_valid_until[mulch_film]=2026-03-30", "submitted_on=");
        assertThat(undated.text("quotations_sentence")).isEmpty();
    }
}
