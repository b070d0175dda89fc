package org.benchmetre.batch;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.io.StringReader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;
import org.assertj.core.data.Offset;
import org.benchmetre.Benchmetre;
import org.benchmetre.ScenarioException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class PriceCommandTest {

    /** A sum of a dozen amounts of some tens differs by rounding alone. */
    private static final Offset<Double> ROUNDING = within(1e-9);

    @TempDir
    Path folder;

    private static List<CSVRecord> csv(Object... arguments) throws IOException {
        Ran ran = Ran.with(arguments);
        assertThat(ran.exit()).isZero();
        assertThat(ran.out()).doesNotContain("\r").endsWith("\n");
        return CSVFormat.DEFAULT
                .builder()
                .setHeader()
                .setSkipHeaderRecord(true)
                .get()
                .parse(new StringReader(ran.out()))
                .getRecords();
    }

    private static double value(List<CSVRecord> records, String line, String index) {
        return records.stream()
                .filter(record ->
                        record.get("line").equals(line) && record.get("index").equals(index))
                .mapToDouble(record -> Double.parseDouble(record.get("value")))
                .findFirst()
                .orElseThrow();
    }

    private static double sum(List<CSVRecord> records, String line, String indexEnd) {
        return records.stream()
                .filter(record ->
                        record.get("line").equals(line) && record.get("index").endsWith(indexEnd))
                .mapToDouble(record -> Double.parseDouble(record.get("value")))
                .sum();
    }

    /** Page by page, and all of them. */
    @Test
    void every_page_is_printed_by_its_name_within_a_hundred_columns_and_names_the_others() throws ScenarioException {
        List<String> names = Benchmetre.read(Ran.SAMPLE).pages().stream()
                .map(page -> page.name().toLowerCase(Locale.ROOT).replace(' ', '-'))
                .toList();
        assertThat(names).contains("answer", "irrigation", "budget", "sources-and-safety");
        for (String name : names) {
            Ran ran = Ran.with("price", Ran.SAMPLE, "--page", name);

            assertThat(ran.exit()).as(name).isZero();
            assertThat(ran.err()).as(name).isEmpty();
            assertThat(ran.outLines())
                    .as(name)
                    .allSatisfy(line -> assertThat(line).hasSizeLessThanOrEqualTo(100));
            assertThat(ran.out()).contains("Other pages (--page NAME): ").doesNotContain("spare_", " a)");
        }
        assertThat(Ran.with("price", Ran.SAMPLE, "--page", "all").out())
                .contains(Ran.with("price", Ran.SAMPLE, "--page", "answer")
                        .outLines()
                        .get(0))
                .contains(Ran.with("price", Ran.SAMPLE, "--page", "to buy")
                        .outLines()
                        .get(0));
    }

    @ParameterizedTest
    @ValueSource(strings = {"trough-house", "container-house", "two-crop-glasshouse"})
    void the_answer_takes_forty_lines_at_most_and_has_cautions_in_short(String name) {
        Ran ran = Ran.with("price", Path.of("..", "samples", name));

        assertThat(ran.exit()).isZero();
        assertThat(ran.outLines()).hasSizeLessThanOrEqualTo(40);
        assertThat(ran.out()).startsWith("Answer: ").contains("A metre of bench", "Loads");
        assertThat(ran.out()).doesNotContain("licensed engineer");
        assertThat(Ran.with("price", Ran.SAMPLE, "--cautions").out()).contains("licensed engineer");
    }

    @Test
    void a_page_that_does_not_exist_is_wrong_usage_with_near_names() {
        Ran ran = Ran.with("price", Ran.SAMPLE, "--page", "calender");

        assertThat(ran.exit()).isEqualTo(2);
        assertThat(ran.out()).isEmpty();
        assertThat(ran.err()).startsWith("There is no page \"calender\", did you mean calendar? Pages: answer, ");
    }

    @Test
    void a_page_or_all_digits_but_not_both() {
        assertThat(Ran.with("price", Ran.SAMPLE, "--csv", "--page", "answer").exit())
                .isEqualTo(2);
    }

    @Test
    void csv_has_every_value_and_its_groups_sum_to_the_total() throws IOException {
        List<CSVRecord> records = csv("price", Ran.SAMPLE, "--csv");
        double perMetre = value(records, "first_cost_per_metre", "");

        assertThat(perMetre).isPositive();
        assertThat(sum(records, "group_first_cost_per_metre", "")).isCloseTo(perMetre, ROUNDING);
        assertThat(sum(records, "group_way_first_cost", ";tape"))
                .isCloseTo(value(records, "way_first_cost", "tape"), ROUNDING);
        assertThat(value(records, "exact_cost", "") + value(records, "leftover_value", ""))
                .isCloseTo(value(records, "purchase_cost", ""), ROUNDING);
        assertThat(value(records, "plant_spacing", "")).isEqualTo(4.5 * 0.0254);
    }

    @Test
    void csv_names_units_with_the_currency_and_prints_texts_as_texts() {
        assertThat(Ran.with("price", Ran.SAMPLE, "--csv").outLines())
                .startsWith("line,index,value,unit")
                .contains("bench_metres,,240,m", "irrigation_choice,,emitter,1", "material_price,tape,80,USD/pack");
    }

    @Test
    void a_setting_flips_the_choice() throws IOException {
        List<CSVRecord> emitter = csv("price", Ran.SAMPLE, "--csv");
        List<CSVRecord> tape = csv("price", Ran.SAMPLE, "--csv", "--set", "irrigation_choice=tape");

        assertThat(value(tape, "first_cost_per_metre", ""))
                .isEqualTo(value(emitter, "way_first_cost_per_metre", "tape"))
                .isNotEqualTo(value(emitter, "first_cost_per_metre", ""));
    }

    @Test
    void a_unit_may_follow_the_value_with_or_without_a_space() throws IOException {
        for (String setting : List.of("plant_spacing=20cm", "plant_spacing=20 cm", "plant_spacing=0.2m")) {
            assertThat(value(csv("price", Ran.SAMPLE, "--csv", "--set", setting), "plant_spacing", ""))
                    .isCloseTo(0.2, within(1e-15));
        }
    }

    @Test
    void a_bare_number_is_in_the_unit_the_entry_was_given_in() throws IOException {
        List<CSVRecord> records = csv("price", Ran.SAMPLE, "--csv", "--set", "plant_spacing=8");

        assertThat(value(records, "plant_spacing", "")).isEqualTo(8 * 0.0254);
    }

    @Test
    void a_price_list_replaces_price_and_pack() throws IOException {
        Path prices = Files.writeString(
                folder.resolve("prices.csv"),
                "item,pack,unit,price,price_year,source\ntape,500,m,50,2025,quotation\nsledge,1,each,9,2025,\n");
        Ran ran = Ran.with("price", Ran.SAMPLE, "--csv", "--prices", prices);

        assertThat(ran.exit()).isZero();
        assertThat(ran.outLines())
                .contains("material_price,tape,50,USD/pack", "material_pack,tape,500,item/pack")
                .contains("material_price_year,tape,2025,1", "material_source,tape,quotation,1");
        assertThat(ran.errLines())
                .containsExactly("Note: prices.csv, row 3, column item: this scenario does not use \"sledge\".");
    }

    @Test
    void two_runs_print_the_same() {
        assertThat(Ran.with("price", Ran.SAMPLE, "--csv")).isEqualTo(Ran.with("price", Ran.SAMPLE, "--csv"));
    }
}
