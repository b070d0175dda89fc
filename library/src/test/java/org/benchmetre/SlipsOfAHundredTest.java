package org.benchmetre;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.benchmetre.farm.Sample;
import org.benchmetre.scenario.Remark;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/** A value that is wrong by a factor of a hundred is told, though its row has no range of its own. */
class SlipsOfAHundredTest {

    private static final String BREAK = "This break is dearer than the list price";
    private static final String PART = "This part is most of first cost";
    private static final String ROW = "This row is most of the yearly cost";

    /** A house of which nothing is told. */
    private static final Path SOUND = Sample.SAMPLES.get(0);

    @TempDir
    Path folder;

    private static List<String> told(Path scenario, String... settings) throws ScenarioException {
        Plan plan = Benchmetre.read(scenario, Optional.empty(), List.of(settings));
        List<Remark> all = new ArrayList<>(plan.warnings());
        all.addAll(plan.doubts());
        return all.stream().map(Remark::message).toList();
    }

    /** The sample's parts, each without a range of its own. */
    private static List<String> without(String part, String... settings) throws ScenarioException {
        List<String> all = new ArrayList<>(List.of(settings));
        for (String end : List.of("price_low", "price_high", "life_low", "life_high")) {
            all.add("material_" + end + "[" + part + "]=");
        }
        return told(SOUND, all.toArray(String[]::new));
    }

    static Stream<Path> soundOnes() {
        return Sample.GIVEN.stream();
    }

    @ParameterizedTest
    @MethodSource("soundOnes")
    void of_a_sound_house_nothing_is_told(Path scenario) throws ScenarioException {
        assertThat(told(scenario)).isEmpty();
    }

    /** Packs of 3 m, of 65 L and of one piece: 0.02 to 100 a metre, 0.01 to 10 a litre, 0.01 to 5,000 apiece. */
    @ParameterizedTest
    @CsvSource({
        "trough, 2250, 0.06 to 300",
        "trough, 0.02, 0.06 to 300",
        "coir, 750, 0.65 to 650",
        "injector, 39000, 0.01 to 5000"
    })
    void the_price_of_a_unit_is_told(String part, double price, String usual) throws ScenarioException {
        assertThat(without(part, "material_price[" + part + "]=" + price))
                .anySatisfy(each -> assertThat(each)
                        .contains("material_price[" + part + "]: Price of a pack is")
                        .contains("usually from " + usual + " USD/pack")
                        .contains("common practice, no source"));
    }

    @Test
    void a_part_counted_in_feet_is_held_against_the_price_of_a_metre() throws ScenarioException {
        assertThat(without(
                        "trough", "material_unit[trough]=ft", "material_pack[trough]=10", "material_price[trough]=400"))
                .anySatisfy(each -> assertThat(each).contains("usually from 0.06096 to 304.8 USD/pack"));
    }

    @Test
    void a_usual_range_is_told_in_the_unit_that_was_typed() throws ScenarioException {
        assertThat(told(SOUND, "plant_spacing=30 inches"))
                .anySatisfy(each -> assertThat(each).contains("is 30 in, usually from 3.937 to 13.78 in ("));
    }

    @Test
    void the_range_of_the_row_goes_before_the_documented_one() throws ScenarioException {
        assertThat(told(
                        SOUND,
                        "material_price_low[trough]=2000",
                        "material_price_high[trough]=3000",
                        "material_price[trough]=2250"))
                .noneMatch(each -> each.contains("material_price[trough]"));
    }

    @ParameterizedTest
    @CsvSource({"0.15", "1500", "0.015"})
    void a_life_is_told(double life) throws ScenarioException {
        assertThat(without("trough", "material_life[trough]=" + life))
                .anySatisfy(each -> assertThat(each)
                        .contains("material_life[trough]: Life is")
                        .contains("from 0.5 to 50"));
    }

