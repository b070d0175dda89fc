package org.benchmetre.scenario;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ScenarioFolderTest {

    @TempDir
    Path parent;

    private Path folder;
    private Input input;

    @BeforeEach
    void newFolder() throws IOException {
        folder = Files.createDirectory(parent.resolve("trough_house"));
        input = new Input(folder);
    }

    private void complete() {
        ScenarioFolder.REQUIRED.forEach(file -> input.file(file, "item,price", "tape,1"));
    }

    private ScenarioFolder open() {
        return ScenarioFolder.open(folder, input.faults());
    }

    @Test
    void a_complete_folder_gives_its_tables_by_name() {
        complete();
        input.file("channels.csv", "item,price", "a,1", "b,2");
        ScenarioFolder scenario = open();

        assertThat(scenario.name()).isEqualTo("trough_house");
        assertThat(scenario.table("farm.csv").rows()).hasSize(1);
        assertThat(scenario.table("channels.csv").rows()).hasSize(2);
        assertThat(scenario.has("channels.csv")).isTrue();
        assertThat(scenario.has("tasks.csv")).isFalse();
        assertThat(scenario.table("tasks.csv").isReadable()).isFalse();
        assertThat(scenario.table("tasks.csv").requireColumns("task")).isFalse();
        assertThat(input.faults().report()).isEmpty();
    }

    @Test
    void each_missing_required_file_is_a_fault() {
        complete();
        delete("farm.csv");
        delete("irrigation.csv");
        ScenarioFolder scenario = open();

        assertThat(scenario.table("farm.csv").isReadable()).isFalse();
        assertThat(scenario.table("farm.csv").rows()).isEmpty();
        scenario.table("farm.csv").requireColumns("line");
        assertThat(input.messages())
                .containsExactly(
                        "farm.csv: found no such file in the folder trough_house, expected a file of this name in every"
                                + " scenario.",
                        "irrigation.csv: found no such file in the folder trough_house, expected a file of this name in"
                                + " every scenario.");
    }

    private void delete(String file) {
        assertThat(folder.resolve(file).toFile().delete()).isTrue();
    }

    @Test
    void other_csv_files_are_warned_about_and_all_else_is_left_alone() throws IOException {
        complete();
        input.file("Task.CSV", "x");
        input.file("zebra.csv", new byte[] {(byte) 0xFF});
        input.file("README.md", "read me");
        input.file("sources.txt", "sources");
        input.file(".hidden.csv", "x");
        input.file("budget.xlsx", "x");
        Files.createDirectory(folder.resolve("old.csv"));
        open();

        assertThat(input.messages()).isEmpty();
        assertThat(input.warnings())
                .containsExactly(
                        "Task.CSV: nothing reads this file; did you mean tasks.csv or cash.csv?",
                        "zebra.csv: nothing reads this file.");
    }

    @Test
    void a_missing_folder_is_one_fault_and_its_tables_are_empty() {
        folder = parent.resolve("no_house");
        ScenarioFolder scenario = open();

        assertThat(scenario.name()).isEqualTo("no_house");
        assertThat(scenario.table("materials.csv").requireColumns("item")).isFalse();
        assertThat(scenario.table("materials.csv").rows()).isEmpty();
        assertThat(input.messages())
                .containsExactly(
                        folder + ": found no such folder, expected a scenario folder with farm.csv, materials.csv,"
                                + " irrigation.csv and plant_stock.csv.");
    }

    @Test
    void a_file_in_place_of_the_folder_is_one_fault() {
        folder = input.file("farm.csv", "line,value,unit");
        open();

        assertThat(input.messages()).hasSize(1);
        assertThat(input.messages().get(0)).contains("found a file, expected a scenario folder with");
    }

    @Test
    void asking_for_a_file_that_no_scenario_has_is_a_wrong_call() {
        complete();
        ScenarioFolder scenario = open();

        assertThatThrownBy(() -> scenario.table("zebra.csv"))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageStartingWith("Scenarios have no file 'zebra.csv'; they have farm.csv, materials.csv,");
    }
}
