package org.benchmetre.farm.whole;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.assertj.core.data.Offset;
import org.benchmetre.Benchmetre;
import org.benchmetre.Plan;
import org.benchmetre.ScenarioException;
import org.benchmetre.farm.Sample;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The plan beside published farms: quotients that anyone can redo, and the word that stands beside each. */
class BesidePublishedTest {

    /** A quotient of two doubles. */
    private static final Offset<Double> ROUNDING = within(1e-9);

    private static final double FLOOR = 24 * 9.6;

    private static Plan house(String... settings) throws ScenarioException {
        return Benchmetre.read(Sample.TROUGH_HOUSE, Optional.empty(), List.of(settings));
    }

    private static double of(Plan plan, String address) {
        return plan.quantity(address).value();
    }

    @Test
    void figures_are_totals_over_floor_and_fruit() throws ScenarioException {
        Plan plan = house();
        double hours = of(plan, "labour_hours_total");
        double fruit = of(plan, "yield_total");
        assertThat(of(plan, "published_figure[first_cost]")).isCloseTo(of(plan, "first_cost_total") / FLOOR, ROUNDING);
        assertThat(of(plan, "published_figure[hours_per_area]")).isCloseTo(hours / FLOOR, ROUNDING);
        assertThat(of(plan, "published_figure[hours_per_kg]")).isCloseTo(hours / fruit, ROUNDING);
        assertThat(of(plan, "published_figure[fruit_per_area]")).isCloseTo(fruit / FLOOR, ROUNDING);
        assertThat(of(plan, "published_figure[cost_per_kg]")).isCloseTo(of(plan, "total_cost") / fruit, ROUNDING);
        assertThat(of(plan, "published_figure[fruit_work_share]"))
                .isCloseTo((of(plan, "picking_hours") + of(plan, "packing_hours")) / hours, ROUNDING);
    }

    /** 1,300 plants on 230.4 m2 leave 5.64 times their marketable fruit in kg: 0.9 of 0.98 of what they bear, less dry plants. */
    @ParameterizedTest
    @CsvSource({"700, below", "1100, within", "3000, above"})
    void a_figure_is_below_within_or_above_what_is_published(String grams, String place) throws ScenarioException {
        Plan plan = house("yield_per_plant=" + grams + " g/(plant crop)");
        assertThat(plan.text("published_place[fruit_per_area]")).isEqualTo(place);
        assertThat(plan.text("published_told[fruit_per_area]")).startsWith(place + " 3.68 to 12.00: ");
    }

    @Test
    void a_year_without_fruit_has_no_cost_of_a_kilogram() throws ScenarioException {
        Plan plan = house("yield_per_plant=0");
        assertThat(of(plan, "published_figure[cost_per_kg]")).isZero();
        assertThat(plan.figures().troubles()).isEmpty();
    }

    private static int figuresIn(String currency) throws ScenarioException {
        return Sample.bare()
                .entry("plan_currency", currency)
                .build()
                .budget()
                .line("published_label")
                .size();
    }

    @Test
    void money_of_another_worth_is_not_compared() throws ScenarioException {
        assertThat(figuresIn("EUR")).isEqualTo(6);
        assertThat(figuresIn("JPY")).isEqualTo(4);
    }

    @Test
    void a_crop_of_which_nothing_is_published_has_no_such_table() throws ScenarioException {
        Path gutters = Path.of("src", "test", "resources", "org", "benchmetre", "gutter-house");
        assertThat(Benchmetre.read(gutters).budget().find("published_label")).isEmpty();
    }
}
