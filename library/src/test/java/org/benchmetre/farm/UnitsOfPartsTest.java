package org.benchmetre.farm;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.benchmetre.Benchmetre;
import org.benchmetre.Plan;
import org.benchmetre.PlanBuilder;
import org.benchmetre.ScenarioException;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.entry.Plausible;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The unit of a part: of its driver's measure it converts, in any spelling; a word of one's own counts; what cannot mean anything is refused. */
class UnitsOfPartsTest {

    private static final double CENT = 0.005;
    /** A foot and a cubic foot, from the inch of 0.0254 m. */
    private static final double METRES_OF_A_FOOT = 12 * 0.0254;

    private static final double LITRES_OF_A_CUBIC_FOOT = 1000 * Math.pow(METRES_OF_A_FOOT, 3);

    private static Plan trough(String... settings) throws ScenarioException {
        return Benchmetre.read(Sample.TROUGH_HOUSE, Optional.empty(), List.of(settings));
    }

    private static double exact(Plan plan, String part) {
        return plan.figures().number("material_exact_cost", part);
    }

    @Test
    void a_sack_of_four_cubic_feet_costs_what_as_many_litres_cost() throws ScenarioException {
        double litres = 4 * LITRES_OF_A_CUBIC_FOOT;
        assertThat(litres).isCloseTo(113.267, within(0.001));
        Plan inLitres = trough("material_pack[perlite]=" + litres);
        Plan inFeet = trough(
                "material_unit[perlite]=cu ft",
                "material_pack[perlite]=4",
                "material_install_hours[perlite]=" + 0.0003 * LITRES_OF_A_CUBIC_FOOT,
                "material_remove_hours[perlite]=" + 0.0001 * LITRES_OF_A_CUBIC_FOOT);
        assertThat(exact(inFeet, "perlite")).isCloseTo(exact(inLitres, "perlite"), within(1e-9));
        assertThat(inFeet.quantity("first_cost_total").value())
                .isCloseTo(inLitres.quantity("first_cost_total").value(), within(1e-6));
        assertThat(inFeet.figures().number("material_packs", "perlite"))
                .isEqualTo(inLitres.figures().number("material_packs", "perlite"));
        assertThat(Sample.warnings(inFeet)).isEqualTo(Sample.warnings(inLitres));
    }

    @ParameterizedTest
    @ValueSource(strings = {"4 cu ft", "4 ft3", "4 cuft", "4 cubic feet", "4 cu. ft.", "4 ft^3"})
    void a_pack_says_its_unit_itself(String pack) throws ScenarioException {
        Plan converted = trough("material_pack[perlite]=" + pack);
        assertThat(converted.figures().number("material_pack", "perlite"))
                .isCloseTo(4 * LITRES_OF_A_CUBIC_FOOT, within(1e-9));
        Plan unsaid = trough("material_unit[perlite]=", "material_pack[perlite]=" + pack);
        assertThat(exact(unsaid, "perlite")).isCloseTo(exact(converted, "perlite"), within(1e-9));
        assertThat(unsaid.text("material_unit[perlite]")).isEqualTo("ft3");
    }

    /** Troughs of 22.50 for 3 m, 200 m of bench and 2 % of waste: 3 ft of it cost the same, so that a metre takes 3.28 times as much. */
    @ParameterizedTest
    @ValueSource(strings = {"ft", "feet", "Foot", "FT", "ft.", "linear feet", "lin. ft", "lf", "'"})
    void every_spelling_of_a_foot_is_one(String unit) throws ScenarioException {
        double benchMetres = trough().figures().number("bench_metres");
        double price = 22.50 * (1 + 0.08 + 0.06);
        assertThat(exact(trough("material_unit[trough]=" + unit), "trough"))
                .isCloseTo(benchMetres / METRES_OF_A_FOOT * 1.02 / 3 * price, within(CENT / 100));
    }

