package org.benchmetre.farm;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.HashMap;
import java.util.Map;
import org.benchmetre.budget.Budget;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.entry.Given;
import org.benchmetre.budget.run.Figures;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What goes wrong between supply, filter and outlets is said, with what to change. */
class WaterWarningsTest {

    private static final Budget SAMPLE = Sample.troughHouse();

    private static String text(Figures f, String id, String row) {
        Line line = f.budget().line(id);
        return f.text(line, line.axes().get(0).indexOf(row));
    }

    private static Figures with(String... settings) {
        return Figures.of(Sample.with(SAMPLE, settings));
    }

    @ParameterizedTest
    @CsvSource({
        "way_supply_warning, supply_flow=1 L/h, raise supply_flow",
        "way_filter_warning, filter_opening=0.2 mm, lower filter_opening",
        "way_header_warning, header_diameter=10 mm, raise header_diameter",
        "way_hours_warning, watering_hours=0.01 h/d, raise watering_hours"
    })
    void aWarningOfEachWayNamesWhatToChangeAndSpareRowsStaySilent(String warning, String setting, String change) {
        assertThat(text(Figures.of(SAMPLE), warning, "emitter")).isEmpty();
        Figures wrong = with(setting);
        assertThat(text(wrong, warning, "emitter")).contains(change);
        assertThat(text(wrong, warning, "spare_1")).isEmpty();
    }

    @ParameterizedTest
    @CsvSource({
        "drain_measured_warning, applied_measured=10 L/m2, drain_measured=11 L/m2, read the tray again",
        "drain_short_warning, applied_measured=10 L/m2, drain_measured=1 L/m2, lower drain_fraction"
    })
    void aMeasurementThatDoesNotFitThePlanIsSaid(String warning, String given, String drain, String change) {
        assertThat(Figures.of(SAMPLE).text(warning)).isEmpty();
        assertThat(with(given, "drain_measured=3 L/m2").text(warning)).isEmpty();
        assertThat(with(given, drain).text(warning)).contains(change);
    }

    @Test
    void withoutAMeasurementThereIsNoMeasuredShare() {
        assertThat(Figures.of(SAMPLE).text("drain_measured_share")).isEqualTo("not measured");
    }

    /** Half a bench more than one bench: one at a time, so as many zones as benches. */
    @Test
    void fewerZonesThanTheChosenWayNeedsAreSaidForTheChosenWayOnly() {
        Figures f = Figures.of(SAMPLE);
        double bench = f.number("way_zone_flow", "emitter") / f.number("way_benches_in_zone", "emitter");
        String flow = "supply_flow=" + 1.5 * bench + " L/h";
        Figures tight = with(flow);
        assertThat(f.text("zone_count_warning")).isEmpty();
        assertThat(tight.number("way_zones_needed", "emitter")).isEqualTo(10);
        assertThat(tight.number("way_zones_run", "emitter")).isEqualTo(10);
        assertThat(tight.number("way_zone_flow", "emitter")).isCloseTo(bench, within(1e-9 * bench));
        assertThat(tight.text("zone_count_warning")).contains("raise zone_count");
        assertThat(with(flow, "zone_count=10 zone").text("zone_count_warning")).isEmpty();
    }

    /** The sample's outlets of 1.0 mm pass with 0.142 mm and not with 0.144 mm: a seventh is 0.1429 mm. */
    @Test
    void aSeventhOfThePassageIsTheWidestOpening() {
        assertThat(text(with("filter_opening=0.142 mm"), "way_filter_warning", "emitter"))
                .isEmpty();
        assertThat(text(with("filter_opening=0.144 mm"), "way_filter_warning", "emitter"))
                .isNotEmpty();
    }

    @Test
    void aPassageThatIsNotKnownIsNotWarnedOf() {
        Line passage = SAMPLE.line("way_outlet_passage");
        Map<Line, Map<Integer, Given>> blank = Map.of(passage, Map.of(0, Given.blank(passage.unit())));
        Figures f = Figures.of(Sample.with(SAMPLE.with(blank), "filter_opening=2 mm"));
        assertThat(text(f, "way_filter_warning", "emitter")).isEmpty();
        assertThat(text(f, "way_filter_warning", "tape")).isNotEmpty();
    }

    @Test
    void aNeedAboveThePublishedRangeIsSaidForItsMonth() {
        Line need = SAMPLE.line("month_need_per_plant");
        Figures f = Figures.of(SAMPLE.with(Map.of(need, Map.of(6, Given.number(241, need.unit())))));
        assertThat(text(f, "month_need_warning", "jul")).contains("water_need");
        assertThat(text(f, "month_need_warning", "jun")).isEmpty();
    }

