package org.benchmetre.farm;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.stream.LongStream;
import org.benchmetre.budget.Budget;
import org.benchmetre.budget.run.Figures;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Water that drains between pulses: how it bounds uniformity, and what it and check valves do to water, money and rank. */
class PulsesTest {

    /** Sums and products of a few dozen doubles, in another order. */
    private static final double RELATIVE = 1e-9;

    private static final Budget SAMPLE = Sample.troughHouse();

    private static final List<String> WAYS = List.of("emitter", "tape", "dripline");

    static LongStream seeds() {
        return LongStream.rangeClosed(1, 20);
    }

    private static Figures with(String... settings) {
        return Figures.of(Sample.with(SAMPLE, settings));
    }

    /** 130 plants with 80 mL each run 10.4 L through a bench; 20.5 m of 13.6 mm pipe empty 2.978 L: 2.978/13.378 drains. */
    @Test
    void the_share_that_drains_is_what_empties_over_what_runs_and_empties() {
        Figures f = Figures.of(SAMPLE);
        double emptied = Math.PI / 4 * 0.136 * 0.136 * 205;
        double share = emptied / (130 * 0.08 + emptied);
        assertThat(f.number("way_drained_share", "emitter")).isCloseTo(100 * share, within(RELATIVE));
        assertThat(f.number("way_pulsed_uniformity", "emitter"))
                .isCloseTo((1 - share) * f.number("way_emission_uniformity", "emitter"), within(RELATIVE));
    }

    /** The bound turns into the steady evenness as pulses get long, and falls towards nothing as they get short. */
    @Test
    void long_pulses_are_as_even_as_lines_that_run_full_and_short_ones_are_not() {
        for (String way : WAYS) {
            double before = 0;
            for (double pulse : new double[] {0.01, 1, 10, 50, 100, 1000, 10_000}) {
                Figures f = with("pulse_per_plant=" + pulse + " mL/plant");
                double bound = f.number("way_pulsed_uniformity", way);
                assertThat(bound).isGreaterThan(before).isLessThan(f.number("way_emission_uniformity", way));
                before = bound;
            }
            assertThat(before).isCloseTo(Figures.of(SAMPLE).number("way_emission_uniformity", way), within(0.7));
        }
        assertThat(with("pulse_per_plant=0.01 mL/plant").number("way_pulsed_uniformity", "tape"))
                .isLessThan(0.05);
    }

    @Test
    void check_valves_keep_the_evenness_of_lines_that_run_full_at_any_pulse() {
        for (String pulse : List.of("pulse_per_plant=5 mL/plant", "pulse_per_plant=500 mL/plant")) {
            Figures f = with(pulse, "way_check_valves[tape]=yes");
            assertThat(f.number("way_drained_share", "tape")).isZero();
            assertThat(f.number("way_pulsed_uniformity", "tape"))
                    .isEqualTo(f.number("way_emission_uniformity", "tape"));
            assertThat(f.number("side_valve_saving", "tape")).isZero();
            assertThat(f.number("side_water_with_valves", "tape")).isEqualTo(f.number("side_water_given", "tape"));
        }
    }

    /** The driest plant has its need over whole pulses: shorter pulses take more water, nutrient solution, money and drain. */
    @Test
    void shorter_pulses_take_more_water_and_money_wherever_lines_drain() {
        Figures longer = with("pulse_per_plant=400 mL/plant");
        Figures shorter = with("pulse_per_plant=40 mL/plant");
        for (String id : List.of(
                "way_gross_water",
                "way_drain_water",
                "way_feed_cost",
                "way_pumping_cost",
                "way_yearly_cost_per_metre")) {
            for (String way : WAYS) {
                assertThat(shorter.number(id, way)).as(id).isGreaterThan(longer.number(id, way));
            }
        }
        double even = shorter.number("way_pulsed_uniformity", "tape") / 100;
        assertThat(shorter.number("way_gross_water", "tape"))
                .isCloseTo(shorter.number("year_water_need") / even, within(RELATIVE * 100));
    }

    /** Valves fitted to one system change its yearly cost by what they were said to save, whatever the entries. */
    @ParameterizedTest
    @MethodSource("seeds")
    void what_check_valves_save_is_the_difference_of_two_plans(long seed) {
        Budget seeded = Seeded.figures(SAMPLE, seed).budget();
        for (String drain : List.of("drain_handling=reuse", "drain_handling=dispose")) {
            Figures without = Figures.of(Sample.with(seeded, drain));
            for (String way : WAYS) {
                Figures fitted = Figures.of(Sample.with(seeded, drain, "way_check_valves[" + way + "]=yes"));
                double cost = without.number("way_yearly_cost_per_metre", way);
                assertThat(cost - fitted.number("way_yearly_cost_per_metre", way))
                        .isCloseTo(without.number("side_valve_saving", way), within(RELATIVE * cost));
                assertThat(fitted.number("side_water_given", way))
                        .isCloseTo(
                                without.number("side_water_with_valves", way),
                                within(RELATIVE * without.number("side_water_given", way)));
            }
        }
    }

    /** Waterings take what runs and what drains, so that they add up to the water given. */
    @ParameterizedTest
    @ValueSource(strings = {"pulse_per_plant=20 mL/plant", "pulse_per_plant=200 mL/plant"})
    void waterings_of_a_day_add_up_to_the_water_given(String pulse) {
        Figures f = with(pulse);
        for (String way : WAYS) {
            double each = f.number("pulse_per_plant") + f.number("way_drained_per_plant", way);
            double given = f.number("way_month_events", way, "mar") * each;
            assertThat(given)
                    .isCloseTo(
                            f.number("way_gross_factor", way) * f.number("month_need_per_plant", "mar"),
                            within(RELATIVE * given));
            assertThat(f.number("way_run_time", way) / 60 * f.number("way_flow_per_plant", way) * 1000)
                    .isCloseTo(each, within(RELATIVE * each));
        }
    }

    /** Pulses so long that drain is covered by what drains anyway cost nothing, and the sentence says so. */
    @Test
    void where_the_planned_drain_covers_it_valves_save_nothing() {
        Figures f = with("pulse_per_plant=1000 mL/plant", "drain_fraction=0.3 1");
        for (String way : WAYS) {
            assertThat(f.number("side_valve_saving", way)).isZero();
        }
        assertThat(f.text("irrigation_reason_pulses"))
                .contains("derived here, not published")
                .endsWith(" The drain planned covers it.");
        assertThat(Figures.of(SAMPLE).text("irrigation_reason_pulses")).contains(" Check valves save ");
        assertThat(with("way_check_valves[emitter]=yes", "way_check_valves[tape]=yes", "way_check_valves[dripline]=yes")
                        .text("irrigation_reason_pulses"))
                .isEqualTo("Nothing of a pulse drains from the lines before the next.");
    }

    /** At long pulses tape is the cheapest of the sample; at its own pulses what drains from its wide bore costs it that place. */
    @Test
    void pulses_change_which_system_comes_first() {
        assertThat(with("pulse_per_plant=1000 mL/plant").text("recommended_way"))
                .isEqualTo("tape");
        assertThat(with("pulse_per_plant=80 mL/plant").text("recommended_way")).isEqualTo("dripline");
        assertThat(with("pulse_per_plant=80 mL/plant", "way_check_valves[tape]=yes")
                        .text("recommended_way"))
                .isEqualTo("tape");
    }

    @Test
    void the_bound_is_marked_as_derived_here_wherever_it_is_explained() {
        assertThat(SAMPLE.line("way_pulsed_uniformity").note()).contains("derived here, not published");
    }
}
