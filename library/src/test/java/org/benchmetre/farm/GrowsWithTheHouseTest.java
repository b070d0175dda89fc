package org.benchmetre.farm;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.benchmetre.Benchmetre;
import org.benchmetre.Plan;
import org.benchmetre.PlanBuilder;
import org.benchmetre.ScenarioException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What grows with the house: drivers of its size and plant, whole units, and what one unit can carry. */
class GrowsWithTheHouseTest {

    private static final double PUMP_CARRIES = 3000;
    private static final double PUMP_PRICE = 340;

    private static Plan trough(String... settings) throws ScenarioException {
        return Benchmetre.read(Sample.TROUGH_HOUSE, Optional.empty(), List.of(settings));
    }

    /** Half a hectare: 48 benches of 100 m in a house of 104 m by 48 m, one outlet of 2 L/h for each plant at 20 cm, all in one zone. */
    private static PlanBuilder halfAHectare(Map<String, String> pump) {
        Map<String, String> all = new LinkedHashMap<>(pump);
        all.putAll(Map.of("unit", "each", "price", Double.toString(PUMP_PRICE), "price_year", "2026"));
        return Benchmetre.plan("strawberry")
                .entry("bench_count", "48")
                .entry("bench_length", "100 m")
                .entry("end_margin", "0")
                .entry("house_length", "104 m")
                .entry("house_width", "48 m")
                .entry("bench_width", "0.3 m")
                .entry("plant_spacing", "20 cm")
                .entry("supply_flow", "60 m3/h")
                .entry("zone_count", "1")
                .row("materials", "pump", all)
                .row("irrigation", "drip", Map.of("lines", "1", "outlets_per_plant", "1", "outlet_flow", "2"))
                .row("plant_stock", "plug", Map.of("price", "0.40", "price_year", "2026"));
    }

    /** 501 plants a bench, 48 benches, 2 L/h each: 48,096 L/h, which 17 pumps of 3,000 L/h carry. */
    @Test
    void half_a_hectare_buys_the_pumps_it_needs() throws ScenarioException {
        Map<String, String> pump = Map.of(
                "driver", "design_flow", "rate", Double.toString(1 / PUMP_CARRIES), "whole", "yes", "serves", "3000");
        Plan plan = halfAHectare(pump).build();
        double flow = 48 * 501 * 2;
        assertThat(plan.figures().number("driver_amount", "design_flow")).isCloseTo(flow, within(1e-6));
        assertThat(plan.figures().number("material_quantity", "pump")).isCloseTo(17, within(1e-9));
        assertThat(plan.figures().number("material_packs", "pump")).isEqualTo(17);
        assertThat(plan.figures().number("material_exact_cost", "pump")).isCloseTo(17 * PUMP_PRICE, within(1e-6));
        assertThat(plan.figures().number("material_left", "pump")).isCloseTo(0, within(1e-9));
        assertThat(Sample.warnings(plan)).noneMatch(each -> each.contains("Capacity of a part"));
    }

    @Test
    void half_a_hectare_on_one_pump_is_told() throws ScenarioException {
        Plan plan = halfAHectare(Map.of("driver", "one", "rate", "1", "serves", "3000 L/h"))
                .build();
        assertThat(plan.figures().number("material_quantity", "pump")).isEqualTo(1);
        assertThat(Sample.warnings(plan))
                .anySatisfy(
                        each -> assertThat(each)
                                .contains("Capacity of a part (Pump)")
                                .contains(
                                        "1 counted, but it takes 17 to carry 48,096 L/h (Flow of the largest zone). Raise its rate."));
    }

    /** The same pump in gallons: 13.21 gal/min are 3,000 L/h; and told by square metre: 104 x 48 m on pumps of 1,000 m². */
    @ParameterizedTest
    @CsvSource({
        "13.21, gpm, 17, 'to carry 212 gal/min (Flow of the largest zone)'",
        "1000, sq m, 5, 'to carry 4,992 m2 (Floor of the house)'",
        "1, acre, 2, 'to carry 1 acre (Floor of the house)'"
    })
    void a_capacity_is_held_against_the_driver_of_its_measure(double serves, String unit, int needed, String words)
            throws ScenarioException {
        Map<String, String> pump =
                Map.of("driver", "one", "rate", "1", "serves", Double.toString(serves), "serves_unit", unit);
        assertThat(Sample.warnings(halfAHectare(pump).build()))
                .anySatisfy(each ->
                        assertThat(each).contains("it takes " + needed + " ").contains(words));
    }

