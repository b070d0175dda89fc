package org.benchmetre.budget.entry;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

/** What a number may be, at its very bounds. */
class BoundsTest {

    private static final double INFINITE = Double.POSITIVE_INFINITY;

    private static boolean takes(Bounds bounds, double number) {
        return bounds.takes(number);
    }

    @Test
    void the_bounds_themselves_are_taken_but_for_a_least_that_is_left_out() {
        Bounds closed = new Bounds(2, true, 5, false);
        assertThat(takes(closed, 2)).isTrue();
        assertThat(takes(closed, 5)).isTrue();
        assertThat(takes(closed, Math.nextDown(2.0))).isFalse();
        assertThat(takes(closed, Math.nextUp(5.0))).isFalse();
        Bounds open = new Bounds(2, false, 5, false);
        assertThat(takes(open, 2)).isFalse();
        assertThat(takes(open, Math.nextUp(2.0))).isTrue();
        assertThat(takes(open, 5)).isTrue();
    }

    @Test
    void no_number_is_in_no_bounds() {
        assertThat(takes(Bounds.ANY, Double.NaN)).isFalse();
        assertThat(takes(new Bounds(0, false, INFINITE, false), Double.NaN)).isFalse();
        assertThat(takes(new Bounds(0, true, 1, true), Double.NaN)).isFalse();
    }

    @Test
    void whole_numbers_have_no_fraction() {
        Bounds whole = new Bounds(0, true, 10, true);
        assertThat(takes(whole, 3)).isTrue();
        assertThat(takes(whole, 2.5)).isFalse();
    }

    @Test
    void the_bounds_are_told_with_their_unit() {
        assertThat(new Bounds(2, true, 5, false).words("m")).isEqualTo("a number from 2 to 5 m");
        assertThat(new Bounds(2, false, 5, true).words("")).isEqualTo("a whole number above 2 and of at most 5");
        assertThat(new Bounds(2, true, INFINITE, false).words("")).isEqualTo("a number of at least 2");
        assertThat(new Bounds(-INFINITE, true, 5, false).words("")).isEqualTo("a number of at most 5");
        assertThat(Bounds.ANY.words("")).isEqualTo("a number");
    }
}
