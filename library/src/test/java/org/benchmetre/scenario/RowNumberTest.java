package org.benchmetre.scenario;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class RowNumberTest {

    private static final String PLACE = "parts.csv, row 2, column cell: found ";

    @TempDir
    Path folder;

    private Input input;

    @BeforeEach
    void newInput() {
        input = new Input(folder);
    }

    private double number(String text) {
        return input.cell(text).number("cell", Bounds.atLeast(0), "EUR per pack", input.faults());
    }

    @ParameterizedTest
    @CsvSource({"0,0", "12,12", "+1.5,1.5", ".5,0.5", "007,7", "1e3,1000", "2.5E-1,0.25", "0.1,0.1", "1e-400,0"})
    void plain_numbers_are_read(String text, double value) {
        assertThat(number(text)).isEqualTo(value);
        assertThat(input.messages()).isEmpty();
    }

    @Test
    void minus_zero_is_zero() {
        assertThat(Double.doubleToRawLongBits(number("-0"))).isZero();
        assertThat(Double.doubleToRawLongBits(number("-1e-400"))).isZero();
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "abc",
                "NaN",
                "Infinity",
                "-Infinity",
                "0x1F",
                "1e",
                "--1",
                "+",
                ".",
                "-",
                "5.",
                "1.2.3",
                "1f",
                "1d",
                "1e5.0",
                "\u0661\u0662",
                "\u22121",
                "=1+1",
                "1_000",
                "1-2"
            })
    void all_else_is_a_fault_that_quotes_what_was_found(String text) {
        assertThat(number(text)).isNaN();
        assertThat(input.messages()).hasSize(1);
        assertThat(input.messages().get(0))
                .startsWith(PLACE + "\"" + text + "\", expected a number of at least 0 (EUR per pack)");
    }

    @Test
    void a_word_is_not_a_number() {
        number("abc");

        assertThat(input.messages())
                .containsExactly(PLACE + "\"abc\", expected a number of at least 0 (EUR per pack).");
    }

    @ParameterizedTest
    @ValueSource(strings = {"1,5", "1,234.5", "1.234,5", "1 234", "1'234", "1\u2019234"})
    void other_marks_are_faults_that_name_the_right_ones(String text) {
        assertThat(number(text)).isNaN();
        assertThat(input.messages())
                .containsExactly(PLACE + "\"" + text + "\", expected a number of at least 0 (EUR per pack), with a"
                        + " decimal point and no thousands separators.");
    }

    @ParameterizedTest
    @ValueSource(strings = {"5%", "12 EUR", "\u20ac12.50", "3 m"})
    void signs_and_units_beside_a_number_are_faults_that_say_so(String text) {
        assertThat(number(text)).isNaN();
        assertThat(input.messages())
                .containsExactly(
                        PLACE + "\"" + text + "\", expected a number of at least 0 (EUR per pack), with nothing"
                                + " beside it in the cell.");
    }

    @Test
    void a_number_too_large_to_hold_is_a_fault() {
        assertThat(input.cell("1e999").number("cell", Bounds.any(), "", input.faults()))
                .isNaN();
        assertThat(input.messages())
                .containsExactly(PLACE + "\"1e999\", expected a number, no larger than 1.7E308 in size.");
    }

    @Test
    void a_number_outside_its_bounds_is_a_fault_with_bounds_and_unit() {
        assertThat(number("-0.01")).isNaN();
        assertThat(input.cell("0").number("cell", Bounds.above(0), "m", input.faults()))
                .isNaN();
        assertThat(input.cell("5").number("cell", Bounds.between(0, 1), "fraction", 0, input.faults()))
                .isNaN();

        assertThat(input.messages())
                .containsExactly(
                        PLACE + "\"-0.01\", expected a number of at least 0 (EUR per pack).",
                        PLACE + "\"0\", expected a number above 0 (m).",
                        PLACE + "\"5\", expected a number from 0 to 1 (fraction).");
    }

    @Test
    void a_blank_cell_is_the_fallback_or_else_a_fault() {
        Row row = input.cell("  ");

        assertThat(row.number("cell", Bounds.atLeast(0), "m", -1, input.faults()))
                .isEqualTo(-1);
        assertThat(input.messages()).isEmpty();
        assertThat(row.number("cell", Bounds.atLeast(0), "m", Double.NaN, input.faults()))
                .isNaN();
        assertThat(row.number("absent", Bounds.any(), "", input.faults())).isNaN();
        assertThat(input.messages())
                .containsExactly(
                        PLACE + "nothing, expected a number of at least 0 (m).",
                        "parts.csv, row 2, column absent: found nothing, expected a number.");
    }

    @Test
    void in_a_semicolon_file_a_point_is_a_fault() {
        Row row = input.table("item;price;pack", "tape;1.5;1.234,5").rows().get(0);
        row.number("price", Bounds.any(), "", input.faults());
        row.number("pack", Bounds.any(), "", input.faults());

        assertThat(input.messages())
                .containsExactly(
                        "parts.csv, row 2, column price: found \"1.5\", expected a number, with a decimal comma and no"
                                + " thousands separators.",
                        "parts.csv, row 2, column pack: found \"1.234,5\", expected a number, with a decimal comma and no"
                                + " thousands separators.");
    }

    @Test
    void a_cell_of_a_million_digits_and_a_letter_is_refused_at_once() {
        assertThat(number("1".repeat(1_000_000) + "x")).isNaN();
        assertThat(input.messages()).hasSize(1);
    }

    @ParameterizedTest
    @ValueSource(strings = {"1989", "2101", "24", "2024.0", "2024,5", "MMXX", "02024"})
    void a_year_is_four_digits_from_1990_to_2100(String text) {
        assertThat(input.cell(text).year("cell", input.faults())).isZero();
        assertThat(input.messages()).containsExactly(PLACE + "\"" + text + "\", expected a year from 1990 to 2100.");
    }

    @Test
    void years_at_both_ends_are_read_and_a_blank_one_may_have_a_fallback() {
        assertThat(input.cell("1990").year("cell", input.faults())).isEqualTo(1990);
        assertThat(input.cell("2100").year("cell", 2026, input.faults())).isEqualTo(2100);
        assertThat(input.cell("").year("cell", 2026, input.faults())).isEqualTo(2026);
        assertThat(input.messages()).isEmpty();
        input.cell("").year("cell", input.faults());
        assertThat(input.messages()).containsExactly(PLACE + "nothing, expected a year from 1990 to 2100.");
    }
}
