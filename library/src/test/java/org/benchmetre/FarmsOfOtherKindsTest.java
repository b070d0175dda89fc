package org.benchmetre;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.assertj.core.data.Offset;
import org.benchmetre.scenario.Remark;
import org.benchmetre.workbook.PoiReferee;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Farms that are no house of ten troughs of substrate: each is a small plan without a fault or a warning, with the figure its grower
 * would check, worked out by hand. A unit of anything costs 1, so that a cost is a count. No code knows any of these
 * farms by name.
 */
class FarmsOfOtherKindsTest {

    /** A dozen sums and products of doubles below a hundred thousand. */
    private static final Offset<Double> ROUNDING = within(1e-8);

    private static final List<String> MONTHS =
            List.of("jan", "feb", "mar", "apr", "may", "jun", "jul", "aug", "sep", "oct", "nov", "dec");

    private static final List<String> HOUSE = List.of(
            "bench_count=10",
            "bench_length=20 m",
            "house_length=24 m",
            "house_width=10 m",
            "plant_spacing=20 cm",
            "supply_flow=4000",
            "fuel_price=0.6",
            "crop_weeks=52");

    /** A farm, and figures of it by address. */
    private record Farm(String name, Plan plan, Map<String, Double> checked) {

        @Override
        public String toString() {
            return name;
        }
    }

    static Stream<Farm> farms() throws ScenarioException {
        return Stream.of(
                bareGutters(),
                growBags(),
                hangingPots(),
                tunnelOfOneFilm(),
                halfAHectare(),
                twelveInchBenches(),
                unheatedHouse());
    }

    /**
     * Ten gutters of 20 m that hold no substrate, a plant every 0.2 m but for 0.1 m at each end: 19.8 / 0.2 = 99 gaps, 100 plants each.
     * 200 m of gutter, 1,000 plants, 1,000 emitters and 200 m of pipe; of coir nothing, though it stands on the list.
     */
    private static Farm bareGutters() throws ScenarioException {
        Plan plan = farm("gutter", "bench_metres", "trough_depth=0")
                .row("materials", "coir", part("coir_volume"))
                .build();
        return new Farm(
                "gutters without substrate",
                plan,
                Map.of(
                        "substrate_volume", 0.0,
                        "wet_load_per_metre", 0.0,
                        "material_quantity[coir]", 0.0,
                        "material_packs[coir]", 0.0,
                        "plant_count", 1000.0,
                        "first_cost_total", 200.0 + 1000 + 1000 + 200));
    }

    /**
     * Bags of 30 L for ten plants, a metre each (published: 2.1 to 4.3 L a plant, Acta Horticulturae 926, 2012), on rows of 20 m bare for
     * 0.1 m at each end: 19 whole bags a row, 190 in all, 1,900 plants of 3 L each, 5,700 L. Three emitters a bag are 570.
     */
    private static Farm growBags() throws ScenarioException {
        Plan plan = farm(
                        "bag",
                        "container_count",
                        "container_pitch=1 m",
                        "container_volume=30",
                        "container_plants=10",
                        "way_outlets_per_plant[emitter]=0.3")
                .build();
        return new Farm(
                "grow bags",
                plan,
                Map.of(
                        "container_count", 190.0,
                        "material_quantity[bag]", 190.0,
                        "plant_count", 1900.0,
                        "litres_per_plant", 3.0,
                        "substrate_volume", 5700.0,
                        "material_quantity[emitter]", 570.0));
    }

    /**
     * Pots of 8 L with three plants, hung every half metre on ten wires of 20 m; nothing stands on the floor. 19.8 / 0.5 leaves 39 pots on
     * a wire, 390 in all, 1,170 plants of 8/3 L.
     */
    private static Farm hangingPots() throws ScenarioException {
        Plan plan = farm(
                        "pot",
                        "container_count",
                        "bench_width=0",
                        "container_pitch=0.5 m",
                        "container_volume=8",
                        "container_plants=3")
                .build();
        return new Farm(
                "hanging pots without a bench",
                plan,
                Map.of(
                        "material_quantity[pot]", 390.0,
                        "plant_count", 1170.0,
                        "litres_per_plant", 8.0 / 3,
                        "bench_floor_share", 0.0));
    }

    /**
     * A half-round tunnel of 10 m by 24 m under one film that reaches the ground: half a circle of 5 m round is 5 pi a metre, 120 pi
     * m2 of film, ends of 25 pi m2 together, and 300 pi m3 of air. One film loses 6.2 W for each m2 and kelvin (eXtension).
     */
    private static Farm tunnelOfOneFilm() throws ScenarioException {
        Plan plan = farm(
                        "trough",
                        "bench_metres",
                        "envelope_areas=measured",
                        "roof_area=" + 120 * Math.PI,
                        "end_area=" + 25 * Math.PI,
                        "air_volume=" + 300 * Math.PI,
                        "eave_height=0",
                        "roof_glazing=single",
                        "side_glazing=single",
                        "end_glazing=single")
                .build();
        return new Farm(
                "a tunnel with one film", plan, Map.of("ua_total", 6.2 * 145 * Math.PI, "house_volume", 300 * Math.PI));
    }

