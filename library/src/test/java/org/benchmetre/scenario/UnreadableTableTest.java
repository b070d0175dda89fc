package org.benchmetre.scenario;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.RandomAccessFile;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** An unreadable file is one fault, has no rows and adds no others. */
class UnreadableTableTest {

    private static final String UTF_8_WANTED = ", expected a text file in UTF-8 (the file may be in Windows-1252 or"
            + " UTF-16; save it again as CSV with the encoding UTF-8).";

    @TempDir
    Path folder;

    private Input input;

    @BeforeEach
    void newInput() {
        input = new Input(folder);
    }

    private void assertUnreadable(CsvTable table, String message) {
        assertThat(table.requireColumns("item", "price")).isFalse();
        assertThat(table.isReadable()).isFalse();
        assertThat(table.isComplete()).isFalse();
        assertThat(table.rows()).isEmpty();
        assertThat(input.messages()).containsExactly(message);
    }

    private CsvTable read(byte[] bytes) {
        return CsvTable.read(input.file("parts.csv", bytes), input.faults());
    }

    @Test
    void a_file_in_another_encoding_names_the_byte_and_its_line() {
        byte[] bytes = "item,price\r\ntape,1\r\nr\u00f6hre,2\r\n".getBytes(Charset.forName("windows-1252"));

        assertUnreadable(
                read(bytes), "parts.csv: found the byte 0xF6 in line 3, which is not UTF-8 text" + UTF_8_WANTED);
    }

    @Test
    void lines_are_counted_whatever_their_end() {
        assertUnreadable(
                read(new byte[] {'a', '\r', 'b', '\r', '\n', 'c', '\n', (byte) 0xFF}),
                "parts.csv: found the byte 0xFF in line 4, which is not UTF-8 text" + UTF_8_WANTED);
    }

    @Test
    void a_file_that_ends_within_a_character_is_not_utf_8() {
        assertUnreadable(
                read(new byte[] {'i', 't', 'e', 'm', '\n', (byte) 0xE2, (byte) 0x82}),
                "parts.csv: found the byte 0xE2 in line 2, which is not UTF-8 text" + UTF_8_WANTED);
    }

    @Test
    void utf_16_is_recognised_with_and_without_its_mark() {
        assertUnreadable(
                read("item,price\n".getBytes(StandardCharsets.UTF_16)),
                "parts.csv: found the byte 0xFE in line 1, which is not UTF-8 text" + UTF_8_WANTED);
        input = new Input(folder);
        assertUnreadable(
                read("item,price\n".getBytes(StandardCharsets.UTF_16LE)),
                "parts.csv: found the byte 0x00 in line 1, which is not UTF-8 text" + UTF_8_WANTED);
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "\n\n", "\uFEFF", "# nothing yet\n", ",,,\n"})
    void a_file_without_a_header_is_empty(String text) {
        assertUnreadable(
                read(text.getBytes(StandardCharsets.UTF_8)),
                "parts.csv: found an empty file, expected a header row with column names.");
    }

    @Test
    void a_quotation_mark_left_open_names_the_row_it_stands_in_and_hides_the_faults_before_it() {
        assertUnreadable(
                input.table("item,price", "tape,1,2,3", "", "\"pump,3", "tank,4"),
                "parts.csv, row 4: found a quoted field that is not closed, or is followed by more text, expected a"
                        + " closing quotation mark directly before the next separator or the end of the row, and"
                        + " quotation marks inside a quoted field written twice.");
    }

    @Test
    void text_behind_a_closing_quotation_mark_is_not_guessed_at() {
        CsvTable table = input.table("item,price", "\"12\" pot\",3");

        assertThat(table.isReadable()).isFalse();
        assertThat(input.messages()).hasSize(1).first().asString().startsWith("parts.csv, row 2: found a quoted field");
    }

    @Test
    void missing_columns_are_one_fault_that_names_them_all_and_replaces_the_lesser_ones() {
        CsvTable table = input.table("item,,prise,item", "tape,1,2,3,4", "pump,1,2,3");
        assertThat(input.messages()).hasSize(3);

        assertThat(table.requireColumns("item", "pack", "price")).isFalse();
        assertUnreadable(
                table,
                "parts.csv, row 1: found no columns \"pack\" and \"price\", expected a header with \"item\", \"pack\""
                        + " and \"price\" (it has \"item\" and \"prise\").");
    }

    @Test
    void the_columns_of_an_unreadable_table_are_still_compared_with_those_that_are_read() {
        CsvTable table = input.table("item,prise", "tape,1");
        table.requireColumns("item", "price");
        table.warnOfOthers(List.of("item", "price"), input.faults());

        assertThat(input.warnings())
                .containsExactly("parts.csv, row 1, column prise: nothing reads this column; did you mean price?");
    }

    @Test
    void a_file_of_more_than_20_megabytes_is_not_read() throws IOException {
        Path file = folder.resolve("parts.csv");
        try (RandomAccessFile large = new RandomAccessFile(file.toFile(), "rw")) {
            large.setLength(TextFile.MOST_BYTES + 1L);
        }

        assertUnreadable(
                CsvTable.read(file, input.faults()),
                "parts.csv: found more than 20 MB, expected a file of at most 20 MB.");
    }

    @Test
    void a_missing_file_and_a_folder_are_faults() {
        assertUnreadable(
                CsvTable.read(folder.resolve("none.csv"), input.faults()),
                "none.csv: found no such file, expected a CSV file.");
        input = new Input(folder);
        CsvTable table = CsvTable.read(folder, input.faults());
        assertThat(table.isReadable()).isFalse();
        assertThat(input.messages()).containsExactly(folder.getFileName() + ": found a folder, expected a CSV file.");
    }
}
