package org.benchmetre.batch;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;
import org.benchmetre.Benchmetre;
import org.benchmetre.ScenarioException;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.run.Figures;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class IrrigationCommandTest {

    @TempDir
    private Path folder;

    private static Path sample(String name) {
        return Path.of("..", "samples", name);
    }

    private static List<CSVRecord> csv(Object... arguments) throws IOException {
        Ran ran = Ran.with(arguments);
        assertThat(ran.exit()).isZero();
        CSVFormat format = CSVFormat.DEFAULT
                .builder()
                .setHeader()
                .setSkipHeaderRecord(true)
                .get();
        return format.parse(new StringReader(ran.out())).getRecords();
    }

    private static String value(List<CSVRecord> records, String line, String index) {
        return records.stream()
                .filter(each ->
                        each.get("line").equals(line) && each.get("index").equals(index))
                .map(each -> each.get("value"))
                .findFirst()
                .orElseThrow();
    }

    @ParameterizedTest
    @ValueSource(strings = {"trough-house", "container-house"})
    void every_part_of_the_answer_is_there_and_no_line_is_longer_than_a_console(String name) {
        Ran ran = Ran.with("irrigation", sample(name));

        assertThat(ran.exit()).isZero();
        assertThat(ran.err()).isEmpty();
        assertThat(ran.outLines()).allSatisfy(line -> assertThat(line).hasSizeLessThanOrEqualTo(100));
        assertThat(ran.out())
                .containsSubsequence(
                        ": least yearly cost per metre of the systems that",
                        "It saves ",
                        "Owning the line",
                        "Doubts",
                        "\nSide by side\n",
                        "Emission uniformity",
                        "\nYearly cost per metre of bench by cause, USD/m/yr\n",
                        "Fruit lost to dry plants",
                        "\nPartial budget, USD/m/yr, of changing from the system chosen to: ",
                        "Added returns",
                        "Gain of changing",
                        "\nAt which value of an entry the answer flips\n",
                        "price[tape]",
                        "\nCautions\n",
                        "Water pressure and backflow: ",
                        "Electricity near water: ");
    }

    @Test
    void the_sentence_names_the_cheapest_way_and_the_flips_their_values() throws ScenarioException {
        Figures figures = Benchmetre.read(Ran.SAMPLE).figures();
        Ran ran = Ran.with("irrigation", Ran.SAMPLE);
        String life = Shown.number(figures.number("flip_value", "material_life_tape"));

        assertThat(ran.outLines().get(2)).startsWith("Two strips of drip tape: least yearly cost");
        assertThat(ran.out()).containsPattern("(?m)^Life, Drip tape +2 +" + life + "  crops +In-line dripline ");
        assertThat(ran.out()).contains("with: In-line dripline.", "no value flips it");
    }

    @Test
    void numbers_carry_no_needless_zeros() {
        assertThat(Ran.with("irrigation", Ran.SAMPLE).out())
                .contains(" 80 to 160 ")
                .doesNotContain("160.00");
        assertThat(Shown.number(260)).isEqualTo("260");
        assertThat(Shown.number(101.5)).isEqualTo("101.5");
        assertThat(Shown.number(127.334586)).isEqualTo("127.33");
        assertThat(Shown.number(1_000_000)).isEqualTo("1000000");
        assertThat(Shown.number(0.02364999)).isEqualTo("0.02365");
        assertThat(Shown.number(-100.005001)).isEqualTo("-100.01");
        assertThat(Shown.number(0)).isEqualTo("0");
    }

    @ParameterizedTest
    @ValueSource(strings = {"trough-house", "container-house"})
    void csv_has_the_flip_values_with_all_digits(String name) throws IOException, ScenarioException {
        Figures figures = Benchmetre.read(sample(name)).figures();
        List<CSVRecord> records = csv("irrigation", sample(name), "--csv");
        Line flips = figures.budget().line("flip_value");

        for (int row = 0; row < flips.size(); row++) {
            String printed = value(records, "flip_value", flips.index(row));
            assertThat(printed).isEqualTo(figures.text(flips, row));
            if (!figures.hasReason(flips, row)) {
                assertThat(Double.parseDouble(printed)).isEqualTo(figures.number(flips, row));
            }
        }
        assertThat(value(records, "recommended_way", "")).isEqualTo(figures.text("recommended_way"));
    }

    @Test
    void a_printed_flip_value_set_again_makes_both_ways_cost_the_same() throws IOException {
        String price = value(csv("irrigation", Ran.SAMPLE, "--csv"), "flip_value", "material_price_tape");
        List<CSVRecord> there = csv("irrigation", Ran.SAMPLE, "--csv", "--set", "material_price[tape]=" + price);
        double tape = Double.parseDouble(value(there, "way_yearly_cost_per_metre", "tape"));

        assertThat(tape).isPositive();
        assertThat(Double.parseDouble(value(there, "way_yearly_cost_per_metre", "dripline")))
                .isCloseTo(tape, within(1e-4 * tape));
    }

    @Test
    void one_way_only_is_printed_without_a_rival() {
        Path alone = Ran.copy(folder);
        for (String file : List.of("irrigation.csv", "materials.csv")) {
            rewrite(alone.resolve(file));
        }
        Ran ran = Ran.with("irrigation", alone);

        assertThat(ran.exit()).isZero();
        assertThat(ran.out())
                .contains(
                        "There is no other system to change to.",
                        "only one system",
                        "No other system is in the ranking.")
                .doesNotContain("It saves");
    }

    private static void rewrite(Path file) {
        try {
            String text = Files.readString(file, StandardCharsets.UTF_8)
                    .replaceAll("(?m)^(tape|tape_fitting|dripline),.*\\R", "")
                    .replace(",emitter dripline,", ",emitter,");
            Files.writeString(file, text, StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    @ParameterizedTest
    @CsvSource({
        "way_outlet_pressure[emitter]=40, Pressure range of a compensating outlet (One emitter a plant), Change outlet_pressure",
        "way_outlet_pressure[tape]=120, Pressure rating of the line (Two strips of drip tape), Lower outlet_pressure",
        "supply_flow=250, Supply against one bench (One emitter a plant), raise supply_flow",
        "filter_opening=0.14, Filter against the outlet (Two strips of drip tape), lower filter_opening",
        "way_outlet_spacing[dripline]=9, Outlet spacing against the bench (In-line dripline), Choose a closer outlet_spacing"
    })
    void check_prints_what_is_wrong_with_a_way(String setting, String warning, String change) {
        String length = setting.contains("spacing") ? "bench_length=8" : "bench_length=20";
        Ran ran = Ran.with("check", Ran.SAMPLE, "--set", setting, "--set", length);

        assertThat(ran.exit()).isZero();
        assertThat(ran.errLines())
                .anySatisfy(line -> assertThat(line)
                        .startsWith("Warning: " + warning + ": ")
                        .contains(change));
    }
}