    @Test
    void a_price_break_above_the_list_price_is_told_by_the_figures() throws ScenarioException {
        assertThat(told(SOUND, "break_price[plug_from_1000]=0.49"))
                .singleElement()
                .asString()
                .contains("plug_from_1000")
                .contains(BREAK);
        assertThat(told(SOUND, "break_price[plug_from_1000]=0.48")).isEmpty();
    }

    @Test
    void a_price_of_fruit_is_told_once_though_it_stands_for_many_months() throws Exception {
        try (Stream<Path> files = Files.list(Sample.TROUGH_HOUSE)) {
            for (Path file : files.filter(Files::isRegularFile).toList()) {
                Files.copy(file, folder.resolve(file.getFileName()));
            }
        }
        Path channels = folder.resolve("channels.csv");
        Files.writeString(channels, Files.readString(channels).replace(",13.50,", ",1350,"));
        assertThat(told(folder).stream()
                        .filter(each -> each.contains("1350 USD/kg"))
                        .toList())
                .singleElement()
                .asString()
                .contains("channels.csv, row 3, column price")
                .contains("usually from 0.6 to 60 USD/kg");
        assertThat(told(SOUND, "channel_price[direct;jan]=1350"))
                .anyMatch(each -> each.contains("channel_price[direct;jan]"));
    }

    @Test
    void a_price_of_plants_is_told() throws ScenarioException {
        assertThat(told(SOUND, "stock_price[plug]=48"))
                .anySatisfy(
                        each -> assertThat(each).contains("stock_price[plug]").contains("from 0.05 to 10"));
    }

    /** A pack of 0.03 m in place of 3 m: 174,420 of 182,000. */
    @Test
    void a_part_that_is_most_of_first_cost_is_told() throws ScenarioException {
        assertThat(told(SOUND, "material_pack[trough]=0.03"))
                .anySatisfy(each -> assertThat(each).contains(PART).contains("Rigid trough"))
                .anySatisfy(each -> assertThat(each).contains("first_cost_per_area_most"));
    }

    @Test
    void a_row_that_is_most_of_the_yearly_cost_is_told() throws ScenarioException {
        assertThat(told(SOUND, "material_life[trough]=0.015"))
                .anySatisfy(each -> assertThat(each).contains(ROW).contains("Trough and supports"))
                .anySatisfy(each -> assertThat(each).contains("yearly_cost_per_kg_most"));
    }

    /** A house of 240 m by 96 m is a hundred times as large as the sample's; plants at 59 apiece are a hundred times as dear. */
    @Test
    void totals_far_from_what_is_usual_are_told() throws ScenarioException {
        assertThat(told(Sample.TROUGH_HOUSE, "house_length=240", "house_width=96"))
                .anySatisfy(each -> assertThat(each).contains("first_cost_per_area_least"))
                .anySatisfy(each -> assertThat(each).contains("fruit_per_area_least"));
        assertThat(told(Sample.TROUGH_HOUSE, "break_price[tray_plant_from_1000]=59"))
                .anySatisfy(each -> assertThat(each).contains("operating_cost_per_area_most"));
    }

    @Test
    void of_money_that_is_not_of_about_a_dollars_worth_no_documented_range_holds() throws Exception {
        try (Stream<Path> files = Files.list(SOUND)) {
            for (Path file : files.filter(Files::isRegularFile).toList()) {
                String text = Files.readString(file).replace("plan_currency,USD", "plan_currency,JPY");
                Files.writeString(
                        folder.resolve(file.getFileName()),
                        text.replace("USD/", "JPY/").replace(",USD,", ",JPY,"));
            }
        }
        String[] yen = {"channel_price[direct;jan]=1350", "stock_price[plug]=48", "material_life[trough]=1500"};
        assertThat(told(folder, yen)).singleElement().asString().contains("material_life[trough]");
        assertThat(told(SOUND, yen)).hasSizeGreaterThan(2);
    }
}
