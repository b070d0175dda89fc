package org.benchmetre.scenario;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class CsvTableTest {

    @TempDir
    Path folder;

    private Input input;

    @BeforeEach
    void newInput() {
        input = new Input(folder);
    }

    @Test
    void cells_are_found_by_column_name_trimmed_and_folded_to_lower_case() {
        CsvTable table = input.table(" Item ,PRICE", " tape , 2.50 ");

        assertThat(table.file()).isEqualTo("parts.csv");
        assertThat(table.isReadable()).isTrue();
        assertThat(table.hasColumn("item")).isTrue();
        assertThat(table.hasColumn("pack")).isFalse();
        assertThat(table.rows()).hasSize(1);
        assertThat(table.rows().get(0).text("item")).isEqualTo("tape");
        assertThat(table.rows().get(0).text("price")).isEqualTo("2.50");
        assertThat(table.rows().get(0).text("pack")).isEmpty();
        assertThat(input.messages()).isEmpty();
    }

    @ParameterizedTest
    @ValueSource(strings = {"tr-TR", "lt-LT", "ar-EG", "hi-IN-u-nu-deva", "de-DE"})
    void no_default_locale_changes_what_is_read_or_said(String tag) {
        Locale before = Locale.getDefault();
        Locale.setDefault(Locale.forLanguageTag(tag));
        try {
            Row row = input.table("ITEM,PRICE_INFO", "TITLE_I,1234567.5").rows().get(0);

            assertThat(row.key("item", input.faults())).isEqualTo("title_i");
            assertThat(row.text("price_info")).isEqualTo("1234567.5");
            row.key("price_info", input.faults());
            assertThat(input.messages()).hasSize(1);
            assertThat(input.messages().get(0))
                    .startsWith("parts.csv, row 2, column price_info: found \"1234567.5\", expected a key:");
        } finally {
            Locale.setDefault(before);
        }
    }

    @Test
    void a_byte_order_mark_is_no_part_of_the_first_name() {
        assertThat(input.table("\uFEFFitem,price", "tape,1").hasColumn("item")).isTrue();
        assertThat(input.messages()).isEmpty();
    }

    @Test
    void rows_keep_the_numbers_a_spreadsheet_program_shows() {
        CsvTable table = input.table(
                "# an invented scenario", // 1
                "", // 2
                "item,source", // 3
                "tape,\"a catalogue,", // 4
                "page 3,", // 4 still
                "\"\"new\"\" edition\"", // 4 still
                "", // 5
                " , ", // 6
                "# emitters,\"by the hundred\"", // 7
                "emitter,x"); // 8

        assertThat(table.rows()).extracting(Row::rowNumber).containsExactly(4, 8);
        assertThat(table.rows().get(0).text("source")).isEqualTo("a catalogue,\npage 3,\n\"new\" edition");
        assertThat(table.rows().get(1).place("source")).hasToString("parts.csv, row 8, column source");
        assertThat(input.messages()).isEmpty();
    }

    @ParameterizedTest
    @ValueSource(strings = {"\n", "\r\n", "\r"})
    void all_line_ends_are_understood(String end) {
        byte[] bytes = ("item,price" + end + "tape,1" + end + end + "pump,2").getBytes(StandardCharsets.UTF_8);
        CsvTable table = CsvTable.read(input.file("parts.csv", bytes), input.faults());

        assertThat(table.rows()).extracting(Row::rowNumber).containsExactly(2, 4);
        assertThat(table.rows().get(1).text("price")).isEqualTo("2");
    }

    @Test
    void short_rows_end_in_blank_cells() {
        Row row = input.table("item,price,source", "tape").rows().get(0);

        assertThat(row.text("source")).isEmpty();
        assertThat(row.isBlank("price")).isTrue();
        assertThat(input.messages()).isEmpty();
    }

    @Test
    void a_row_with_too_many_fields_is_a_fault_and_only_it_is_left_out() {
        CsvTable table = input.table("item,price", "tape,0,12", "pump,3", ",,,,");

        assertThat(table.rows()).extracting(Row::rowNumber).containsExactly(3);
        assertThat(table.isReadable()).isTrue();
        assertThat(table.isComplete()).isFalse();
        assertThat(input.messages())
                .containsExactly("parts.csv, row 2: found 3 fields, expected at most 2, one for each column name.");
    }

    @Test
    void a_semicolon_file_has_decimal_commas_and_a_note_says_so() {
        CsvTable table = input.table("# prices, of the year, invented", "item;price", "tape;2,5");

        assertThat(table.rows().get(0).text("price")).isEqualTo("2,5");
        assertThat(table.rows().get(0).decimalComma()).isTrue();
        assertThat(input.messages()).isEmpty();
        assertThat(input.notes())
                .containsExactly("parts.csv: columns are separated by semicolons, so numbers are read with a decimal"
                        + " comma, such as 1,5.");
    }

    @Test
    void a_comma_file_may_have_semicolons_in_its_cells() {
        CsvTable table = input.table("item,\"a;b;c\"", "tape,x;y;z");

        assertThat(table.rows().get(0).text("a;b;c")).isEqualTo("x;y;z");
        assertThat(input.notes()).isEmpty();
    }

    @Test
    void a_column_name_that_stands_twice_is_a_fault_and_the_first_column_counts() {
        CsvTable table = input.table("item,price,Price", "tape,1,2");

        assertThat(table.rows().get(0).text("price")).isEqualTo("1");
        assertThat(table.isComplete()).isTrue();
        assertThat(input.messages())
                .containsExactly("parts.csv, row 1, column price: found this name for field 2 and again for field 3,"
                        + " expected each column name once.");
    }

    @Test
    void a_column_with_text_but_no_name_is_a_fault_and_a_blank_one_is_not() {
        input.table("item,,", "tape,,", "pump,1");

        assertThat(input.messages())
                .containsExactly("parts.csv, row 1: found no name for field 2, which has text below, expected a column"
                        + " name above every field in use.");
    }

    @Test
    void columns_that_nothing_reads_are_warned_about_with_the_nearest_name_that_is_read() {
        CsvTable table = input.table("item,prise,zebra,source", "tape,1,2,3");
        table.warnOfOthers(List.of("item", "price", "source"), input.faults());

        assertThat(input.warnings())
                .containsExactly(
                        "parts.csv, row 1, column prise: nothing reads this column; did you mean price?",
                        "parts.csv, row 1, column zebra: nothing reads this column.");
        assertThat(input.messages()).isEmpty();
    }
}
