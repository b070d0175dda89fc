package org.benchmetre.batch;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class FaultsTest {

    @TempDir
    Path folder;

    @Test
    void ten_faults_are_told_at_once_and_nothing_is_written() {
        Path scenario = Ran.copy(folder);
        Path farm = scenario.resolve("farm.csv");
        Ran.replace(farm, "bench_count,12,bench", "bench_count,ten,bench");
        Ran.replace(farm, "bench_width,0.30,m", "bench_width,0.30,kg");
        Ran.replace(farm, "house_length,24,m", "house_lenght,24,m");
        Ran.replace(farm, "zone_count,2,zone", "zone_count,2.5,zone");
        Ran.replace(farm, "planting_pattern,staggered", "planting_pattern,zigzag");
        Path materials = scenario.resolve("materials.csv");
        Ran.replace(materials, "bench_metres,1,0.02,,m,3,22.50", "bench_meters,1,0.02,,m,3,22.50");
        Ran.replace(materials, "m,100,45.00", "m,100,cheap");
        Ran.replace(materials, "m,50,39.00", "m,-50,39.00");
        Path stock = scenario.resolve("plant_stock.csv");
        Ran.replace(stock, "Plugs,0.48", "Plugs,-0.48");
        Ran.replace(scenario.resolve("irrigation.csv"), "One emitter a plant,1,1", "One emitter a plant,many,1");
        Path target = folder.resolve("house.xlsx");

        Ran ran = Ran.with("workbook", scenario, "-o", target);

        assertThat(ran.exit()).isEqualTo(1);
        assertThat(ran.out()).isEmpty();
        assertThat(ran.errLines().stream().filter(line -> line.startsWith("Fault: ")))
                .hasSize(10)
                .allMatch(line -> line.contains(".csv, row ") && line.contains("found ") && line.contains("expected "));
        assertThat(ran.errLines()).last().isEqualTo("10 faults; nothing was written.");
        assertThat(ran.err()).contains("did you mean house_length");
        assertThat(target).doesNotExist();
    }

    @Test
    void one_fault_is_not_many() {
        Ran ran = Ran.with("price", Ran.SAMPLE, "--set", "bench_count=0");

        assertThat(ran.exit()).isEqualTo(1);
        assertThat(ran.errLines())
                .containsExactly(
                        "Fault: setting bench_count=0: found \"0 bench\", expected a whole number from 1 to 10000 bench for"
                                + " Benches (bench_count).",
                        "1 fault; nothing was written.");
    }

    @Test
    void a_missing_folder_is_a_fault() {
        Ran ran = Ran.with("check", folder.resolve("nowhere"));

        assertThat(ran.exit()).isEqualTo(1);
        assertThat(ran.errLines()).hasSize(2);
        assertThat(ran.err()).contains("no such folder", "1 fault; nothing was written.");
    }

    @ParameterizedTest
    @ValueSource(strings = {"farm.csv", "materials.csv", "irrigation.csv", "plant_stock.csv"})
    void a_missing_file_is_a_fault(String file) throws IOException {
        Path scenario = Ran.copy(folder);
        Files.delete(scenario.resolve(file));

        Ran ran = Ran.with("check", scenario);

        assertThat(ran.exit()).isEqualTo(1);
        assertThat(ran.err())
                .contains("Fault: " + file + ": found no such file")
                .endsWith("nothing was written.\n");
    }

    @Test
    void a_table_of_ways_without_rows_is_one_fault() throws IOException {
        Path scenario = Ran.copy(folder);
        Path ways = scenario.resolve("irrigation.csv");
        Files.writeString(ways, Files.readAllLines(ways).get(0) + "\n");
        Path materials = scenario.resolve("materials.csv");
        Files.write(
                materials,
                Files.readAllLines(materials).stream()
                        .filter(row -> !row.contains("Irrigation line"))
                        .toList());
        Ran.replace(scenario.resolve("farm.csv"), "irrigation_choice,emitter", "# irrigation_choice,emitter");

        Ran ran = Ran.with("check", scenario);

        assertThat(ran.exit()).isEqualTo(1);
        assertThat(ran.errLines().stream().filter(line -> line.startsWith("Fault: ")))
                .containsExactly(
                        "Fault: farm.csv: found nothing, expected a key of the table Irrigation system, which has"
                                + " no row, for Irrigation system (irrigation_choice).");
    }

    @Test
    void a_scenario_that_cannot_be_built_is_a_fault_not_a_crash() {
        Path scenario = Ran.copy(folder);
        Ran.replace(scenario.resolve("materials.csv"), "\npump,", "\nspare_1,");

        Ran ran = Ran.with("check", scenario);

        assertThat(ran.exit()).isEqualTo(1);
        assertThat(ran.err())
                .contains("spare_1")
                .endsWith("nothing was written.\n")
                .doesNotContain("\tat ");
    }

    @Test
    void a_missing_price_list_is_a_fault() {
        Ran ran = Ran.with("price", Ran.SAMPLE, "--prices", folder.resolve("none.csv"));

        assertThat(ran.exit()).isEqualTo(1);
        assertThat(ran.err()).contains("none.csv: found no such file");
    }

    @Test
    void an_unknown_line_is_a_fault_with_near_names() {
        Ran ran = Ran.with("explain", Ran.SAMPLE, "first_cost_per_metr");

        assertThat(ran.exit()).isEqualTo(1);
        assertThat(ran.err()).contains("did you mean first_cost_per_metre");
    }

    @Test
    void an_unknown_key_is_a_fault_with_near_names() {
        Ran ran = Ran.with("price", Ran.SAMPLE, "--set", "material_price[tapp]=1");

        assertThat(ran.exit()).isEqualTo(1);
        assertThat(ran.err()).contains("did you mean tape?");
    }

    @Test
    void a_figure_without_a_finite_value_is_a_fault_that_names_its_cause() {
        Ran ran =
                Ran.with("price", Ran.SAMPLE, "--set", "material_rate[tape]=1e308", "--set", "irrigation_choice=tape");

        assertThat(ran.exit()).isEqualTo(1);
        assertThat(ran.err())
                .contains("has no finite value: its formula")
                .contains("material_way_cost[tape;tape]")
                .contains("nothing was written.");
    }

    @Test
    void faults_do_not_leave_a_file_behind() {
        Path target = folder.resolve("house.xlsx");

        assertThat(Ran.with("workbook", Ran.SAMPLE, "-o", target, "--set", "bench_cuont=4")
                        .exit())
                .isEqualTo(1);
        assertThat(Files.exists(target)).isFalse();
    }

    @Test
    void a_plan_in_another_currency_than_its_prices_is_one_fault_with_the_rows() {
        Path scenario = Ran.copy(folder);
        Ran.replace(scenario.resolve("farm.csv"), "plan_currency,USD", "plan_currency,EUR");

        Ran ran = Ran.with("check", scenario);

        assertThat(ran.errLines()).hasSize(2);
        assertThat(ran.errLines().get(0))
                .startsWith("Fault: farm.csv, rows 8, 35, ")
                .endsWith("column unit: found money in USD, expected money in EUR, the currency of the plan.");
        assertThat(ran.errLines().get(1)).isEqualTo("1 fault; nothing was written.");
    }

    @Test
    void a_key_that_was_renamed_is_one_fault_for_all_that_name_it() {
        Path scenario = Ran.copy(folder);
        Ran.replace(scenario.resolve("irrigation.csv"), "\nemitter,", "\ndripper,");
        Ran.replace(scenario.resolve("farm.csv"), "irrigation_choice,emitter", "irrigation_choice,tape");

        Ran ran = Ran.with("check", scenario);

        assertThat(ran.errLines().stream().filter(line -> line.contains("column option")))
                .hasSize(1)
                .allMatch(line -> line.startsWith("Fault: materials.csv, rows "));
    }

    @ParameterizedTest
    @ValueSource(strings = {"materials.csv", "tasks.csv", "channels.csv", "months.csv", "stock_prices.csv"})
    void a_table_without_rows_has_no_unread_columns(String file) throws IOException {
        Path scenario = Ran.copy(folder);
        Path table = scenario.resolve(file);
        if (Files.exists(table)) {
            Files.write(
                    table,
                    Files.readAllLines(table).stream()
                            .filter(line -> !line.startsWith("#"))
                            .limit(1)
                            .toList());
        }

        assertThat(Ran.with("check", scenario).err())
                .doesNotContain(file + ", row 1")
                .doesNotContain("Fault: " + file);
    }

    @ParameterizedTest
    @ValueSource(strings = {"\u001b[31m", "\u0085", "\u202e", "\u2028"})
    void no_message_or_table_repeats_what_a_console_obeys(String sign) throws IOException {
        Path scenario = Ran.copy(folder);
        Files.writeString(scenario.resolve("notes" + sign + ".csv"), "a,b\n");
        Ran.replace(scenario.resolve("materials.csv"), "item,label,", "item,la" + sign + "bel,");
        Ran.replace(
                scenario.resolve("farm.csv"),
                "bench_count,12,bench,,,invented",
                "bench_count,12,bench,,,in" + sign + "vented");

        for (Ran ran : new Ran[] {
            Ran.with("check", scenario),
            Ran.with("check", scenario, "--set", "bench" + sign + "_count=1"),
            Ran.with("check", scenario, "--set", "bench_count=1" + sign),
            Ran.with("check", scenario, "--set", "material_price[ta" + sign + "pe]=1"),
            Ran.with("explain", scenario, "bench" + sign),
            Ran.with("explain", scenario, "bench_count"),
            Ran.with("price", folder.resolve("no" + sign + "where")),
            Ran.with("price", scenario, "--colour" + sign),
            Ran.with("pri" + sign + "ce", scenario),
            Ran.with("workbook", scenario, "-o", folder.resolve("house" + sign + ".csv")),
            Ran.with("start", folder.resolve("start" + sign))
        }) {
            assertThat(ran.out() + ran.err()).doesNotContain(sign);
        }
    }
}
