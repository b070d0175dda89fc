package org.benchmetre.farm.irrigation.hydraulics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.SplittableRandom;
import org.benchmetre.budget.Budget;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.run.Figures;
import org.benchmetre.farm.Sample;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The lines of a bench in the sample: outlets in reach, pressure, evenness, runs, stored water, and their warnings. */
class BenchLinesTest {

    private static final Budget SAMPLE = Sample.troughHouse();
    private static final double ROUNDING = 1e-9;

    @Test
    void water_at_20_degrees_has_the_usual_viscosity() {
        assertThat(with("water_temperature=20 degC").number("water_viscosity")).isCloseTo(1.004, within(0.002 * 1.004));
        assertThat(with("water_temperature=10 degC").number("water_viscosity")).isCloseTo(1.307, within(0.005 * 1.307));
        assertThat(with("water_temperature=40 degC").number("water_viscosity")).isCloseTo(0.658, within(0.005 * 0.658));
    }

    @Test
    void a_strip_too_far_off_leaves_plants_with_no_outlet() {
        Figures f = with("way_strip_offset[tape]=6 cm", "way_outlet_spacing[tape]=20 cm", "way_reach[tape]=10 cm");

        assertThat(f.number("way_outlets_in_reach", "tape")).isEqualTo(0);
        assertThat(f.number("way_emission_uniformity", "tape")).isEqualTo(0);
        assertThat(text(f, "way_reach_warning", "tape"))
                .contains("no outlet in reach")
                .contains("outlet_spacing");
        assertThat(f.number("way_uniformity_in_range", "tape")).isZero();
    }

    @Test
    void the_fewest_outlets_in_reach_are_those_of_the_worst_place_along_the_line() {
        SplittableRandom random = new SplittableRandom(4);
        for (int i = 0; i < 40; i++) {
            double spacing = 0.05 + 0.3 * random.nextDouble();
            double offset = 0.1 * random.nextDouble();
            double reach = 0.3 * random.nextDouble();
            Figures f = with(
                    "way_outlet_spacing[tape]=" + spacing + " m",
                    "way_strip_offset[tape]=" + offset + " m",
                    "way_reach[tape]=" + reach + " m");
            assertThat(f.number("way_outlets_in_reach", "tape")).isEqualTo(2 * fewest(spacing, offset, reach));
        }
    }

    /** Slides a plant along one line and counts. */
    private static int fewest(double spacing, double offset, double reach) {
        int fewest = Integer.MAX_VALUE;
        for (int place = 0; place < 10_000; place++) {
            double plant = place * spacing / 10_000;
            int seen = 0;
            for (int outlet = -20; outlet <= 20; outlet++) {
                seen += Math.hypot(outlet * spacing - plant, offset) <= reach ? 1 : 0;
            }
            fewest = Math.min(fewest, seen);
        }
        return fewest;
    }

    @Test
    void fed_in_the_middle_friction_is_that_of_half_the_outlets() {
        Figures end = with("bench_length=10 m");
        Figures middle =
                with("bench_length=20 m", "way_feed_point[dripline]=middle", "way_outlet_spacing[dripline]=0.1 m");
        Figures half = with("bench_length=10 m", "way_outlet_spacing[dripline]=0.1 m");

        assertThat(middle.number("way_friction", "dripline"))
                .isCloseTo(half.number("way_friction", "dripline"), within(ROUNDING));
        assertThat(middle.number("way_flow_per_bench", "dripline"))
                .isEqualTo(2 * half.number("way_flow_per_bench", "dripline"));
        assertThat(end.number("way_lateral_outlets", "emitter")).isEqualTo(65);
    }

    @Test
    void fed_in_the_middle_of_a_slope_the_rising_half_is_the_lowest_whichever_it_is() {
        Figures up = with("way_feed_point[tape]=middle", "bench_slope=1 %");
        Figures down = with("way_feed_point[tape]=middle", "bench_slope=-1 %");
        Figures level = with("way_feed_point[tape]=middle");

        assertThat(up.number("way_lowest_pressure", "tape")).isEqualTo(down.number("way_lowest_pressure", "tape"));
        double rise = 0.01 * 67 * 0.15 * 9.80665;
        assertThat(level.number("way_lowest_pressure", "tape") - up.number("way_lowest_pressure", "tape"))
                .isCloseTo(rise, within(ROUNDING));
        assertThat(up.number("way_inlet_pressure", "tape")).isEqualTo(level.number("way_inlet_pressure", "tape"));
        assertThat(up.number("way_flow_variation", "tape")).isGreaterThan(level.number("way_flow_variation", "tape"));
    }

    @Test
    void a_rise_lowers_the_far_end_and_a_fall_moves_the_lowest_point_inwards() {
        Figures up = with("bench_slope=1 %");
        Figures fall = with("bench_slope=-0.1 %");

        assertThat(up.number("way_lowest_pressure", "tape")).isEqualTo(up.number("way_far_pressure", "tape"));
        assertThat(fall.number("way_lowest_pressure", "tape")).isLessThan(fall.number("way_far_pressure", "tape"));
        assertThat(fall.number("way_outlets_beyond_lowest", "tape")).isBetween(1.0, 131.0);
    }

