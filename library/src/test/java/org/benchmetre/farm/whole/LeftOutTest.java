package org.benchmetre.farm.whole;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.benchmetre.budget.Budget;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.run.Figures;
import org.benchmetre.farm.Sample;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/** What a whole budget holds is counted or named as missing. */
class LeftOutTest {

    private static final String[] WHOLE = {
        "house_cost_per_area=60 money/m2",
        "material_block[controller]=heating_plant",
        "material_block[pump]=cooling",
        "material_block[stock_tank]=cold_room",
        "material_block[filter]=electrical",
        "material_block[injector]=packing_place",
        "vehicles_cost=900 money/a",
        "management_cost=1000 money/a",
        "office_cost=300 money/a",
        "land_rent=0.5 money/(m2 a)",
        "licences_cost=120 money/a",
        "contingency_share=0.05 1"
    };

    private static final List<String> NAMES = List.of(
            "house",
            "heating plant",
            "ventilation or cooling",
            "electrical",
            "cold room",
            "packing place",
            "vehicles",
            "management",
            "office",
            "land",
            "licences",
            "contingency");

    private static final Budget SAMPLE = Sample.troughHouse();

    private static Figures with(String... settings) {
        return Figures.of(Sample.with(SAMPLE, settings));
    }

    private static Figures wholeBut(String... settings) {
        List<String> all = new ArrayList<>(List.of(WHOLE));
        all.addAll(List.of(settings));
        return with(all.toArray(String[]::new));
    }

    private static String account(Figures f, String key) {
        Line label = f.budget().line("account_label");
        return f.text(label, label.axes().get(0).indexOf(key));
    }

    @Test
    void the_sample_names_what_it_leaves_out() {
        Figures f = Figures.of(SAMPLE);
        assertThat(f.text("left_out"))
                .isEqualTo(
                        "house, heating plant, ventilation or cooling, electrical, cold room, packing place, vehicles, management, "
                                + "office, licences, contingency");
        assertThat(f.text("left_out_sentence"))
                .isEqualTo(
                        "Not counted: house, heating plant, ventilation or cooling, electrical, cold room, packing place, vehicles, "
                                + "management, office, licences, contingency. Returns are above listed costs, not total cost.");
        assertThat(f.text("left_out_sentence")).doesNotContain("Everything");
        assertThat(f.text("cost_words")).isEqualTo("listed costs");
        assertThat(account(f, "costs")).isEqualTo("Costs of a year, as listed");
        assertThat(account(f, "returns")).isEqualTo("Returns above listed costs");
        assertThat(f.text("answer_cost_and_return")).endsWith(" is left above the costs that are listed.");
    }

    @Test
    void a_whole_budget_says_total_cost() {
        Figures f = wholeBut();
        assertThat(f.text("left_out")).isEmpty();
        assertThat(f.text("left_out_sentence")).isEqualTo("Everything a whole budget holds is counted.");
        assertThat(f.text("cost_words")).isEqualTo("total cost");
        assertThat(account(f, "costs")).isEqualTo("Total cost of a year");
        assertThat(account(f, "returns")).isEqualTo("Returns above total cost");
        assertThat(wholeBut("price_level=2 1").text("answer_cost_and_return")).endsWith(" is left above total cost.");
    }

    static Stream<List<String>> eachAlone() {
        List<String> nothing = List.of(
                "house_cost_per_area=0 money/m2",
                "material_block[controller]=none",
                "material_block[pump]=none",
                "material_block[filter]=none",
                "material_block[stock_tank]=none",
                "material_block[injector]=none",
                "vehicles_cost=0 money/a",
                "management_cost=0 money/a",
                "office_cost=0 money/a",
                "land_rent=0 money/(m2 a)",
                "licences_cost=0 money/a",
                "contingency_share=0 1");
        return Stream.iterate(0, i -> i < nothing.size(), i -> i + 1).map(i -> List.of(nothing.get(i), NAMES.get(i)));
    }