    @Test
    void aSourceWithEnoughPressureNeedsNoPump() {
        Figures f = with("supply_pressure=1900 kPa");
        assertThat(f.number("way_pump_pressure", "emitter")).isZero();
        assertThat(f.number("way_pumping_cost", "emitter")).isZero();
        assertThat(f.number("way_pump_hours", "emitter")).isPositive();
    }

    /** Ten benches in zones of 4, 3 and 3: the pump runs three times the run time of a zone, whatever their size. */
    @Test
    void threeZonesOfTenBenchesRunThreeTimesAsLongAsOne() {
        Figures one = with("zone_count=1 zone");
        Figures three = with("zone_count=3 zone");
        double hours = one.number("way_pump_hours", "emitter");
        assertThat(three.number("way_benches_in_zone", "emitter")).isEqualTo(4);
        assertThat(three.number("way_pump_hours", "emitter")).isCloseTo(3 * hours, within(1e-12 * hours));
    }

    /** A line that reaches no plant is no matter of pressure: the cause is said and no advice on the run is given. */
    @Test
    void whereNoOutletReachesAPlantThatIsTheCauseThatIsSaid() {
        Figures f = with("way_strip_offset[tape]=0.2 m");
        assertThat(text(f, "way_reach_warning", "tape"))
                .contains("no outlet in reach")
                .contains("strip_offset");
        assertThat(text(f, "way_emission_class", "tape")).isEqualTo("no outlet in reach of some plants");
        assertThat(text(f, "way_uniformity_unknown_warning", "tape")).contains("20 %");
        for (String pressure :
                new String[] {"way_uniformity_warning", "way_low_pressure_warning", "way_rating_warning"}) {
            assertThat(text(f, pressure, "tape")).as(pressure).isEmpty();
        }
        Figures low = with("way_outlet_pressure[tape]=50 kPa");
        assertThat(text(low, "way_emission_class", "tape")).isEqualTo("outside its pressure range");
        assertThat(text(low, "way_reach_warning", "tape")).isEmpty();
        assertThat(text(with("way_outlet_flow[tape]=0 L/h"), "way_uniformity_unknown_warning", "tape"))
                .contains("20 %");
        assertThat(text(with(), "way_uniformity_unknown_warning", "tape")).isEmpty();
        assertThat(text(with(), "way_uniformity_unknown_warning", "spare_1")).isEmpty();
    }

    @Test
    void linesSoUnevenThatLessIsCountedAreSaid() {
        Figures f =
                with("way_coefficient_of_variation[emitter]=0.5 1", "way_outlets_per_plant[emitter]=0.5 outlet/plant");
        assertThat(f.number("way_emission_uniformity", "emitter")).isGreaterThan(20);
        assertThat(text(f, "way_uniformity_warning", "emitter")).isEmpty();
        Figures uneven = with("bench_slope=-20 %", "way_outlet_pressure[tape]=20 kPa", "way_run_length[tape]=60 m");
        assertThat(uneven.number("way_emission_uniformity", "tape")).isLessThan(20);
        assertThat(text(uneven, "way_uniformity_warning", "tape")).contains("shorten the run");
    }

    @Test
    void aHouseHasNoMoreZonesThanBenches() {
        Figures f = with("bench_count=3 bench", "zone_count=12 zone");
        assertThat(f.number("way_zones_run", "emitter")).isEqualTo(3);
        assertThat(f.number("way_benches_in_zone", "emitter")).isEqualTo(1);
    }

    @Test
    void aFurtherWayInASpareRowIsWateredToo() {
        Map<Line, Map<Integer, Given>> changes = new HashMap<>();
        int row = SAMPLE.line("way_key").axes().get(0).indexOf("spare_1");
        changes.put(SAMPLE.line("way_key"), Map.of(row, Given.text("spray_stake")));
        changes.put(
                SAMPLE.line("way_lines"),
                Map.of(row, Given.number(1, SAMPLE.line("way_lines").unit())));
        changes.put(
                SAMPLE.line("way_outlets_per_plant"),
                Map.of(
                        row,
                        Given.number(0.5, SAMPLE.line("way_outlets_per_plant").unit())));
        Figures before = Figures.of(SAMPLE);
        Figures after = Figures.of(SAMPLE.with(changes));
        assertThat(after.troubles()).isEmpty();
        assertThat(before.number("way_water_running", "spare_1")).isZero();
        assertThat(after.number("way_gross_water", "spare_1")).isGreaterThanOrEqualTo(after.number("year_water_need"));
    }
}
