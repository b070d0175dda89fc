package org.benchmetre.batch;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.io.StringReader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class CompareCommandTest {

    private static final Path CONTAINERS = Ran.CONTAINERS;
    private static final String TROUGH = "trough-house";
    private static final String CONTAINER = "container-house";

    /** A sum of a few dozen amounts of some tens differs by rounding alone. */
    private static final Offset<Double> ROUNDING = within(1e-9);

    @TempDir
    Path folder;

    private static List<CSVRecord> csv(Object... arguments) throws IOException {
        List<Object> all = new ArrayList<>(List.of("compare", "--csv"));
        all.addAll(Arrays.asList(arguments));
        Ran ran = Ran.with(all.toArray());
        assertThat(ran.exit()).as(ran.err()).isZero();
        return CSVFormat.DEFAULT
                .builder()
                .setHeader()
                .setSkipHeaderRecord(true)
                .get()
                .parse(new StringReader(ran.out()))
                .getRecords();
    }

    private static CSVRecord row(List<CSVRecord> records, String scenario, String measure, String cause) {
        return records.stream()
                .filter(record -> record.get("scenario").equals(scenario)
                        && record.get("measure").equals(measure)
                        && record.get("cause").equals(cause))
                .findFirst()
                .orElseThrow();
    }

    private static double value(List<CSVRecord> records, String scenario, String measure, String cause) {
        return Double.parseDouble(row(records, scenario, measure, cause).get("value"));
    }

    private static double difference(List<CSVRecord> records, String measure, String cause) {
        return Double.parseDouble(row(records, CONTAINER, measure, cause).get("difference"));
    }

    private static void replaceWhereFound(Path file, String old, String with) throws IOException {
        Files.writeString(file, Files.readString(file).replace(old, with));
    }

    /** Rows of one scenario from receipts to the row before their sum. */
    private static List<CSVRecord> causes(List<CSVRecord> records, String scenario) {
        List<CSVRecord> own = records.stream()
                .filter(record -> record.get("scenario").equals(scenario))
                .toList();
        List<String> names = own.stream().map(record -> record.get("cause")).toList();
        return own.subList(names.indexOf("first_grade"), names.indexOf("sum"));
    }

    private static double sum(List<CSVRecord> records, String column) {
        return records.stream()
                .mapToDouble(record -> Double.parseDouble(record.get(column)))
                .sum();
    }

    @ParameterizedTest
    @ValueSource(strings = {"metre", "area"})
    void the_difference_in_what_is_left_is_the_sum_of_the_differences_of_its_causes(String per) throws IOException {
        List<CSVRecord> records = csv(Ran.SAMPLE, CONTAINERS, "--per", per);
        List<CSVRecord> causes = causes(records, CONTAINER);
        double more = value(records, CONTAINER, per, "left") - value(records, TROUGH, per, "left");

        assertThat(causes).hasSizeGreaterThan(10);
        assertThat(Math.abs(more)).isGreaterThan(0.01);
        assertThat(sum(causes, "difference")).isCloseTo(more, ROUNDING);
        assertThat(difference(records, per, "left")).isCloseTo(more, ROUNDING);
        assertThat(difference(records, per, "sum")).isCloseTo(more, ROUNDING);
        assertThat(value(records, CONTAINER, per, "left"))
                .isCloseTo(value(records, CONTAINER, per, "returns_above_total"), ROUNDING);
        assertThat(sum(causes, "value")).isCloseTo(value(records, CONTAINER, per, "left"), ROUNDING);
        assertThat(sum(causes(records, TROUGH), "value")).isCloseTo(value(records, TROUGH, per, "left"), ROUNDING);
    }

    @Test
    void sections_of_the_budget_add_up_to_what_is_left() throws IOException {
        List<CSVRecord> records = csv(Ran.SAMPLE, CONTAINERS);
        double receipts = difference(records, "area", "total_receipts");
        double operating = difference(records, "area", "total_operating");
        double ownership = difference(records, "area", "total_ownership");
        double overhead = difference(records, "area", "total_overhead");

        assertThat(receipts).isPositive();
        assertThat(ownership).isNotZero();
        assertThat(receipts + operating + ownership + overhead)
                .isCloseTo(difference(records, "area", "left"), ROUNDING);
    }

    @Test
    void factors_of_receipts_are_changed_in_order_plants_fruit_price() throws IOException {
        List<CSVRecord> records = csv(Ran.SAMPLE, CONTAINERS);
        double plants = value(records, TROUGH, "area", "plant_density");
        double fruit = value(records, TROUGH, "area", "fruit_per_plant");
        double price = value(records, TROUGH, "area", "price");
        double otherPlants = value(records, CONTAINER, "area", "plant_density");
        double otherFruit = value(records, CONTAINER, "area", "fruit_per_plant");

        assertThat(plants * fruit * price).isCloseTo(value(records, TROUGH, "area", "total_receipts"), ROUNDING);
        assertThat(plants).isCloseTo(12 * 174 / (24 * 9.6), ROUNDING);
        assertThat(difference(records, "area", "receipts_by_plant_density"))
                .isCloseTo((otherPlants - plants) * fruit * price, ROUNDING);
        assertThat(difference(records, "area", "receipts_by_fruit_per_plant"))
                .isCloseTo(otherPlants * (otherFruit - fruit) * price, ROUNDING);
    }

    @Test
    void a_row_that_one_scenario_does_not_have_counts_nothing_there() throws IOException {
        List<CSVRecord> records = csv(Ran.SAMPLE, CONTAINERS);

        assertThat(value(records, TROUGH, "area", "own_containers")).isZero();
        assertThat(value(records, CONTAINER, "area", "own_containers")).isNegative();
        assertThat(value(records, CONTAINER, "area", "used_up_mulch")).isZero();
        assertThat(difference(records, "area", "used_up_mulch")).isPositive();
    }

    @Test
    void results_are_those_of_each_scenario_alone() throws IOException {
        List<CSVRecord> records = csv(Ran.SAMPLE, CONTAINERS);
        List<String> alone = Ran.with("price", CONTAINERS, "--csv").outLines();

        for (String result : List.of("first_cost", "yearly_cost", "returns_above_total")) {
            CSVRecord row = row(records, CONTAINER, "plant", result);
            assertThat(alone).contains(result + "_per_plant,," + row.get("value") + "," + row.get("unit"));
        }
    }

    @Test
    void a_scenario_against_itself_differs_nowhere() throws IOException {
        List<CSVRecord> records = csv(Ran.SAMPLE, Ran.SAMPLE);

        assertThat(records.stream().map(record -> record.get("scenario")).distinct())
                .containsExactly(TROUGH, TROUGH + " (2)");
        assertThat(records)
                .hasSizeGreaterThan(60)
                .allSatisfy(record -> assertThat(record.get("difference"))
                        .as(record.toString())
                        .isEqualTo("0"));
        assertThat(Ran.with("compare", Ran.SAMPLE, Ran.SAMPLE).out()).contains("are as much as in " + TROUGH);
    }

    @Test
    void the_report_says_what_they_are_and_where_the_difference_comes_from() {
        Ran ran = Ran.with("compare", Ran.SAMPLE, CONTAINERS);

        assertThat(ran.exit()).as(ran.err()).isZero();
        assertThat(ran.outLines())
                .startsWith("Comparison: Which returns more, and where does the difference come from?")
                .anyMatch(line -> line.startsWith("In container-house, returns above total cost are "));
        assertThat(ran.out())
                .containsPattern("(?m)^Plants.* +2,088 +2,496$")
                .containsPattern("(?m)^Plant stock +Tray plants +Plugs$")
                .contains("money in USD", "In short, per m² of floor", "Sum of all rows", "Plants per m² of floor")
                .containsPattern("(?m)^Containers +– +-[0-9]+\\.[0-9]{2} +-[0-9]+\\.[0-9]{2}$")
                .contains("Largest differences in cost: ", "Cautions (in full: --cautions): ");
        assertThat(Ran.with("compare", Ran.SAMPLE, CONTAINERS, "--cautions").out())
                .contains("licensed engineer");
    }

    @Test
    void three_scenarios_stay_within_a_hundred_columns() {
        Ran ran = Ran.with("compare", Ran.SAMPLE, CONTAINERS, Ran.SAMPLE, "--per", "kg");

        assertThat(ran.outLines())
                .hasSizeGreaterThan(60)
                .allSatisfy(line -> assertThat(line.length()).isLessThanOrEqualTo(100));
        assertThat(ran.out()).contains("In trough-house (2), returns above total cost are as much as in trough-house");
    }

    @Test
    void a_missing_folder_and_the_faults_of_the_other_scenario_are_told_at_once() {
        Ran ran = Ran.with("compare", folder.resolve("nowhere"), CONTAINERS, "--set", "mulch_width=1m");

        assertThat(ran.exit()).isEqualTo(1);
        assertThat(ran.out()).isEmpty();
        assertThat(ran.err())
                .contains("Fault: " + folder.resolve("nowhere") + ": found no such folder")
                .contains("Fault: container-house, setting mulch_width=1m: found \"mulch_width\"");
    }

    @Test
    void a_setting_that_one_scenario_cannot_take_is_a_fault_that_names_the_scenario() {
        Ran ran = Ran.with("compare", Ran.SAMPLE, CONTAINERS, "--set", "material_price[root_barrier]=1");

        assertThat(ran.exit()).isEqualTo(1);
        assertThat(ran.errLines())
                .hasSize(2)
                .first()
                .asString()
                .startsWith("Fault: container-house, setting material_price[root_barrier]=1: found \"root_barrier\"");
    }

    @Test
    void a_setting_that_does_not_follow_the_form_is_wrong_usage() {
        assertThat(Ran.with("compare", Ran.SAMPLE, CONTAINERS, "--set", "mulch").exit())
                .isEqualTo(2);
    }

    @Test
    void a_number_without_a_unit_that_would_be_metres_here_and_feet_there_is_a_fault() {
        Ran ran = Ran.with("compare", Ran.SAMPLE, CONTAINERS, "--set", "house_length=20");

        assertThat(ran.exit()).isEqualTo(1);
        assertThat(ran.errLines())
                .contains("Fault: setting house_length=20: found \"20\", expected a unit behind it, for it is in m in"
                        + " trough-house and ft in container-house.");
        assertThat(Ran.with("compare", Ran.SAMPLE, CONTAINERS, "--set", "house_length=25m")
                        .exit())
                .isZero();
    }

    @Test
    void faults_of_a_file_name_scenario_and_file() {
        Path scenario = Ran.copy(folder);
        Ran.replace(scenario.resolve("farm.csv"), "bench_count,12,bench", "bench_count,ten,bench");

        Ran ran = Ran.with("compare", CONTAINERS, scenario);

        assertThat(ran.exit()).isEqualTo(1);
        assertThat(ran.err()).containsPattern("Fault: scenario, farm.csv, row [0-9]+, column value: found \"ten\"");
    }

    @Test
    void another_currency_is_a_fault_that_names_the_scenario() throws IOException {
        Path scenario = Ran.copy(folder);
        for (String file : List.of("farm.csv", "tasks.csv")) {
            replaceWhereFound(scenario.resolve(file), "USD", "EUR");
        }

        Ran ran = Ran.with("compare", CONTAINERS, scenario);

        assertThat(ran.exit()).isEqualTo(1);
        assertThat(ran.out()).isEmpty();
        assertThat(ran.errLines())
                .contains(
                        "Fault: scenario: found money in EUR, expected USD as in container-house.",
                        "1 fault; nothing was written.");
    }

    @Test
    void a_plan_of_another_year_is_a_warning() {
        Path scenario = Ran.copy(folder);
        Ran.replace(scenario.resolve("farm.csv"), "plan_year,2026", "plan_year,2027");

        Ran ran = Ran.with("compare", Ran.SAMPLE, scenario);

        assertThat(ran.exit()).isZero();
        assertThat(ran.errLines())
                .contains("Warning: scenario: the plan is of 2027 and that of trough-house of 2026; no price is"
                        + " indexed.");
    }

    @Test
    void results_per_kg_need_fruit() {
        Ran ran = Ran.with("compare", Ran.SAMPLE, CONTAINERS, "--per", "kg", "--set", "marketable_share=0%");

        assertThat(ran.exit()).isEqualTo(1);
        assertThat(ran.err())
                .contains("Fault: trough-house: found nothing to divide by")
                .contains("2 faults; nothing was written.");
    }

    @Test
    void results_without_fruit_show_the_reason_and_no_difference() throws IOException {
        CSVRecord returns = row(
                csv(Ran.SAMPLE, CONTAINERS, "--set", "marketable_share=0%"), CONTAINER, "kg", "returns_above_total");

        assertThat(returns.get("value")).isEqualTo("no yield");
        assertThat(returns.get("difference")).isEmpty();
    }

    @Test
    void a_comparison_is_written_as_a_workbook_that_replaces_nothing_unasked() throws IOException {
        Path target = folder.resolve("two.xlsx");

        Ran ran = Ran.with("compare", Ran.SAMPLE, CONTAINERS, "-o", target);
        assertThat(ran.exit()).as(ran.err()).isZero();
        assertThat(ran.out()).isEqualTo("Wrote " + target + ".\n");
        assertThat(Files.readAllBytes(target)).startsWith('P', 'K');

        Files.writeString(target, "mine");
        Ran refused = Ran.with("compare", Ran.SAMPLE, CONTAINERS, "-o", target);
        assertThat(refused.exit()).isEqualTo(3);
        assertThat(refused.err()).contains("exists and is left as it is");
        assertThat(target).hasContent("mine");
        assertThat(Ran.with("compare", Ran.SAMPLE, CONTAINERS, "-o", target, "--overwrite")
                        .exit())
                .isZero();
        assertThat(Files.readAllBytes(target)).startsWith('P', 'K');
    }

    @Test
    void a_difference_is_explained_down_to_the_figures_of_the_scenarios() {
        Ran ran = Ran.with(
                "compare", Ran.SAMPLE, CONTAINERS, "--explain", "cause_difference[used_up_mulch;container_house]");

        assertThat(ran.exit()).as(ran.err()).isZero();
        assertThat(ran.outLines())
                .first()
                .asString()
                .startsWith("More than in the first (cause_difference[used_up_mulch;container_house]) = 0.0");
        assertThat(ran.out())
                .contains(
                        "(house_area[trough_house]) = 230.4 m²",
                        "entry, trough-house, budget_value[used_up_mulch]; source: a figure of this scenario",
                        "blank entry, container-house, no such row");
        assertThat(ran.outLines()).allSatisfy(line -> assertThat(line.length()).isLessThanOrEqualTo(100));
    }

    @Test
    void an_unknown_address_is_a_fault_with_near_names_and_one_out_of_form_wrong_usage() {
        Ran unknown = Ran.with("compare", Ran.SAMPLE, CONTAINERS, "--explain", "left_difference[container-house]");

        assertThat(unknown.exit()).isEqualTo(1);
        assertThat(unknown.err()).contains("did you mean container_house?");
        assertThat(Ran.with("compare", Ran.SAMPLE, CONTAINERS, "--explain", "left difference")
                        .exit())
                .isEqualTo(2);
    }

    @Test
    void report_csv_workbook_and_explanation_exclude_one_another() {
        Path target = folder.resolve("two.xlsx");

        assertThat(Ran.with("compare", Ran.SAMPLE, CONTAINERS, "--csv", "-o", target)
                        .exit())
                .isEqualTo(2);
        assertThat(Ran.with("compare", Ran.SAMPLE, CONTAINERS, "--csv", "--explain", "left_difference")
                        .exit())
                .isEqualTo(2);
        assertThat(Ran.with("compare", Ran.SAMPLE, CONTAINERS, "--overwrite").exit())
                .isEqualTo(2);
        assertThat(target).doesNotExist();
    }

    @Test
    void one_scenario_or_another_measure_is_wrong_usage() {
        assertThat(Ran.with("compare", Ran.SAMPLE).exit()).isEqualTo(2);
        Ran acre = Ran.with("compare", Ran.SAMPLE, CONTAINERS, "--per", "acre");
        assertThat(acre.exit()).isEqualTo(2);
        assertThat(acre.err()).contains("expected one of [metre, plant, area, kg] but was 'acre'");
    }
}
