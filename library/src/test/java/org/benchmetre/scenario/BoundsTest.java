package org.benchmetre.scenario;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class BoundsTest {

    @ParameterizedTest
    @ValueSource(doubles = {Double.NaN, Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY})
    void no_range_contains_what_is_not_finite(double value) {
        assertThat(Bounds.any().contains(value)).isFalse();
        assertThat(Bounds.atLeast(0).contains(value)).isFalse();
        assertThat(Bounds.above(0).contains(value)).isFalse();
        assertThat(Bounds.between(0, 1).contains(value)).isFalse();
        assertThat(new Bounds(Double.NEGATIVE_INFINITY, true, Double.POSITIVE_INFINITY, true).contains(value))
                .isFalse();
    }

    @Test
    void ends_belong_to_the_range_as_it_says() {
        assertThat(Bounds.atLeast(0).contains(0)).isTrue();
        assertThat(Bounds.atLeast(0).contains(-Double.MIN_VALUE)).isFalse();
        assertThat(Bounds.above(0).contains(0)).isFalse();
        assertThat(Bounds.above(0).contains(Double.MIN_VALUE)).isTrue();
        assertThat(Bounds.between(0, 1).contains(0)).isTrue();
        assertThat(Bounds.between(0, 1).contains(1)).isTrue();
        assertThat(Bounds.between(0, 1).contains(Math.nextUp(1.0))).isFalse();
        assertThat(new Bounds(0, true, 1, false).contains(1)).isFalse();
        assertThat(Bounds.any().contains(-Double.MAX_VALUE)).isTrue();
    }

    @Test
    void words_follow_the_ends() {
        assertThat(Bounds.any().words()).isEmpty();
        assertThat(Bounds.atLeast(0).words()).isEqualTo("at least 0");
        assertThat(Bounds.above(0).words()).isEqualTo("above 0");
        assertThat(Bounds.between(0, 1).words()).isEqualTo("from 0 to 1");
        assertThat(new Bounds(0, false, 1, true).words()).isEqualTo("above 0 and at most 1");
        assertThat(new Bounds(0, true, 1, false).words()).isEqualTo("at least 0 and below 1");
        assertThat(new Bounds(Double.NEGATIVE_INFINITY, false, -0.5, true).words())
                .isEqualTo("at most -0.5");
    }

    @Test
    void words_print_numbers_with_a_point_and_without_grouping_or_exponent() {
        assertThat(Bounds.between(0.25, 1234567.5).words()).isEqualTo("from 0.25 to 1234567.5");
        assertThat(Bounds.atLeast(-0.0).words()).isEqualTo("at least 0");
        assertThat(Bounds.atLeast(1e-7).words()).isEqualTo("at least 0.0000001");
        assertThat(Bounds.atLeast(1e7).words()).isEqualTo("at least 10000000");
    }

    @Test
    void an_impossible_range_is_refused() {
        assertThatThrownBy(() -> Bounds.between(2, 1))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("The lower end of a range must not be above its upper end; they were 2.0 and 1.0.");
        assertThatThrownBy(() -> Bounds.atLeast(Double.NaN)).isInstanceOf(IllegalArgumentException.class);
    }
}
