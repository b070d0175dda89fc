package org.benchmetre;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.benchmetre.budget.entry.Given;
import org.benchmetre.budget.run.Explanation;
import org.benchmetre.budget.unit.Unit;
import org.benchmetre.farm.Sample;
import org.benchmetre.scenario.Fault;
import org.benchmetre.scenario.SettingSyntaxException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class BenchmetreTest {

    private static final Path SAMPLE = Sample.TROUGH_HOUSE;

    @TempDir
    Path folder;

    private static Plan with(String... settings) throws ScenarioException {
        return Benchmetre.read(SAMPLE, Optional.empty(), List.of(settings));
    }

    private static List<String> faults(String... settings) {
        return faultsOf(Optional.empty(), settings);
    }

    private static List<String> faultsOf(Optional<Path> prices, String... settings) {
        ScenarioException refused =
                catchThrowableOfType(ScenarioException.class, () -> Benchmetre.read(SAMPLE, prices, List.of(settings)));
        return refused.faults().faults().stream().map(Fault::message).toList();
    }

    private Optional<Path> prices(String... rows) throws IOException {
        String text = "item,pack,unit,price,price_year,source,currency\n" + String.join("\n", rows) + "\n";
        return Optional.of(Files.writeString(folder.resolve("prices.csv"), text));
    }

    private static Given given(Plan plan, String id, String key) {
        return plan.budget()
                .given(plan.budget().line(id))
                .get(plan.budget().line(id).axes().get(0).indexOf(key));
    }

    @Test
    void a_sound_scenario_gives_figures() throws ScenarioException {
        Plan plan = Benchmetre.read(SAMPLE);

        assertThat(plan.figures().number("bench_metres")).isEqualTo(10 * 20);
        assertThat(plan.disagreements()).isEmpty();
        assertThat(plan.doubts()).isEmpty();
    }

    @Test
    void a_setting_keeps_what_was_typed_and_says_where_it_comes_from() throws ScenarioException {
        Plan plan = with("bench_length=60 ft");
        Given length = plan.budget().given(plan.budget().line("bench_length")).get(0);

        assertThat(length.typed()).isEqualTo(60);
        assertThat(length.typedIn()).isEqualTo(Unit.parse("ft"));
        assertThat(length.number()).isEqualTo(60 * 0.3048);
        assertThat(length.origin()).hasToString("setting bench_length=60 ft");
        assertThat(length.source()).isEqualTo("changed for this run");
    }

    @Test
    void the_currency_stands_for_money_in_units() throws ScenarioException {
        assertThat(with("install_wage=20 USD/h").figures().number("install_wage"))
                .isEqualTo(20);
        assertThat(with("material_freight[tape]=7%").figures().number("material_freight", "tape"))
                .isEqualTo(0.07);
    }

    @Test
    void another_currency_is_a_fault() {
        assertThat(faults("install_wage=20 EUR/h"))
                .singleElement()
                .asString()
                .contains("found money in EUR, expected money in USD");
    }

    @Test
    void a_cell_of_a_table_may_be_blanked_but_a_single_number_may_not() throws ScenarioException {
        assertThat(with("material_waste[liner]=").figures().number("material_waste", "liner"))
                .isZero();
        assertThat(faults("bench_count="))
                .containsExactly(
                        "setting bench_count=: found nothing, expected a whole number from 1 to 10000 bench for"
                                + " Benches (bench_count).");
    }

    @Test
    void every_fault_of_every_setting_is_told() {
        assertThat(faults(
                        "bench_cuont=3",
                        "bench_metres=3",
                        "bench_length=-1",
                        "bench_width=2 kg",
                        "irrigation_choice=tap"))
                .containsExactlyInAnyOrder(
                        "setting bench_cuont=3: found \"bench_cuont\", expected the name of a line; did you mean"
                                + " bench_count?",
                        "setting bench_metres=3: found \"bench_metres\", expected an entry; Bench metres follows from a"
                                + " formula.",
                        "setting bench_length=-1: found \"-1 m\", expected a number above 0 and of at most 500 m for Length of one bench"
                                + " (bench_length).",
                        "setting bench_width=2 kg: found \"kg\", expected a unit that converts to m for Width of one"
                                + " bench (bench_width).",
                        "setting irrigation_choice=tap: found \"tap\", expected one of emitter, tape, dripline for"
                                + " Irrigation system (irrigation_choice); did you mean tape?");
    }

    @Test
    void an_entry_is_set_once() {
        assertThat(faults("bench_count=3", "bench_count=4"))
                .containsExactly("setting bench_count=4: found a second value for bench_count, expected each entry set"
                        + " once.");
    }

    @Test
    void a_part_belongs_to_ways_that_exist() {
        assertThat(faults("material_option[tape]=tape mist"))
                .singleElement()
                .asString()
                .contains("\"mist\"");
    }

    @Test
    void a_choice_may_name_a_row_that_another_setting_fills() throws ScenarioException {
        Plan plan = with(
                "way_key[spare_1]=mist", "way_label[spare_1]=Mist", "way_lines[spare_1]=1", "irrigation_choice=mist");

        assertThat(plan.figures().text("irrigation_label")).isEqualTo("Mist");
    }

    @Test
    void a_setting_without_the_form_throws_before_anything_is_read() {
        assertThatThrownBy(() -> Benchmetre.read(folder.resolve("none"), Optional.empty(), List.of("bench_count")))
                .isInstanceOf(SettingSyntaxException.class)
                .hasMessage(
                        "A setting is line=value, line[key]=value or line[key;key]=value, such as plant_spacing=6in;"
                                + " it was \"bench_count\".");
    }

    @Test
    void prices_replace_the_price_and_keep_their_place_and_source() throws Exception {
        Plan plan = Benchmetre.read(
                SAMPLE, prices("tape,500,m,50,2025,quotation,USD", "heater,1,each,9,2025,,"), List.of());

        Given price = given(plan, "material_price", "tape");
        assertThat(price.number()).isEqualTo(50);
        assertThat(price.source()).isEqualTo("quotation");
        assertThat(price.origin()).hasToString("prices.csv, row 2, column price");
        assertThat(given(plan, "material_pack", "tape").number()).isEqualTo(500);
        assertThat(given(plan, "material_price_year", "tape").number()).isEqualTo(2025);
        assertThat(given(plan, "material_source", "tape").text()).isEqualTo("quotation");
        assertThat(plan.notes())
                .extracting(note -> note.message())
                .containsExactly("prices.csv, row 3, column item: this scenario does not use \"heater\".");
    }

    @Test
    void settings_come_after_prices() throws Exception {
        Plan plan = Benchmetre.read(SAMPLE, prices("tape,500,m,50,2025,,"), List.of("material_price[tape]=60"));

        assertThat(given(plan, "material_price", "tape").number()).isEqualTo(60);
        assertThat(given(plan, "material_pack", "tape").number()).isEqualTo(500);
    }

    @Test
    void a_price_in_another_unit_or_currency_is_a_fault() throws IOException {
        assertThat(faultsOf(prices("tape,500,ft,50,2025,,", "pump,1,each,50,2025,,EUR"), "bench_count=0"))
                .containsExactly(
                        "prices.csv, row 2, column unit: found \"ft\", expected the unit of this part in the scenario,"
                                + " \"m\".",
                        "prices.csv, row 3, column currency: found \"EUR\", expected the scenario's currency, USD.",
                        "setting bench_count=0: found \"0 bench\", expected a whole number from 1 to 10000 bench for Benches"
                                + " (bench_count).");
    }

    @Test
    void a_figure_without_a_finite_value_is_a_fault() {
        assertThat(faults("material_rate[pump]=1e308"))
                .isNotEmpty()
                .allMatch(message -> message.contains("has no finite value"))
                // A sum over all parts names its first few rows only, and the pump is not among them; nor is it where
                // hours of
                // all installing, which are finite, are paid.
                .allMatch(message ->
                        Stream.of("pump", "(parts_", "_parts_", "install_rate").anyMatch(message::contains))
                .anyMatch(message -> message.contains("Exact cost (material_exact_cost[pump])"));
    }

    @Test
    void an_unusual_entry_and_an_old_price_are_doubted() throws ScenarioException {
        assertThat(with("bench_length=0.5", "material_price_year[tape]=2000").doubts())
                .extracting(doubt -> doubt.message())
                .containsExactly(
                        "setting bench_length=0.5, bench_length: Length of one bench is 0.5 m, usually from 5 to 120 m"
                                + " (invented for the demo).",
                        "setting material_price_year[tape]=2000, material_price_year[tape]: the price is of 2000 and the"
                                + " plan of 2026; no price is indexed.");
    }

    @Test
    void a_present_value_is_explained_by_the_cash_of_each_year() throws ScenarioException {
        Plan plan = Benchmetre.read(SAMPLE);

        assertThat(Explanation.of(plan.figures(), plan.budget().line("net_present_value"), 0)
                        .toString())
                .contains("(cash_net[0])", "(cash_net[10])", "(recovery_rate)", "1 more row adds nothing");
    }

    @Test
    void every_line_can_be_explained_within_its_width() throws ScenarioException {
        Plan plan = Benchmetre.read(SAMPLE);

        plan.budget().lines().parallelStream().forEach(line -> {
            for (int cell : IntStream.of(0, line.size() - 1).distinct().toArray()) {
                String explained = Explanation.of(plan.figures(), line, cell).toString();
                assertThat(explained).startsWith(line.label().substring(0, 3)).contains(line.id());
                assertThat(explained.lines().filter(row -> row.length() > Explanation.WIDTH))
                        .isEmpty();
            }
        });
    }
}
