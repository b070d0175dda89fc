package org.benchmetre;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.benchmetre.farm.Sample;
import org.benchmetre.scenario.Remark;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Entries that make an irrigation system unfit are warned of by name, with what to change. */
class BadWateringTest {

    /** Settings, the warning they must raise, and the word that says what to change. */
    record Bad(String warning, String change, List<String> settings) {}

    static Stream<Bad> bad() {
        return Stream.of(
                new Bad(
                        "Pressure range of a compensating outlet (One emitter a plant): ",
                        "Change outlet_pressure",
                        List.of("way_outlet_pressure[emitter]=40")),
                new Bad(
                        "Pressure rating of the line (Two strips of drip tape): ",
                        "Lower outlet_pressure",
                        List.of("way_outlet_pressure[tape]=120")),
                new Bad(
                        "Supply against one bench (One emitter a plant): ",
                        "raise supply_flow",
                        List.of("supply_flow=250", "zone_count=10")),
                new Bad(
                        "Filter against the outlet (Two strips of drip tape): ",
                        "lower filter_opening",
                        List.of("filter_opening=0.14")),
                new Bad(
                        "Outlet spacing against the bench (In-line dripline): ",
                        "Choose a closer outlet_spacing",
                        List.of("bench_length=8", "way_outlet_spacing[dripline]=9")));
    }

    private static List<String> warnings(List<String> settings) throws ScenarioException {
        return Benchmetre.read(Sample.TROUGH_HOUSE, Optional.empty(), settings).warnings().stream()
                .map(Remark::message)
                .toList();
    }

    @Test
    void a_plain_house_is_warned_of_none_of_them() throws ScenarioException {
        List<String> told = warnings(List.of());
        assertThat(bad()).noneMatch(each -> told.stream().anyMatch(message -> message.startsWith(each.warning())));
    }

    @ParameterizedTest
    @MethodSource("bad")
    void a_named_warning_says_what_to_change(Bad bad) throws ScenarioException {
        assertThat(warnings(bad.settings()))
                .filteredOn(message -> message.startsWith(bad.warning()))
                .singleElement()
                .asString()
                .contains(bad.change());
    }
}
