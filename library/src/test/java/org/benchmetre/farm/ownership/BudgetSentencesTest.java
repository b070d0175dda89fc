package org.benchmetre.farm.ownership;

import static org.assertj.core.api.Assertions.assertThat;

import org.benchmetre.budget.run.Figures;
import org.benchmetre.farm.Sample;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What the enterprise budget says in words. */
class BudgetSentencesTest {

    private static Figures with(String... settings) {
        return Figures.of(Sample.with(Sample.troughHouse(), settings));
    }

    @Test
    void a_year_that_pays() {
        assertThat(with().text("budget_answer"))
                .isEqualTo(
                        "A year brings in 12,971 USD against listed costs of 12,537 USD: 434 USD is left, 2.17 USD a metre of bench.");
    }

    @Test
    void a_year_that_does_not() {
        assertThat(with("price_level=0.5 1").text("budget_answer"))
                .contains(" USD is missing, ")
                .doesNotContain("-");
    }

    @Test
    void low_and_high_yield() {
        assertThat(with().text("budget_yields"))
                .startsWith("Low yield, 300 g a plant and crop, leaves -")
                .contains(" USD above listed costs; high yield, 1,350 g a plant and crop, leaves ")
                .endsWith(" USD.");
    }

    @Test
    void break_evens_in_kilograms_and_pounds() {
        assertThat(with().text("budget_break_even"))
                .isEqualTo(
                        "Break-even over costs as listed: 10.00 USD/kg (4.53 USD/lb); or 1,051 g (2.32 lb) a plant and crop.");
        assertThat(with().text("budget_break_even_operating"))
                .isEqualTo(
                        "Break-even over operating costs: 8.80 USD/kg (3.99 USD/lb); or 891 g (1.96 lb) a plant and crop.");
    }

    @ParameterizedTest
    @CsvSource({
        "yield_per_plant=0 g/(plant crop), 'none, since there is no fruit.'",
        "price_level=0.1 1, a further kg leaves nothing"
    })
    void where_there_is_none_the_reason_stands(String setting, String reason) {
        assertThat(with(setting).text("budget_break_even")).contains(reason);
    }

    @ParameterizedTest
    @ValueSource(ints = {1990, 2005, 2026, 2100})
    void the_citation_names_title_year_version_and_method(int year) {
        assertThat(with("plan_year=" + year + " 1").text("budget_citation"))
                .startsWith("Cite as: Invented demonstration: trough house with ten benches, prices of " + year
                        + ", Benchmetre ")
                .containsPattern("Benchmetre [0-9]+\\.[0-9]+\\.[0-9]+(-SNAPSHOT)?\\. Method: enterprise budget ")
                .endsWith("(AAEA, Commodity Costs and Returns Estimation Handbook, 2000).");
    }
}