    @ParameterizedTest
    @MethodSource("eachAlone")
    void one_block_alone_is_missing_by_its_name(List<String> settingAndName) {
        Figures f = wholeBut(settingAndName.get(0));
        assertThat(f.text("left_out")).isEqualTo(settingAndName.get(1));
        assertThat(f.text("left_out_sentence")).startsWith("Not counted: " + settingAndName.get(1) + ". ");
    }

    @ParameterizedTest
    @CsvSource({
        "material_price[filter]=0 money/pack, electrical",
        "material_rate[filter]=0 item/driver, electrical",
        "bench_week_charge=1 money/(m wk), ''"
    })
    void a_part_counts_with_a_quantity_and_a_price(String setting, String missing) {
        assertThat(wholeBut(setting).text("left_out")).isEqualTo(missing);
    }

    @Test
    void each_block_is_waived_by_a_reason_and_is_then_not_missing() {
        for (int block = 0; block < NAMES.size(); block++) {
            String entry =
                    "waived_" + SAMPLE.line("block_label").axes().get(0).keys().get(block);
            String setting = eachAlone().toList().get(block).get(0);
            Figures f = wholeBut(setting, entry + "=rented with the site");
            assertThat(f.text("left_out")).isEmpty();
            assertThat(f.text("cost_words")).isEqualTo("total cost");
            assertThat(f.text("left_out_sentence"))
                    .isEqualTo("Everything else that a whole budget holds is counted. Waived: " + NAMES.get(block)
                            + " (rented with the site).");
        }
    }

    @Test
    void what_is_waived_stands_behind_what_is_missing() {
        Figures f = wholeBut(
                "land_rent=0 money/(m2 a)",
                "office_cost=0 money/a",
                "management_cost=0 money/a",
                "waived_land=owned outright",
                "waived_office=done at home");
        assertThat(f.text("left_out_sentence"))
                .isEqualTo("Not counted: management. Waived: office (done at home), land (owned outright). "
                        + "Returns are above listed costs, not total cost.");
        assertThat(account(f, "returns")).isEqualTo("Returns above listed costs");
    }

    @Test
    void what_is_counted_is_not_waived_and_a_warning_says_so() {
        Figures f = wholeBut("waived_land=owned outright");
        Line warning = f.budget().line("block_waived_warning");
        assertThat(f.text("left_out_sentence")).isEqualTo("Everything a whole budget holds is counted.");
        for (int block = 0; block < NAMES.size(); block++) {
            assertThat(f.text(warning, block).isEmpty())
                    .as(NAMES.get(block))
                    .isEqualTo(!NAMES.get(block).equals("land"));
        }
    }

    @ParameterizedTest
    @CsvSource({
        "land_rent=0 money/(m2 a), land_sum=500 money/a, land",
        "vehicles_cost=0 money/a, material_block[emitter]=vehicles, vehicles"
    })
    void land_counts_by_a_sum_and_vehicles_by_parts_too(String nothing, String otherwise, String name) {
        assertThat(wholeBut(nothing).text("left_out")).isEqualTo(name);
        assertThat(wholeBut(nothing, otherwise).text("left_out")).isEmpty();
    }

    @Test
    void a_part_of_another_way_is_not_built() {
        assertThat(with("material_block[tape]=electrical").text("left_out")).contains("electrical");
        assertThat(with("material_block[tape]=electrical", "irrigation_choice=tape")
                        .text("left_out"))
                .doesNotContain("electrical");
    }

    @ParameterizedTest
    @CsvSource({
        "material_driver[pump]=house_area, true",
        "material_block[pump]=house, true",
        "material_block[pump]=cooling, false"
    })
    void a_part_by_the_floor_or_of_the_house_is_the_house(String setting, boolean isHoused) {
        assertThat(!with(setting).text("left_out").contains("house")).isEqualTo(isHoused);
    }

    @Test
    void a_part_by_the_floor_that_says_none_is_no_house() {
        Figures f = with("material_driver[pump]=house_area", "material_block[pump]=none");
        assertThat(f.text("left_out")).startsWith("house, ");
    }

    @Test
    void a_house_by_bench_and_week_is_the_house() {
        Figures f = with("house_charge_by=bench_week", "bench_week_charge=0.3 money/(m wk)");
        assertThat(f.text("left_out")).startsWith("heating plant, ");
    }
}
