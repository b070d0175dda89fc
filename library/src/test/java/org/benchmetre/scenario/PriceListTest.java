package org.benchmetre.scenario;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class PriceListTest {

    private static final String HEADER = "item,pack,unit,price,price_year,source,currency";

    @TempDir
    Path folder;

    private Input input;

    @BeforeEach
    void newInput() {
        input = new Input(folder);
    }

    private PriceList read(String... lines) {
        return PriceList.read(input.file("prices.csv", lines), input.faults());
    }

    @Test
    void prices_are_found_by_item() {
        PriceList list = read(HEADER, "Tape,500,m,42.5,2025,invented for the demo,eur", "pump,1,piece,0,2024,,");

        assertThat(list.prices().keySet()).containsExactly("tape", "pump");
        Price tape = list.prices().get("tape");
        assertThat(tape).isEqualTo(new Price("tape", 500, "m", 42.5, 2025, "invented for the demo", "EUR", tape.row()));
        assertThat(tape.row().rowNumber()).isEqualTo(2);
        assertThat(list.prices().get("pump").currency()).isEmpty();
        assertThat(input.messages()).isEmpty();
        assertThat(input.warnings()).isEmpty();
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
    void every_fault_of_every_row_is_told_and_such_rows_are_left_out() {
        PriceList list = read(
                HEADER, "tape,0,m,-1,25,,EURO", "tape,500,m,42.5,2025,,", "pump,1,,x,2025,,", "tank,1,piece,90,2025,,");

        assertThat(list.prices().keySet()).containsExactly("tank");
        assertThat(input.messages())
                .containsExactly(
                        "prices.csv, row 2, column pack: found \"0\", expected a number above 0 (units in a pack).",
                        "prices.csv, row 2, column price: found \"-1\", expected a number of at least 0 (money per pack).",
                        "prices.csv, row 2, column price_year: found \"25\", expected a year from 1990 to 2100.",
                        "prices.csv, row 2, column currency: found \"EURO\", expected an ISO 4217 currency code such as"
                                + " EUR.",
                        "prices.csv, row 3, column item: found \"tape\", which row 2 has already, expected each item once.",
                        "prices.csv, row 4, column unit: found nothing, expected text of at most 255 characters on one"
                                + " line, without any of * ? ~ < > = \".",
                        "prices.csv, row 4, column price: found \"x\", expected a number of at least 0 (money per pack).");
    }

    @Test
    void a_missing_price_list_is_one_fault() {
        assertThat(PriceList.read(folder.resolve("none.csv"), input.faults()).prices())
                .isEmpty();
        assertThat(input.messages()).containsExactly("none.csv: found no such file, expected a CSV file.");
    }
}
