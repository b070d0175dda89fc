package org.benchmetre;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.benchmetre.budget.Budget;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.entry.Given;
import org.benchmetre.budget.run.Figures;
import org.benchmetre.farm.Sample;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** A flip value is one: fed back it makes two ways cost the same, and on either side of it another one of the two costs less. */
class FlipValuesTest {

    /** Pulses so long that the drain which is planned covers what empties from the lines. */
    private static final String LONG_PULSES = "pulse_per_plant=1000 mL/plant";

    /** A ten-thousandth of what is asked for, 0.01 %: the search ends at neighbouring doubles, or nearly so. */
    private static final double RELATIVE = 1e-9;

    private static final double ASIDE = 0.001;
    private static final Plan PLAN = plan();

    private static Plan plan(String... settings) {
        try {
            return Benchmetre.read(
                    Sample.TROUGH_HOUSE,
                    Optional.empty(),
                    Stream.concat(Stream.of(LONG_PULSES), Stream.of(settings)).toList());
        } catch (ScenarioException e) {
            throw new IllegalStateException(e);
        }
    }

    /** A flip value of the sample: the entry as one types it, and the row of the way it flips to. */
    record Flip(String address, double value, int to) {

        Figures with(double value) {
            return Figures.of(Sample.with(PLAN.budget(), address + "=" + value + " " + unit()));
        }

        private String unit() {
            return PLAN.budget().line(address.replaceFirst("\\[.*", "")).unit().toString();
        }
    }

    static Stream<Flip> flips() {
        Figures f = PLAN.figures();
        Budget budget = PLAN.budget();
        Line value = budget.line("flip_value");
        return IntStream.range(0, value.size())
                .filter(row -> !f.hasReason(value, row))
                .mapToObj(row -> new Flip(
                        f.text(budget.line("flip_address"), row),
                        f.number(value, row),
                        wayOf(f.text(budget.line("flip_to"), row))));
    }

    private static int wayOf(String label) {
        Line labels = PLAN.budget().line("way_label");
        return IntStream.range(0, labels.size())
                .filter(way -> PLAN.figures().text(labels, way).equals(label))
                .findFirst()
                .orElseThrow();
    }

    private static int recommended() {
        Line keys = PLAN.budget().line("way_key");
        return keys.axes().get(0).indexOf(PLAN.figures().text("recommended_way"));
    }

    private static double cost(Figures f, int way) {
        return f.number(f.budget().line("way_yearly_cost_per_metre"), way);
    }

    private static double lead(Figures f, Flip flip) {
        return cost(f, flip.to()) - cost(f, recommended());
    }

    @Test
    void the_sample_has_flip_values_of_life_price_clogging_wage_and_fruit() {
        assertThat(flips().map(Flip::address))
                .contains(
                        "material_life[tape]",
                        "material_price[tape]",
                        "material_price[dripline]",
                        "way_failed_per_year[tape]",
                        "install_wage",
                        "price_level");
    }

    @ParameterizedTest
    @MethodSource("flips")
    void fed_back_it_makes_both_ways_cost_the_same(Flip flip) {
        Figures there = plan(flip.address() + "=" + flip.value()).figures();
        double first = cost(there, recommended());
        assertThat(first).isPositive();
        assertThat(cost(there, flip.to())).isCloseTo(first, within(RELATIVE * first));
    }

    @ParameterizedTest
    @MethodSource("flips")
    void on_either_side_of_it_another_one_costs_less(Flip flip) {
        double below = lead(flip.with(flip.value() * (1 - ASIDE)), flip);
        double above = lead(flip.with(flip.value() * (1 + ASIDE)), flip);
        assertThat(lead(PLAN.figures(), flip)).isPositive();
        assertThat(below * above).isNegative();
    }

    /** No value between the entry and its flip value makes another way cost less: it is the nearest one. */
    @ParameterizedTest
    @MethodSource("flips")
    void nothing_flips_between_the_entry_and_its_flip_value(Flip flip) {
        Line current = PLAN.budget().line("flip_current");
        Line address = PLAN.budget().line("flip_address");
        int row = IntStream.range(0, address.size())
                .filter(i -> PLAN.figures().text(address, i).equals(flip.address()))
                .findFirst()
                .orElseThrow();
        double now = PLAN.figures().number(current, row);
        for (double part : new double[] {0, 0.25, 0.5, 0.75, 0.99}) {
            Figures f = flip.with(now + part * (flip.value() - now));
            assertThat(f.text("recommended_way")).as("at " + part).isEqualTo("tape");
        }
    }

    @Test
    void the_life_of_tape_decides_which_way_is_recommended() {
        Flip life = flips().filter(flip -> flip.address().equals("material_life[tape]"))
                .findFirst()
                .orElseThrow();
        assertThat(life.with(life.value() * (1 + ASIDE)).text("recommended_way"))
                .isEqualTo("tape");
        assertThat(life.with(life.value() * (1 - ASIDE)).text("recommended_way"))
                .isEqualTo("dripline");
    }

    @Test
    void typed_over_in_a_workbook_what_a_search_found_is_called_stale() {
        Line life = PLAN.budget().line("material_life");
        int tape = life.axes().get(0).indexOf("tape");
        Map<Line, Map<Integer, Given>> change = Map.of(life, Map.of(tape, Given.number(1.9, life.unit())));
        assertThat(PLAN.figures().text("flip_state")).startsWith("as filled");
        assertThat(PLAN.figures().typedOver(change).text("flip_state")).startsWith("out of date");
        assertThat(Figures.of(PLAN.budget().with(change)).text("flip_state")).startsWith("as filled");
    }

    /** A target that the dripline misses: it is cheaper at the flip value, but would not be recommended there. */
    @Test
    void a_way_that_does_not_reach_the_target_flips_nothing() {
        Figures f = plan("target_uniformity=96").figures();
        Line value = f.budget().line("flip_value");
        assertThat(f.number("ways_reaching_target")).isEqualTo(1);
        for (int row = 0; row < value.size(); row++) {
            assertThat(f.text(value, row)).isIn("no other system reaches the target", "");
        }
        assertThat(f.number("doubts_inside")).isZero();
    }
}
