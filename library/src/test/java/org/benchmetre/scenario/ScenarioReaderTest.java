package org.benchmetre.scenario;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.benchmetre.budget.Budget;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.entry.Given;
import org.benchmetre.budget.entry.Plausible;
import org.benchmetre.budget.unit.Unit;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ScenarioReaderTest {

    private static final String HEADER = "line,value,unit,low,high,source";
    private static final String PARTS = "item,unit,pack,price,price_year,salvage,source";

    @TempDir
    Path folder;

    private Input input;

    @BeforeEach
    void newScenario() {
        input = new Input(folder);
        input.file("farm.csv", HEADER);
        input.file("materials.csv", PARTS, "tape,m,500,80,2025,,a catalogue");
        input.file("irrigation.csv", "way", "tape");
        input.file("plant_stock.csv", "stock", "tray");
    }

    private Optional<Budget> read(String... settings) {
        return SmallFarm.READER.read(
                ScenarioFolder.open(folder, input.faults()),
                new ScenarioReader.Over(Optional.empty(), Settings.parse(List.of(settings))),
                input.faults());
    }

    private Given cell(Budget budget, String id) {
        return budget.given(budget.line(id)).get(0);
    }

    @Test
    void a_row_of_the_single_values_is_kept_as_typed_with_its_range_source_and_place() {
        input.file("farm.csv", HEADER, " Bench_Length ,30,ft,20,50,invented for the demo");

        Given length = cell(read().orElseThrow(), "bench_length");

        assertThat(length.number()).isEqualTo(30 * 0.3048);
        assertThat(length.typed()).isEqualTo(30);
        assertThat(length.typedIn()).isEqualTo(Unit.parse("ft"));
        assertThat(length.range()).isEqualTo(new Plausible(20 * 0.3048, Double.NaN, 50 * 0.3048));
        assertThat(length.source()).isEqualTo("invented for the demo");
        assertThat(length.origin()).hasToString("farm.csv, row 2, column value");
        assertThat(input.messages()).isEmpty();
    }

    @Test
    void what_is_left_out_takes_the_documented_default() {
        Given count = cell(read().orElseThrow(), "bench_count");

        assertThat(count.number()).isEqualTo(4);
        assertThat(count.origin()).hasToString("");
    }

    @Test
    void a_cell_of_a_table_may_be_named_among_the_single_values_and_goes_before_the_table() {
        input.file("farm.csv", HEADER, "material_price[Tape],90,,,,an offer");

        Given price = cell(read().orElseThrow(), "material_price");

        assertThat(price.number()).isEqualTo(90);
        assertThat(price.source()).isEqualTo("an offer");
    }

    @Test
    void a_line_that_stands_twice_a_row_without_one_and_an_unknown_one_are_faults() {
        input.file("farm.csv", HEADER, "bench_count,10,1", "# note", "BENCH_COUNT,12,1", ",5,m", "bench_cuont,1,1");

        assertThat(read()).isEmpty();
        assertThat(input.messages())
                .containsExactly(
                        "farm.csv, row 4, column line: found \"bench_count\", which row 2 has already, expected each line"
                                + " once.",
                        "farm.csv, row 5, column line: found nothing, expected the name of a line.",
                        "farm.csv, row 6, column line: found \"bench_cuont\", expected the name of a line; did you mean"
                                + " bench_count?");
    }

    @Test
    void low_high_and_source_may_be_left_out_but_not_the_unit() {
        input.file("farm.csv", "line,value,unit", "bench_count,10,1");
        assertThat(read()).isPresent();

        input.file("farm.csv", "line,value", "bench_count,10");
        assertThat(read()).isEmpty();
        assertThat(input.messages())
                .containsExactly(
                        "farm.csv, row 1: found no column \"unit\", expected a header with \"line\", \"value\" and"
                                + " \"unit\" (it has \"line\" and \"value\").");
    }

    @Test
    void the_same_wrong_value_is_refused_in_the_same_words_in_a_file_and_in_a_setting() {
        input.file("farm.csv", HEADER, "bench_length,-5,m");
        read("bench_length=-5 m");

        assertThat(input.messages())
                .containsExactly(
                        "farm.csv, row 2, column value: found \"-5 m\", expected a number above 0 and of at most 500 m"
                                + " for Length (bench_length).",
                        "setting bench_length=-5 m: found \"-5 m\", expected a number above 0 and of at most 500 m"
                                + " for Length (bench_length).");
    }

    @Test
    void rules_between_cells_hold_for_files_and_settings_alike() {
        read("material_salvage[tape]=1000");
        input.file("materials.csv", PARTS, "tape,m,500,80,2025,1000,a catalogue");
        read();

        assertThat(input.messages())
                .containsExactly(
                        "materials.csv, row 2, column salvage: found \"1000\", expected at most Price, \"80\", for Salvage"
                                + " (material_salvage[tape]).",
                        "setting material_salvage[tape]=1000: found \"1000\", expected at most Price, \"80\", for Salvage"
                                + " (material_salvage[tape]).");
    }

    @Test
    void settings_that_name_no_entry_or_one_twice_are_faults_all_at_once() {
        assertThat(read("bench_length=1", "bench_length=2", "bench_twice=3", "material_price[tope]=1", "zebra_x=1"))
                .isEmpty();
        assertThat(input.messages())
                .containsExactlyInAnyOrder(
                        "setting bench_length=2: found a second value for bench_length, expected each entry set once.",
                        "setting bench_twice=3: found \"bench_twice\", expected an entry; Twice follows from a formula.",
                        "setting material_price[tope]=1: found \"tope\", expected a key of material; did you mean tape?",
                        "setting zebra_x=1: found \"zebra_x\", expected the name of a line: bench_length, bench_count,"
                                + " bench_twice, material_item, material_pack, material_price, material_price_year,"
                                + " material_salvage, material_unit, material_source.");
    }

    @Test
    void ten_faults_in_one_folder_are_ten_faults_and_none_hides_another() {
        input.file(
                "farm.csv", "line,value,unit", "bench_count,ten,1", "bench_length,30,m", "bench_length,31,m", ",5,m");
        input.file(
                "materials.csv",
                "item,price,price_year,price",
                "tape,-1,2025",
                "drip pump,NaN,2025",
                "tank,1,24",
                "tank,1,2025,4,5");
        input.file("irrigation.csv", "way;flow", "\"tape;1,5");
        input.file("months.csv", "m\u00e4rz".getBytes(StandardCharsets.ISO_8859_1));

        assertThat(read()).isEmpty();
        assertThat(input.faults().faults())
                .extracting(fault -> fault.place().toString())
                .isEqualTo(List.of(
                        "farm.csv, row 2, column value",
                        "farm.csv, row 4, column line",
                        "farm.csv, row 5, column line",
                        "irrigation.csv, row 2",
                        "materials.csv, row 1, column price",
                        "materials.csv, row 2, column price",
                        "materials.csv, row 3, column item",
                        "materials.csv, row 4, column price_year",
                        "materials.csv, row 5",
                        "months.csv"));
    }

    @Test
    void a_column_that_no_entry_is_kept_in_is_warned_about_and_an_empty_table_is_not() {
        input.file("materials.csv", "item,prise,price,zebra");
        read();
        assertThat(input.warnings())
                .containsExactly(
                        "materials.csv, row 1, column prise: nothing reads this column; did you mean price?",
                        "materials.csv, row 1, column zebra: nothing reads this column.");
    }

    @Test
    void a_table_that_is_too_long_is_one_fault() {
        String[] lines = new String[52];
        lines[0] = "item,price";
        for (int i = 1; i < lines.length; i++) {
            lines[i] = "part_" + i + ",x";
        }
        input.file("materials.csv", lines);

        assertThat(read()).isEmpty();
        assertThat(input.messages())
                .containsExactly("materials.csv: found 51 rows, expected at most 50, for each row is worked out in many"
                        + " tables.");
    }

    @Test
    void money_that_is_none_and_a_title_that_is_too_long_are_faults() {
        for (String code : List.of("XXX", "XTS", "XAU", "DEM", "usd", "dollar")) {
            input.file("farm.csv", HEADER, "plan_currency," + code + ",,,,", "plan_title," + "t".repeat(251) + ",,,,");
            input = new Input(folder);
            assertThat(read()).isEmpty();
            assertThat(input.messages()).hasSize(2);
            assertThat(input.messages().get(0)).contains("\"" + code + "\", expected an ISO 4217 code in capitals");
        }
    }

    @Test
    void lines_of_the_heading_are_read() {
        input.file("farm.csv", HEADER, "plan_currency,JPY,,,,", "plan_title,A house,,,,");
        Budget budget = read().orElseThrow();
        assertThat(budget.currency()).isEqualTo("JPY");
        assertThat(budget.title()).isEqualTo("A house");
        Line length = budget.line("bench_length");
        assertThat(budget.usual(length, 0).number()).isEqualTo(20);
    }
}
