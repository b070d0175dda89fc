package org.benchmetre.batch;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.io.StringReader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;
import org.assertj.core.data.Offset;
import org.benchmetre.Benchmetre;
import org.benchmetre.Plan;
import org.benchmetre.ScenarioException;
import org.benchmetre.budget.run.Figures;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

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

    @Test
    void what_it_prints_runs_no_search() throws ScenarioException {
        Plan plan = Benchmetre.read(Ran.SAMPLE);
        Figures figures = plan.figures();
        plan.warnings();
        plan.doubts();
        assertThat(plan.disagreements()).isEmpty();
        assertThat(new PriceReport(figures).toString()).contains("Yearly cost");
        assertThat(figures.isSearched()).isFalse();
        assertThat(new IrrigationReport(figures).toString()).contains("Flips at");
        assertThat(figures.isSearched()).isTrue();
    }

    @Test
    void the_report_shows_the_chosen_way_first_and_the_others_beside_it() {
        Ran ran = Ran.with("price", Ran.SAMPLE, "--set", "irrigation_choice=tape");

        assertThat(ran.exit()).isZero();
        assertThat(ran.err()).isEmpty();
        assertThat(ran.out())
                .contains("First cost: what it takes to build", "Irrigation system   Two strips of drip tape")
                .contains("Bench metres        200 m", "Per metre of bench", "Per foot of bench", "Per plant")
                .contains("Per m² of floor", "Per square foot of floor", "Whole packs, to pay", "licensed engineer");
        String header = ran.outLines().stream()
                .filter(line -> line.startsWith("Group "))
                .findFirst()
                .orElseThrow();
        assertThat(header.indexOf("Two strips")).isPositive().isLessThan(header.indexOf("One emitter"));
        assertThat(ran.out()).doesNotContain("spare_");
    }

    @Test
    void columns_of_numbers_line_up() {
        List<String> lines = Ran.with("price", Ran.SAMPLE).outLines();
        int from = lines.indexOf("First cost per metre of bench, USD/m");
        List<String> rows = lines.subList(from, lines.indexOf("First cost")).stream()
                .filter(line ->
                        line.matches(".* +[0-9]+\\.[0-9]{2} +[0-9]+\\.[0-9]{2}$|.*[0-9]\\.[0-9]{2}( +[0-9.]+){2}$"))
                .toList();

        assertThat(rows).hasSizeGreaterThan(5);
        assertThat(rows.stream().map(String::length).distinct()).hasSize(1);
    }

    @Test
    void ten_ways_stay_within_a_hundred_columns_and_keep_their_whole_labels_in_both_tables() throws IOException {
        Path scenario = Ran.copy(folder);
        StringBuilder ways = new StringBuilder(Files.readString(scenario.resolve("irrigation.csv")));
        for (int i = 1; i <= 10; i++) {
            ways.append("way_").append(i).append(",Way number ").append(i).append(" with a long label,1,1,,0,\n");
        }
        Files.writeString(scenario.resolve("irrigation.csv"), ways);

        Ran ran = Ran.with("price", scenario);

        assertThat(ran.exit()).isZero();
        assertThat(ran.outLines()).allSatisfy(line -> assertThat(line.length()).isLessThanOrEqualTo(100));
        assertThat(ran.outLines().stream().filter(line -> line.startsWith("Total ")))
                .hasSizeGreaterThan(1);
        for (int i = 1; i <= 10; i++) {
            assertThat(ran.out()).containsPattern("Way number " + i + "\\b");
        }
        assertThat(ran.out().split("with a long", -1)).hasSize(2 * 10 + 1);
        assertThat(ran.out().split("label", -1)).hasSize(2 * 10 + 1);
    }

    @Test
    void csv_has_every_value_and_its_groups_sum_to_the_total() throws IOException {
        List<CSVRecord> records = csv("price", Ran.SAMPLE, "--csv");
        double perMetre = value(records, "first_cost_per_metre", "");

        assertThat(perMetre).isPositive();
        assertThat(sum(records, "group_first_cost_per_metre", "")).isCloseTo(perMetre, ROUNDING);
        assertThat(sum(records, "group_way_first_cost_per_metre", ";tape"))
                .isCloseTo(value(records, "way_first_cost_per_metre", "tape"), ROUNDING);
        assertThat(value(records, "exact_cost", "") + value(records, "leftover_value", ""))
                .isCloseTo(value(records, "purchase_cost", ""), ROUNDING);
        assertThat(value(records, "plant_spacing", "")).isEqualTo(6 * 0.0254);
    }

    @Test
    void csv_names_units_with_the_currency_and_prints_texts_as_texts() {
        assertThat(Ran.with("price", Ran.SAMPLE, "--csv").outLines())
                .startsWith("line,index,value,unit")
                .contains("bench_metres,,200,m", "irrigation_choice,,emitter,1", "material_price,tape,80,USD/pack");
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
                "item,pack,unit,price,price_year,source\ntape,500,m,50,2025,quotation\nheater,1,each,9,2025,\n");
        Ran ran = Ran.with("price", Ran.SAMPLE, "--csv", "--prices", prices);

        assertThat(ran.exit()).isZero();
        assertThat(ran.outLines())
                .contains("material_price,tape,50,USD/pack", "material_pack,tape,500,item/pack")
                .contains("material_price_year,tape,2025,1", "material_source,tape,quotation,1");
        assertThat(ran.errLines())
                .containsExactly("Note: prices.csv, row 3, column item: this scenario does not use \"heater\".");
    }

    @Test
    void groups_that_cost_nothing_are_left_out_and_that_is_said() {
        Ran ran = Ran.with("price", Ran.SAMPLE);

        assertThat(ran.outLines()).noneMatch(line -> line.startsWith("Other parts"));
        assertThat(ran.out()).contains("Without first cost: Other parts");
    }

    @Test
    void two_runs_print_the_same() {
        assertThat(Ran.with("price", Ran.SAMPLE, "--csv")).isEqualTo(Ran.with("price", Ran.SAMPLE, "--csv"));
    }
}