    @ParameterizedTest
    @CsvSource({
        "0.0499,false,excellent", "0.05,false,average", "0.0699,false,average", "0.07,false,marginal",
                "0.11,false,poor",
        "0.1499,false,poor", "0.15,false,unacceptable", "0.0999,true,good", "0.10,true,average", "0.1999,true,average",
        "0.20,true,marginal to unacceptable"
    })
    void outlets_are_classed_by_the_bands(double variation, boolean line, String expected) {
        assertThat(HelperFormulas.variationClass(variation, line)).isEqualTo(expected);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "emitter|way_outlet_pressure[emitter]=45 kPa|way_compensating_warning|range in which the outlet compensates",
                "emitter|way_pressure_high[emitter]=102 kPa|way_compensating_warning|Change outlet_pressure",
                "tape|way_outlet_pressure[tape]=105 kPa|way_rating_warning|beyond its rated pressure",
                "tape|way_outlet_pressure[tape]=50 kPa|way_low_pressure_warning|below its least working pressure",
                "tape|way_outlet_spacing[tape]=9 m;bench_length=8 m|way_spacing_warning|further apart than the bench is long",
                "emitter|way_inner_diameter[emitter]=7 mm|way_velocity_warning|faster than the usual limit",
                "tape|pulse_per_plant=50 mL/plant|way_pulse_warning|longer to fill than they then run full",
                "emitter|way_outlet_flow[emitter]=0 L/h|way_hydraulics_warning|fill in outlet_flow"
            })
    void what_is_wrong_is_said_with_what_to_change(String way, String settings, String warning, String words) {
        assertThat(text(with(), warning, way)).isEmpty();
        Figures f = with(settings.split(";"));
        assertThat(text(f, warning, way)).contains(words);
        assertThat(f.troubles()).isEmpty();
    }

    @Test
    void check_valves_keep_the_water_where_it_is() {
        Figures f = with("pulse_per_plant=50 mL/plant", "way_check_valves[tape]=yes");

        assertThat(f.number("way_drained_per_plant", "tape")).isEqualTo(0);
        assertThat(text(f, "way_pulse_warning", "tape")).isEmpty();
    }

    @Test
    void stored_water_fills_in_its_time_and_a_pulse_gives_what_is_planned() {
        Figures f = with();
        double stored = Math.PI / 4 * 0.159 * 0.159 * 10 * 2 * 20.6;

        assertThat(f.number("way_stored_per_bench", "tape")).isCloseTo(stored, within(ROUNDING));
        assertThat(f.number("way_stored_per_plant", "tape")).isCloseTo(1000 * stored / 130, within(1e-6));
        assertThat(f.number("way_fill_time", "tape")).isCloseTo(60 * stored / (266 * 0.8), within(ROUNDING));
        assertThat(f.number("way_pulse_length", "emitter")).isCloseTo(60 * 0.08 / 2, within(ROUNDING));
    }

    @Test
    void the_table_by_length_says_of_the_bench_what_the_bench_says() {
        Figures f = with("bench_length=20 m");
        for (String way : new String[] {"emitter", "tape", "dripline"}) {
            assertThat(f.number("run_emission_uniformity", way, "20_m"))
                    .isEqualTo(f.number("way_emission_uniformity", way));
            assertThat(f.number("run_inlet_pressure", way, "20_m")).isEqualTo(f.number("way_inlet_pressure", way));
        }
    }

    @Test
    void the_longest_line_listed_is_the_last_that_is_even_enough_and_in_its_range() {
        Figures f = with("target_uniformity=96 %");

        assertThat(f.number("run_emission_uniformity", "tape", "60_m")).isGreaterThan(96);
        assertThat(f.number("run_emission_uniformity", "tape", "100_m")).isLessThan(96);
        assertThat(f.number("way_longest_listed_run", "tape")).isEqualTo(60);
        assertThat(f.number("run_lowest_pressure", "emitter", "100_m")).isLessThan(50);
        assertThat(with().number("way_longest_listed_run", "emitter")).isEqualTo(60);
        assertThat(f.number("way_longest_listed_run", "emitter")).isEqualTo(0);
    }

    @Test
    void a_length_of_its_own_takes_the_place_of_the_bench() {
        Figures f = with("way_run_length[tape]=60 m");

        assertThat(f.number("way_emission_uniformity", "tape"))
                .isEqualTo(f.number("run_emission_uniformity", "tape", "60_m"));
        assertThat(f.number("way_flow_per_bench", "tape")).isEqualTo(with().number("way_flow_per_bench", "tape"));
    }

    @Test
    void a_spare_row_may_be_filled_in_part() {
        Figures f = with(
                "way_key[spare_1]=mist", "way_lines[spare_1]=1 1", "way_outlets_per_plant[spare_1]=0.5 outlet/plant");
        assertThat(f.troubles()).isEmpty();
        assertThat(text(f, "way_hydraulics_warning", "spare_1")).contains("inner_diameter");

        Figures full = with(
                "way_key[spare_1]=mist",
                "way_lines[spare_1]=1 1",
                "way_outlets_per_plant[spare_1]=0.5 outlet/plant",
                "way_outlet_flow[spare_1]=4 L/h",
                "way_outlet_pressure[spare_1]=150 kPa",
                "way_inner_diameter[spare_1]=13.6 mm");
        assertThat(full.troubles()).isEmpty();
        assertThat(full.number("way_flow_per_bench", "spare_1")).isEqualTo(260);
        assertThat(full.number("way_lateral_outlets", "spare_1")).isEqualTo(65);
    }

    private static Figures with(String... settings) {
        return Figures.of(Sample.with(SAMPLE, settings));
    }

    private static String text(Figures f, String id, String way) {
        Line line = f.budget().line(id);
        return f.text(line, line.axes().get(0).indexOf(way));
    }
}
