package org.benchmetre;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatCode;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import org.benchmetre.farm.Sample;
import org.benchmetre.scenario.Fault;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Values that no season, rate or calendar has are refused with the bounds they broke; the bounds themselves are taken. */
class ValuesThatMakeNoPlanTest {

    private static final Path SAMPLE = Sample.TROUGH_HOUSE;

    @ParameterizedTest
    @CsvSource({
        "plan_year, 2200, 2100",
        "plan_year, 1989, 1990",
        "stock_price_year[tray_plant], 1500, 1990",
        "recovery_rate, -1 real/a, -0.2",
        "recovery_rate, 1.5 real/a, 1",
        "operating_rate, -0.3, -0.2",
        "hours_per_person_month, 745, 744",
        "on_cost_share, 2.5, 2",
        "price_level, 11, 10",
        "stock_life[tray_plant], 101, 100",
        "stock_price[tray_plant], 1000001, 1000000",
        "'channel_price[wholesale;jan]', 1000001, 1000000",
        "pick_passes[jan], 63, 62",
        "heated_share[jan], 1.1, 1",
        "day_hours[jan], 25, 24",
        "night_set[jan], -30, -20",
        "marketable_share, 1.2, 1"
    })
    void a_value_beyond_its_bound_is_refused(String entry, String beyond, String bound) {
        ScenarioException refused = catchThrowableOfType(
                ScenarioException.class,
                () -> Benchmetre.read(SAMPLE, Optional.empty(), List.of(entry + "=" + beyond)));
        assertThat(refused).as("%s=%s", entry, beyond).isNotNull();
        assertThat(refused.faults().faults().stream().map(Fault::message).toList())
                .singleElement()
                .asString()
                .contains(entry + "=" + beyond)
                .containsPattern("(from|least|most|to) " + Pattern.quote(bound) + "\\b");
    }

    @Test
    void the_bounds_themselves_are_taken() {
        List<String> bounds = List.of(
                "plan_year=2100",
                "stock_price_year[tray_plant]=1990",
                "recovery_rate=-0.2 real/a",
                "operating_rate=1",
                "hours_per_person_month=744",
                "on_cost_share=2",
                "price_level=10",
                "stock_life[tray_plant]=100",
                "pick_passes[jan]=62",
                "heated_share[jan]=1",
                "day_hours[jan]=24",
                "night_set[jan]=-20");
        assertThatCode(() -> Benchmetre.read(SAMPLE, Optional.empty(), bounds)).doesNotThrowAnyException();
    }
}