    /**
     * 48 benches of 100 m in 104 m by 48 m: 4,800 m of bench, 99.8 / 0.2 + 1 = 500 plants each, 24,000 in 4,992 m2. At 2 L/h each plant
     * the house takes 48,000 L/h, in 12 zones 4,000 at a time.
     */
    private static Farm halfAHectare() throws ScenarioException {
        Plan plan = farm(
                        "trough",
                        "bench_metres",
                        "bench_count=48",
                        "bench_length=100 m",
                        "house_length=104 m",
                        "house_width=48 m",
                        "zone_count=12",
                        "supply_flow=4000",
                        "header_diameter=40 mm",
                        "way_inner_diameter[emitter]=17.6")
                .build();
        return new Farm(
                "48 benches of 100 m",
                plan,
                Map.of(
                        "bench_metres", 4800.0,
                        "plants_per_bench", 500.0,
                        "plant_count", 24_000.0,
                        "plants_per_area", 24_000 / 4992.0,
                        "first_cost_total", 4800.0 + 24_000 + 24_000 + 4800));
    }

    /**
     * Benches twelve inches wide and 96 ft long in a house of 30 ft by 100 ft, all in US units: ten take 960 of 3,000 ft2. The
     * trough is 12 in square with 1 in free above and 1 in of air below, 10 in by 12 in filled: 5/6 ft3 a foot, so 800 ft3 in all; a
     * cubic foot is 28.316846592 L. A plant every 8 in without margins: 144 gaps, 145 plants. Fruit at 3.50 USD/lb of 0.45359237 kg.
     */
    private static Farm twelveInchBenches() throws ScenarioException {
        Plan plan = farm(
                        "trough",
                        "bench_metres",
                        "plan_units=us",
                        "plan_paper=letter",
                        "bench_width=12 in",
                        "bench_length=96 ft",
                        "house_length=100 ft",
                        "house_width=30 ft",
                        "end_margin=0 in",
                        "plant_spacing=8 in",
                        "trough_top_width=12 in",
                        "trough_bottom_width=12 in",
                        "trough_depth=12 in",
                        "trough_freeboard=1 in",
                        "air_gap=1 in",
                        "mulch_lap=2 in",
                        "mulch_stock_width=4 ft",
                        "design_temperature=5 degF",
                        "design_inside=45 degF",
                        "fruit_price=3.50 USD/lb")
                .build();
        return new Farm(
                "twelve-inch benches in US units",
                plan,
                Map.of(
                        "bench_floor_share", 960.0 / 3000,
                        "plant_count", 1450.0,
                        "substrate_volume", 800 * 28.316846592,
                        "mulch_metres", 960 * 0.3048 / 3,
                        "design_difference", 40 / 1.8,
                        "fruit_price", 3.5 / 0.45359237));
    }

    /** A house that is not heated has no heater and burns nothing; what it loses for a kelvin is the same. */
    private static Farm unheatedHouse() throws ScenarioException {
        Plan plan = farm("trough", "bench_metres", "heating_use=no").build();
        double heated =
                farm("trough", "bench_metres").build().quantity("ua_total").value();
        return new Farm(
                "no heating",
                plan,
                Map.of(
                        "boiler_size", 0.0,
                        "heating_cost_total", 0.0,
                        "ua_total", heated));
    }

    /**
     * Ten rows of 20 m with one emitter a plant, in a mild climate, with everything said that would else be told.
     *
     * @param settings {@code line=value}, over those of the house
     */
    private static PlanBuilder farm(String carrier, String countedBy, String... settings) {
        Map<String, String> entries = new LinkedHashMap<>();
        Stream.concat(HOUSE.stream(), Stream.of(settings))
                .map(setting -> setting.split("="))
                .forEach(sides -> entries.put(sides[0], sides[1]));
        PlanBuilder plan = Benchmetre.plan("strawberry");
        entries.forEach(plan::entry);
        plan.row("materials", carrier, part(countedBy))
                .row("materials", "emitter", part("outlet_count"))
                .row("materials", "lateral", part("line_metres"))
                .row(
                        "irrigation",
                        "emitter",
                        Map.of(
                                "lines", "1",
                                "outlets_per_plant", "1",
                                "outlet_flow", "2",
                                "flow_exponent", "0",
                                "inner_diameter", "13.6",
                                "failed_per_year", "0.02",
                                "outlet_item", "emitter"))
                .row("plant_stock", "plug", Map.of("price", "1", "price_year", "2026"));
        for (int month = 0; month < MONTHS.size(); month++) {
            plan.row(
                    "months",
                    MONTHS.get(month),
                    Map.of(
                            "day_temperature", "14",
                            "night_temperature", "8",
                            "radiation", "3",
                            "day_hours", "12",
                            "crop_share", "1"));
        }
        return plan;
    }

    private static Map<String, String> part(String driver) {
        return Map.of(
                "group", "Parts", "driver", driver, "rate", "1", "price", "1", "price_year", "2026", "life", "10");
    }

    @ParameterizedTest
    @MethodSource("farms")
    void a_grower_finds_the_figure_that_is_checked_by_hand(Farm farm) {
        farm.checked.forEach((address, figure) ->
                assertThat(farm.plan.quantity(address).value()).as(address).isCloseTo(figure, ROUNDING));
    }

    @ParameterizedTest
    @MethodSource("farms")
    void it_is_priced_without_a_trouble_and_nothing_is_told_of_it(Farm farm) {
        assertThat(farm.plan.figures().troubles()).isEmpty();
        assertThat(farm.plan.disagreements()).isEmpty();
        assertThat(farm.plan.warnings()).extracting(Remark::message).isEmpty();
    }

    @ParameterizedTest
    @MethodSource("farms")
    void poi_recalculates_its_workbook_to_the_same_figures(Farm farm) throws IOException {
        PoiReferee referee = new PoiReferee(farm.plan.budget(), FarmWorkbook.setup(farm.plan.budget()));
        referee.add(Map.of());
        assertThat(referee.differences()).isEmpty();
    }
}
