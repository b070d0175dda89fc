package org.benchmetre.farm.comparison;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import org.benchmetre.Benchmetre;
import org.benchmetre.ScenarioException;
import org.benchmetre.budget.run.Figures;
import org.benchmetre.farm.Sample;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Costs of any size rank, as in a currency of small units: unit prices of thousands of millions leave nothing blank. Prices of a pack
 * have a bound; small packs make units dear.
 */
class DearWaysTest {

    private static final double RELATIVE = 1e-9;

    private static Figures with(String... settings) throws ScenarioException {
        return Benchmetre.read(Sample.TROUGH_HOUSE, Optional.empty(), List.of(settings))
                .figures();
    }

    @ParameterizedTest
    @ValueSource(doubles = {1e-3, 1, 1e9, 1e12})
    void prices_of_any_size_leave_a_recommendation(double size) throws ScenarioException {
        Figures f = with(
                "material_pack[emitter]=" + 100 / size,
                "material_pack[tape]=" + 1000 / size,
                "material_pack[dripline]=" + 100 / size,
                "material_pack[filter]=" + 1 / size);
        String best = f.text("recommended_way");
        String next = f.text("next_way");
        assertThat(best).isIn("emitter", "tape", "dripline");
        assertThat(next).isIn("emitter", "tape", "dripline").isNotEqualTo(best);
        assertThat(f.number("ways_ranked_behind")).isEqualTo(2);
        assertThat(f.text("irrigation_verdict")).startsWith("Irrigation: ").doesNotContain("None reaches");
        double first = f.number("way_yearly_cost_per_metre", best);
        double second = f.number("way_yearly_cost_per_metre", next);
        assertThat(second).isGreaterThan(first);
        assertThat(f.number("next_cost_per_metre") - f.number("recommended_cost_per_metre"))
                .isCloseTo(second - first, within(1e-15 * second));
        assertThat(f.text("flip_state")).startsWith("as filled");
    }

    @ParameterizedTest
    @ValueSource(strings = {"emitter", "tape", "dripline"})
    void a_flip_value_of_a_part_of_a_thousand_millions_a_unit_makes_costs_meet(String part) throws ScenarioException {
        String[] prices = {
            "material_price[emitter]=300",
            "material_price[tape]=8000",
            "material_price[dripline]=1200",
            "material_pack[emitter]=1e-5",
            "material_pack[tape]=1e-4",
            "material_pack[dripline]=1e-5"
        };
        Figures f = with(prices);
        int row = f.budget().line("flip_value").axes().get(0).indexOf("material_price_" + part);
        assertThat(f.hasReason(f.budget().line("flip_value"), row)).isFalse();
        double value = f.number(f.budget().line("flip_value"), row);
        String[] there = prices.clone();
        there[List.of("emitter", "tape", "dripline").indexOf(part)] = "material_price[" + part + "]=" + value;
        Figures g = with(there);
        double first = g.number("way_yearly_cost_per_metre", f.text("recommended_way"));
        String to = f.text(f.budget().line("flip_to_way"), row);
        assertThat(g.number("way_yearly_cost_per_metre", to)).isCloseTo(first, within(RELATIVE * first));
    }
}
