package org.benchmetre.decision;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.SplittableRandom;
import org.benchmetre.budget.FormulaException;
import org.benchmetre.budget.entry.Bounds;
import org.junit.jupiter.api.Test;

/** Where a search looks: within the hard bounds of an entry, in equal steps or equal ratios. */
class RangeTest {

    /** Exponentials of logarithms of numbers up to 10,000. */
    private static final double NEAR = 1e-9;

    private static final double INFINITE = Double.POSITIVE_INFINITY;

    private static Range of(double low, double high) {
        return Range.within(Bounds.ANY, low, high);
    }

    private static Range whole(double low, double high) {
        return Range.within(new Bounds(0, true, 1e9, true), low, high);
    }

    @Test
    void hard_bounds_cut_the_range() {
        assertThat(Range.within(new Bounds(2, true, 5, false), 0, 10)).isEqualTo(new Range(2, 5, false));
        assertThat(Range.within(new Bounds(2, true, 5, false), 3, 4)).isEqualTo(new Range(3, 4, false));
    }

    @Test
    void a_bound_that_is_left_out_is_left_by_a_trillionth_of_the_range() {
        Range range = Range.within(new Bounds(2, false, 5, false), 0, 10);
        assertThat(range.low()).isGreaterThan(2).isCloseTo(2, within(3.01e-12));
        assertThat(range.low()).isGreaterThanOrEqualTo(2 + 2.99e-12);
        assertThat(Range.within(new Bounds(2, false, 5, false), 3, 10).low()).isEqualTo(3);
        assertThat(Range.within(new Bounds(2, false, 5, true), 0, 10)).isEqualTo(new Range(3, 5, true));
    }

    @Test
    void whole_numbers_lie_inside() {
        assertThat(whole(1.2, 4.8)).isEqualTo(new Range(2, 4, true));
    }

    @Test
    void nothing_and_the_infinite_are_not_searched() {
        assertThatThrownBy(() -> of(3, 2)).isInstanceOf(FormulaException.class);
        assertThatThrownBy(() -> of(Double.NaN, 2)).isInstanceOf(FormulaException.class);
        assertThatThrownBy(() -> of(-INFINITE, 2)).isInstanceOf(FormulaException.class);
        assertThatThrownBy(() -> of(2, INFINITE))
                .isInstanceOf(FormulaException.class)
                .hasMessageStartingWith("There is nothing to search from 2.0 to Infinity");
        assertThat(of(2, 2).grid(5)).containsExactly(2);
    }

    @Test
    void a_narrow_range_is_walked_in_equal_steps() {
        assertThat(of(1, 9).grid(5)).containsExactly(1, 3, 5, 7, 9);
        assertThat(of(0, 1000).grid(5)).containsExactly(0, 250, 500, 750, 1000);
        assertThat(of(-8, 8).grid(5)).containsExactly(-8, -4, 0, 4, 8);
    }

    @Test
    void a_range_over_ten_times_and_more_is_walked_in_equal_ratios() {
        assertThat(of(1, 10).grid(3)).containsExactly(new double[] {1, Math.sqrt(10), 10}, within(NEAR));
        assertThat(of(0.01, 10_000).grid(4)).containsExactly(new double[] {0.01, 1, 100, 10_000}, within(NEAR));
        assertThat(of(0.01, 10_000).grid(4)).startsWith(0.01).endsWith(10_000);
    }

    @Test
    void few_whole_numbers_are_all_looked_at_and_many_once_each() {
        assertThat(whole(3, 7).grid(5)).containsExactly(3, 4, 5, 6, 7);
        assertThat(whole(3, 7).grid(4)).containsExactly(3, 4, 6, 7);
        assertThat(whole(1, 1000).grid(512)).doesNotHaveDuplicates().contains(1, 1000);
    }

    @Test
    void the_middle_halves_the_doubles_between() {
        assertThat(of(0, 9).middle(1, 2)).isEqualTo(1.5);
        assertThat(of(0, 9).middle(1, Math.nextUp(1.0))).isEqualTo(1);
        assertThat(of(-9, 9).middle(-2, -1)).isEqualTo(-1.5);
        assertThat(whole(0, 9).middle(2, 5)).isEqualTo(3);
        SplittableRandom random = new SplittableRandom(1);
        for (int i = 0; i < 1000; i++) {
            double from = -random.nextDouble() * Math.pow(10, random.nextInt(-20, 20));
            double to = from + random.nextDouble() * Math.pow(10, random.nextInt(-20, 20));
            double target = from + random.nextDouble() * (to - from);
            Range range = of(from, to);
            int steps = 0;
            while (Math.nextUp(from) < to && steps++ < 100) {
                double middle = range.middle(from, to);
                assertThat(middle).isBetween(from, to);
                from = middle <= target ? middle : from;
                to = middle <= target ? to : middle;
            }
            assertThat(steps).isLessThanOrEqualTo(64);
        }
    }
}
