package org.benchmetre.budget.entry;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Numbers as text: every digit where they are read again, twelve where people read them. */
class NumbersTest {

    @ParameterizedTest
    @CsvSource({
        "4.800000000000001, 4.8",
        "0.30000000000000004, 0.3",
        "-0.1, -0.1",
        "0, 0",
        "-0.0, 0",
        "12000, 12000",
        "123456789.12345678, 123456789.123",
        "1E-7, 0.0000001",
        "0.9999999999999999, 1",
        "1E15, 1000000000000000"
    })
    void a_message_shows_twelve_digits(double value, String shown) {
        assertThat(Numbers.shown(value)).isEqualTo(shown);
    }

    @Test
    void what_is_read_again_keeps_every_digit() {
        assertThat(Numbers.plain(4.800000000000001)).isEqualTo("4.800000000000001");
    }

    @Test
    void bounds_that_were_computed_are_told_as_people_write_them() {
        assertThat(new Bounds(0.1 + 0.2, true, 16 * 0.3 + 1e-15, false).words("m"))
                .isEqualTo("a number from 0.3 to 4.8 m");
        assertThat(new Bounds(0, false, 3 * 0.1, true).words(""))
                .isEqualTo("a whole number above 0 and of at most 0.3");
    }
}
