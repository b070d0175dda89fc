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
