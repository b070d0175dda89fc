package org.benchmetre.scenario;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.benchmetre.budget.Budget;
import org.benchmetre.budget.entry.Given;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class PriceLayerTest {

    private static final String HEADER = "item,pack,unit,price,price_year,source,currency";

    @TempDir
    Path folder;

    private Input input;

    @BeforeEach
    void newScenario() {
        input = new Input(folder);
        input.file("farm.csv", "line,value,unit", "plan_currency,EUR,1");
        input.file(
                "materials.csv",
                "item,unit,pack,price,price_year,salvage",
                "tape,m,500,80,2024,",
                "pump,piece,1,300,2024,40",
                "tank,piece,1,90,2024,");
        input.file("irrigation.csv", "way", "tape");
        input.file("plant_stock.csv", "stock", "tray");
    }

    private Optional<Budget> read(String... lines) {
        Path prices = folder.resolve("prices");
        prices.toFile().mkdir();
        Path list = new Input(prices).file("prices.csv", lines);
        return SmallFarm.READER.read(
                ScenarioFolder.open(folder, input.faults()),
                new ScenarioReader.Over(Optional.of(list), new Settings(List.of())),
                input.faults());
    }

    private static Given cell(Budget budget, String id, String row) {
        int index = budget.line(id).axes().get(0).indexOf(row);
        return budget.given(budget.line(id)).get(index);
    }

    @Test
    void prices_packs_years_and_sources_of_the_items_go_before_those_of_the_parts() {
        Budget budget = read(HEADER, "Tape,400,M,42.5,2025,a catalogue,eur", "pump,1,piece,100,2026,,")
                .orElseThrow();

        assertThat(cell(budget, "material_price", "tape").number()).isEqualTo(42.5);
        assertThat(cell(budget, "material_pack", "tape").number()).isEqualTo(400);
        assertThat(cell(budget, "material_price_year", "tape").number()).isEqualTo(2025);
        assertThat(cell(budget, "material_source", "tape").text()).isEqualTo("a catalogue");
        assertThat(cell(budget, "material_price", "tape").origin()).hasToString("prices.csv, row 2, column price");
        assertThat(cell(budget, "material_price", "tank").number()).isEqualTo(90);
        assertThat(input.messages()).isEmpty();
        assertThat(input.warnings()).isEmpty();
    }

    @Test
    void an_item_that_no_part_has_is_noted() {
        assertThat(read(HEADER, "hose,1,m,1,2025,,")).isPresent();
        assertThat(input.notes())
                .containsExactly("prices.csv, row 2, column item: this scenario does not use \"hose\".");
    }

    @Test
    void the_currency_column_may_be_left_out_and_unknown_columns_are_warned_about() {
        read("item,pack,unit,price,price_year,source,curency", "tape,500,m,42.5,2025,,EUR");

        assertThat(input.messages()).isEmpty();
        assertThat(input.warnings())
                .containsExactly(
                        "prices.csv, row 1, column curency: nothing reads this column; did you mean currency?");
    }

    @Test
    void every_fault_of_every_row_is_told() {
        assertThat(read(
                        HEADER,
                        "tape,0,m,-1,25,,USD",
                        "tape,500,m,42.5,2025,,",
                        "pump,,kg,x,2025,,",
                        "hose,1,m,-2,2025,,"))
                .isEmpty();
        assertThat(input.messages())
                .containsExactly(
                        "prices.csv, row 2, column currency: found \"USD\", expected the scenario's currency, EUR.",
                        "prices.csv, row 2, column pack: found \"0\", expected a number above 0 for Pack"
                                + " (material_pack[tape]).",
                        "prices.csv, row 2, column price: found \"-1\", expected a number of at least 0 for Price"
                                + " (material_price[tape]).",
                        "prices.csv, row 2, column price_year: found \"25\", expected a whole number from 1990 to 2100 for"
                                + " Price year (material_price_year[tape]).",
                        "prices.csv, row 3, column item: found \"tape\", which row 2 has already, expected each item once.",
                        "prices.csv, row 4, column unit: found \"kg\", expected the unit of this part in the scenario,"
                                + " \"piece\".",
                        "prices.csv, row 4, column pack: found nothing, expected Pack of \"pump\".",
                        "prices.csv, row 4, column price: found \"x\", expected a number of at least 0 for Price"
                                + " (material_price[pump]).",
                        "prices.csv, row 5, column price: found \"-2\", expected a number of at least 0 for Price"
                                + " (material_price[hose]).");
    }

    @Test
    void a_price_below_the_salvage_of_its_part_is_a_fault() {
        assertThat(read(HEADER, "pump,1,piece,30,2025,,")).isEmpty();
        assertThat(input.messages())
                .containsExactly(
                        "materials.csv, row 3, column salvage: found \"40\", expected at most Price, \"30\", for"
                                + " Salvage (material_salvage[pump]).");
    }

    @Test
    void a_missing_price_list_is_one_fault() {
        Faults faults = input.faults();
        Optional<Budget> budget = SmallFarm.READER.read(
                ScenarioFolder.open(folder, faults),
                new ScenarioReader.Over(Optional.of(folder.resolve("none.csv")), new Settings(List.of())),
                faults);
        assertThat(budget).isEmpty();
        assertThat(input.messages()).containsExactly("none.csv: found no such file, expected a CSV file.");
    }
}
