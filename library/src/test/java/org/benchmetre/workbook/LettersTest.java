package org.benchmetre.workbook;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

/** How many lines words take, so that rows are made tall enough for whole words. */
class LettersTest {

    private static final double ROUNDING = 1e-9;

    @Test
    void letters_are_narrow_usual_or_wide() {
        assertThat(Letters.width("ill")).isCloseTo(3 * 0.55, within(ROUNDING));
        assertThat(Letters.width("one")).isCloseTo(3 * 0.96, within(ROUNDING));
        assertThat(Letters.width("KEY")).isCloseTo(3 * 1.2, within(ROUNDING));
        assertThat(Letters.width("mm%")).isCloseTo(3 * 1.45, within(ROUNDING));
    }

    /** {@code four five} is 6.59 letters wide: five narrow ones with the space, four of usual width. */
    @Test
    void words_are_kept_whole() {
        assertThat(Letters.lines("", 10)).isEqualTo(1);
        assertThat(Letters.lines("four five", 6.6)).isEqualTo(1);
        assertThat(Letters.lines("four five", 6.5)).isEqualTo(2);
        assertThat(Letters.lines("four five four", 6.6)).isEqualTo(2);
    }

    /** Fifteen letters of 13.25 letters' width. */
    @Test
    void a_word_that_is_longer_than_a_line_is_broken() {
        assertThat(Letters.lines("abcdefghijklmno", 5)).isEqualTo(3);
        assertThat(Letters.lines("abcdefghijklmno", 14)).isEqualTo(1);
    }
}