    @ParameterizedTest
    @CsvSource({
        "trough, metres, m",
        "trough, inches, in",
        "trough, 3 yds, ",
        "perlite, Gallons, gal",
        "perlite, us gal, gal",
        "perlite, Liters, L",
        "end_cap, ea, ea",
        "end_cap, pcs, pcs",
        "end_cap, hanging basket, hanging basket",
        "end_cap, Rolle, Rolle"
    })
    void a_unit_is_kept_as_files_have_it_and_a_word_of_ones_own_as_it_is(String part, String typed, String kept) {
        String address = "material_unit[" + part + "]=" + typed;
        if (kept == null) {
            assertThatThrownBy(() -> trough(address)).isInstanceOf(ScenarioException.class);
            return;
        }
        try {
            assertThat(trough(address).text("material_unit[" + part + "]")).isEqualTo(kept);
        } catch (ScenarioException e) {
            throw new AssertionError(e);
        }
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "metr|did you mean m?",
                "foots|did you mean ft?",
                "litr|did you mean L?",
                "4 ft|did you mean ft?",
                "kPa|",
                "USD|",
                "°C|",
                "L/h/m|"
            })
    void what_measures_nothing_that_is_bought_is_refused_with_what_was_meant(String unit, String question) {
        String behind = question == null ? "" : "; " + question;
        assertThatThrownBy(() -> trough("material_unit[trough]=" + unit))
                .hasMessageContaining(
                        "found \"" + unit + "\", expected a unit such as m, ft, m2, L, ft3 or kg, or a word for what"
                                + " is counted, such as each or roll, for Unit (material_unit[trough])" + behind);
    }

    @Test
    void a_mass_for_a_length_is_refused_at_a_rate_of_one_and_taken_at_one_that_says_how_much()
            throws ScenarioException {
        assertThatThrownBy(() -> trough("material_unit[liner]=kg"))
                .hasMessageContaining(
                        "found \"kg\", expected a unit of length such as m, ft, as its driver is in m and its rate is 1, or another"
                                + " rate, in kg for each m, for Unit (material_unit[liner])");
        Plan sold = trough("material_unit[liner]=kg", "material_rate[liner]=0.2", "material_waste[liner]=0");
        assertThat(sold.figures().number("material_quantity", "liner"))
                .isCloseTo(0.2 * sold.figures().number("bench_metres"), within(1e-9));
        assertThat(Sample.warnings(sold)).noneMatch(each -> each.contains("A rate of 1"));
    }

    @Test
    void a_measure_for_each_piece_of_a_driver_that_counts_is_taken_as_it_is() throws ScenarioException {
        Plan plan = trough("material_unit[drain_collector]=ft", "material_waste[drain_collector]=0");
        assertThat(plan.figures().number("material_quantity", "drain_collector"))
                .isCloseTo(1.2 * plan.figures().number("bench_count"), within(1e-9));
    }

    @Test
    void a_sack_for_each_litre_is_told() throws ScenarioException {
        assertThat(Sample.warnings(trough("material_unit[perlite]=sack")))
                .anySatisfy(each -> assertThat(each)
                        .contains("Perlite, coarse")
                        .contains("A rate of 1 takes 1 sack for each unit of its driver"));
        assertThat(Sample.warnings(trough("material_unit[perlite]=sack", "material_rate[perlite]=0.01")))
                .noneMatch(each -> each.contains("A rate of 1"));
    }

    @Test
    void a_blank_unit_is_that_of_the_driver_or_each() throws ScenarioException {
        Plan plan = trough("material_unit[trough]=", "material_unit[perlite]=", "material_unit[emitter]=");
        assertThat(plan.text("material_unit_counted[trough]")).isEqualTo("m");
        assertThat(plan.text("material_unit_counted[perlite]")).isEqualTo("L");
        assertThat(plan.text("material_unit_counted[emitter]")).isEqualTo("each");
        assertThat(plan.quantity("first_cost_total").value())
                .isEqualTo(trough().quantity("first_cost_total").value());
        assertThat(range(plan)).isEqualTo(range(trough()));
    }

    private static Plausible range(Plan plan) {
        Line price = plan.budget().line("material_price");
        return plan.budget().range(price, price.axes().get(0).indexOf("trough")).range();
    }

    @Test
    void a_price_list_gives_its_unit_to_a_part_that_has_none(@TempDir Path folder)
            throws IOException, ScenarioException {
        Path list = folder.resolve("prices.csv");
        Files.writeString(list, """
                item,pack,unit,price,price_year,source
                perlite,4,cu. ft.,17.50,2026,a catalogue
                trough,3,metres,22.50,2026,a catalogue
                """);
        trough("material_unit[perlite]=").writeScenario(folder.resolve("unsaid"));
        Plan plan = Benchmetre.read(folder.resolve("unsaid"), Optional.of(list), List.of());
        assertThat(plan.text("material_unit[perlite]")).isEqualTo("ft3");
        assertThat(exact(plan, "perlite"))
                .isCloseTo(exact(trough("material_pack[perlite]=4 ft3"), "perlite"), within(1e-9));
    }

    @Test
    void a_plan_in_memory_takes_them_too() throws ScenarioException {
        Map<String, String> trough = Map.of(
                "driver",
                "bench_metres",
                "rate",
                "1",
                "unit",
                "feet",
                "pack",
                "10",
                "price",
                "20",
                "price_year",
                "2026");
        PlanBuilder builder = Benchmetre.plan("strawberry")
                .entry("bench_count", "1")
                .entry("bench_length", "100 feet")
                .row("materials", "trough", trough)
                .row("irrigation", "tape", Map.of("lines", "2", "outlet_spacing", "8 inches"))
                .row("plant_stock", "plug", Map.of("price", "0.40 USD/ea", "price_year", "2026"));
        assertThat(builder.build().figures().number("material_quantity", "trough"))
                .isCloseTo(100, within(1e-9));
        assertThat(builder.build().figures().number("material_purchase_cost", "trough"))
                .isCloseTo(200, within(1e-9));
    }

    @ParameterizedTest
    @CsvSource({"6 yrs, 6, a", "18 months, 1.5, a", "2 crops, 2, crop", "3, 3, a"})
    void a_life_says_its_unit_itself(String typed, double number, String unit) throws ScenarioException {
        Plan plan = trough("material_life[pump]=" + typed);
        assertThat(plan.figures().number("material_life", "pump")).isEqualTo(number);
        assertThat(plan.text("material_life_unit[pump]")).isEqualTo(unit);
    }

    @Test
    void a_unit_behind_a_number_that_its_column_contradicts_is_refused() {
        assertThatThrownBy(() -> trough("material_life[coir]=3 years"))
                .hasMessageContaining("found \"yr\", expected one of a, crop for Life (material_life[coir])");
        assertThatThrownBy(() -> trough("material_pack[end_cap]=10 ft"))
                .hasMessageContaining("found \"ft\", expected a unit that goes with that of its row for Pack size");
    }
}
