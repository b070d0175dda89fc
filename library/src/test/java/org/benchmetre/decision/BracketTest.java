package org.benchmetre.decision;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

/** Two points on either side of a crossing, narrowed until they touch. */
class BracketTest {

    private static final Point BELOW = new Point(1, 0, 4);
    private static final Point ABOVE = new Point(2, 3, 0);
    private static final Bracket BOTH = Bracket.of(BELOW, ABOVE);

    @Test
    void the_scale_is_the_larger_difference() {
        assertThat(BOTH.scale()).isEqualTo(4);
        assertThat(BOTH.closed()).isFalse();
        assertThat(Bracket.of(ABOVE, BELOW).scale()).isEqualTo(4);
    }

    @Test
    void a_middle_takes_the_place_of_the_point_on_its_side() {
        Point low = new Point(1.5, 0, 1);
        Point high = new Point(1.5, 1, 0);
        assertThat(BOTH.narrowed(low)).isEqualTo(new Bracket(low, ABOVE, 4, false));
        assertThat(BOTH.narrowed(high)).isEqualTo(new Bracket(BELOW, high, 4, false));
        Bracket falling = Bracket.of(new Point(1, 3, 0), new Point(2, 0, 4));
        assertThat(falling.narrowed(high).low()).isEqualTo(high);
        assertThat(falling.narrowed(low).high()).isEqualTo(low);
    }

    @Test
    void a_middle_that_meets_ends_the_search() {
        Point meets = new Point(1.5, 7, 7);
        assertThat(BOTH.narrowed(meets)).isEqualTo(new Bracket(meets, meets, 4, true));
    }

    @Test
    void touching_points_and_a_hole_end_the_search_where_it_is() {
        Bracket closed = new Bracket(BELOW, ABOVE, 4, true);
        assertThat(BOTH.narrowed(new Point(1, 0, 1))).isEqualTo(closed);
        assertThat(BOTH.narrowed(new Point(2, 0, 1))).isEqualTo(closed);
        assertThat(BOTH.narrowed(new Point(1.5, Double.NaN, 1))).isEqualTo(closed);
    }

    private static Crossing crossing(Point low, Point high, double scale) {
        return new Bracket(low, high, scale, true).crossing(Lesser.LEFT, Lesser.RIGHT);
    }

    @Test
    void a_difference_of_a_ten_billionth_of_the_scale_is_a_root() {
        Point far = new Point(2, 1, 0);
        assertThat(crossing(new Point(1, 0, 1e-10), far, 1))
                .isEqualTo(new Crossing.Root(1, 0, 1e-10, Lesser.LEFT, Lesser.RIGHT));
        assertThat(crossing(new Point(1, 0, 1.1e-10), far, 1))
                .isEqualTo(new Crossing.Jump(1, 2, Lesser.LEFT, Lesser.RIGHT));
        assertThat(crossing(new Point(1, 0, 2e-10), far, 4)).isInstanceOf(Crossing.Root.class);
    }

    @Test
    void so_is_one_of_a_ten_billionth_of_the_figures() {
        assertThat(crossing(new Point(1, 5, 5 + 4e-10), new Point(2, 9, 5), 1e-9))
                .isInstanceOf(Crossing.Root.class);
        assertThat(crossing(new Point(1, 5, 5 + 6e-10), new Point(2, 9, 5), 1e-9))
                .isInstanceOf(Crossing.Jump.class);
    }

    @Test
    void the_nearer_point_is_the_root_and_the_lower_of_two_as_near() {
        Point low = new Point(1, 0, 1e-11);
        assertThat(crossing(low, new Point(2, 5e-12, 0), 1).first()).isEqualTo(2);
        assertThat(crossing(low, new Point(2, 1e-11, 0), 1).first()).isEqualTo(1);
    }

    @Test
    void nothing_is_found_at_minus_zero() {
        Crossing.Root root = (Crossing.Root) crossing(new Point(-0.0, 1, 1), new Point(1, 2, 1), 1);
        assertThat(1 / root.value()).isPositive();
        Crossing.Jump jump = (Crossing.Jump) crossing(new Point(-0.0, 0, 1), new Point(1, 2, 1), 1);
        assertThat(1 / jump.below()).isPositive();
        jump = (Crossing.Jump) crossing(new Point(-1, 0, 1), new Point(-0.0, 2, 1), 1);
        assertThat(1 / jump.above()).isPositive();
    }

    @Test
    void figures_a_trillionth_apart_are_the_same() {
        assertThat(new Point(0, 1, 1 + 1e-13).lesser()).isEqualTo(Lesser.NEITHER);
        assertThat(new Point(0, 1, 1 + 1e-11).lesser()).isEqualTo(Lesser.LEFT);
        assertThat(new Point(0, 1 + 1e-11, 1).lesser()).isEqualTo(Lesser.RIGHT);
        assertThat(new Point(0, 0, 0).lesser()).isEqualTo(Lesser.NEITHER);
        assertThat(new Point(0, 0, 1e-300).lesser()).isEqualTo(Lesser.LEFT);
        assertThat(new Point(0, -1, 1).lesser()).isEqualTo(Lesser.LEFT);
    }
}