    @Test
    void a_capacity_without_a_unit_is_of_its_own_driver() throws ScenarioException {
        Map<String, String> hives = Map.of("driver", "plant_count", "rate", "0.0002", "whole", "yes", "serves", "4000");
        Plan plan = halfAHectare(hives).build();
        assertThat(plan.figures().number("material_quantity", "pump"))
                .isCloseTo(Math.ceil(48 * 501 / 5000.0), within(1e-9));
        assertThat(Sample.warnings(plan))
                .anySatisfy(each -> assertThat(each)
                        .contains("5 counted, but it takes 7 to carry 24,048 plant (Plants). Raise its rate."));
    }

    @ParameterizedTest
    @CsvSource({"0", "-3000", "-3000 L/h", "0 L/h"})
    void a_part_that_serves_nothing_is_a_named_fault(String serves) {
        assertThatThrownBy(() -> trough("material_serves[pump]=" + serves))
                .hasMessageContaining("expected a number above 0 for One unit carries (material_serves[pump])");
    }

    @Test
    void a_capacity_of_what_is_counted_once_has_a_unit_that_is_carried() {
        assertThatThrownBy(() -> trough("material_serves[pump]=3000"))
                .hasMessageContaining(
                        "found \"3000\", expected a number with its unit, such as 3000 L/h, since the part is counted"
                                + " once for the house, for One unit carries (material_serves[pump])");
        assertThatThrownBy(() -> trough("material_serves[pump]=3000 kg"))
                .hasMessageContaining("found \"kg\", expected one of L/h, ");
        assertThatThrownBy(() -> trough("material_serves_unit[pump]=L/h"))
                .hasMessageContaining("found nothing, expected what one unit can carry, since its unit is given,");
    }

    /** 12 plants for a unit, 1,300 plants: 108.3 units, and 109 where they are whole; hours and yearly cost follow. */
    @Test
    void whole_units_are_counted_in_cost_hours_and_every_way() throws ScenarioException {
        String[] part = {
            "material_driver[injector]=plant_count",
            "material_rate[injector]=" + 1 / 12.0,
            "material_install_hours[injector]=2",
            "material_option[injector]="
        };
        Plan parted = trough(part);
        Plan whole = Benchmetre.read(Sample.TROUGH_HOUSE, Optional.empty(), with(part, "material_whole[injector]=yes"));
        double plants = parted.figures().number("plant_count");
        double share = Math.ceil(plants / 12) / (plants / 12);
        assertThat(share).isGreaterThan(1.001);
        for (String line : List.of("material_quantity", "material_exact_cost", "material_recovery_yearly")) {
            assertThat(whole.figures().number(line, "injector"))
                    .as(line)
                    .isCloseTo(parted.figures().number(line, "injector") * share, within(1e-6));
        }
        double hours = whole.figures().number("way_install_hours", "tape")
                - parted.figures().number("way_install_hours", "tape");
        assertThat(hours).isCloseTo(2 * (Math.ceil(plants / 12) - plants / 12), within(1e-6));
        assertThat(whole.figures().number("material_packs", "injector"))
                .isEqualTo(parted.figures().number("material_packs", "injector"));
    }

    private static List<String> with(String[] settings, String more) {
        List<String> all = new ArrayList<>(List.of(settings));
        all.add(more);
        return all;
    }

    /** The trough house is 24 m by 9.6 m. */
    @Test
    void drivers_say_how_large_house_and_plant_are() throws ScenarioException {
        Plan plan = trough();
        assertThat(plan.figures().number("driver_amount", "house_perimeter")).isCloseTo(2 * (24 + 9.6), within(1e-9));
        assertThat(plan.figures().number("driver_amount", "heater_power"))
                .isEqualTo(plan.figures().number("boiler_size"));
        double months = 0;
        for (int month = 0; month < 12; month++) {
            months += plan.figures().number(plan.budget().line("month_crop_share"), month);
        }
        assertThat(plan.figures().number("driver_amount", "crop_months")).isCloseTo(months, within(1e-9));
        assertThat(trough("irrigation_choice=tape").figures().number("driver_amount", "design_flow"))
                .isEqualTo(plan.figures().number("way_zone_flow", "tape"));
    }

    @Test
    void what_is_whole_and_what_it_serves_is_written_and_read_back(@TempDir Path folder) throws Exception {
        Plan plan = trough(
                "material_whole[pump]=yes",
                "material_serves[pump]=13 gpm",
                "material_unit[trough]=sq. ft.",
                "material_rate[trough]=2");
        plan.writeScenario(folder.resolve("written"));
        Plan again = Benchmetre.read(folder.resolve("written"));
        assertThat(again.text("material_whole[pump]")).isEqualTo("yes");
        assertThat(again.figures().number("material_serves", "pump")).isEqualTo(13);
        assertThat(again.text("material_serves_unit[pump]")).isEqualTo("gal/min");
        assertThat(again.text("material_unit[trough]")).isEqualTo("ft2");
        assertThat(again.quantity("first_cost_total")).isEqualTo(plan.quantity("first_cost_total"));
    }
}
