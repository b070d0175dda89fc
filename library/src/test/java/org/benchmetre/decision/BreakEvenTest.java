package org.benchmetre.decision;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.InstanceOfAssertFactories.type;
import static org.benchmetre.budget.Formulas.greater;
import static org.benchmetre.budget.Formulas.lesser;
import static org.benchmetre.budget.Formulas.number;
import static org.benchmetre.budget.Formulas.onlyWhen;

import java.util.List;
import java.util.Random;
import org.assertj.core.data.Offset;
import org.benchmetre.budget.CellRef;
import org.benchmetre.budget.Formula;
import org.benchmetre.budget.FormulaException;
import org.benchmetre.budget.Solved;
import org.benchmetre.budget.entry.Bounds;
import org.benchmetre.budget.unit.Unit;
import org.junit.jupiter.api.Test;

class BreakEvenTest {

    /** Neighbouring doubles below 64 lie no further apart. */
    private static final Offset<Double> NEIGHBOURS = within(1e-14);

    private static final Bounds WHOLE = new Bounds(1, true, 1e5, true);

    private static Formula plain(double value) {
        return number(value, Unit.ONE);
    }

    private static Crossing.Root root(Found found) {
        return assertThat(found.answer())
                .asInstanceOf(type(Crossing.Root.class))
                .actual();
    }

    private static Crossing.Jump jump(Found found) {
        return assertThat(found.answer())
                .asInstanceOf(type(Crossing.Jump.class))
                .actual();
    }

    @Test
    void two_straight_lines_meet_once() {
        Figure figure = Figure.of(x -> x.times(plain(0.1)).plus(plain(5)), x -> plain(7));
        Found found = figure.search().between(0, 63);
        assertThat(root(found).value()).isCloseTo(20, NEIGHBOURS);
        assertThat(root(found).left()).isCloseTo(7, NEIGHBOURS);
        assertThat(root(found).right()).isEqualTo(7);
        assertThat(root(found).lesserBelow()).isEqualTo(Lesser.LEFT);
        assertThat(root(found).lesserAbove()).isEqualTo(Lesser.RIGHT);
        assertThat(found.points()).isEqualTo(512);
        assertThat(found.leftOut()).isZero();
        assertThat(found.solved()).isEqualTo(Solved.number(root(found).value()));
    }

    @Test
    void one_line_meets_zero() {
        Figure figure = Figure.of(x -> x.times(plain(3)).minus(plain(12)), x -> plain(0));
        assertThat(root(figure.searchZero().between(-50, 50)).value()).isCloseTo(4, NEIGHBOURS);
        assertThat(root(figure.searchZero().between(0, 4)).lesserAbove()).isEqualTo(Lesser.UNKNOWN);
    }

    @Test
    void seeded_lines_meet_where_arithmetic_says() {
        Random random = new Random(4711);
        for (int i = 0; i < 50; i++) {
            double slope = 0.1 + random.nextDouble();
            double start = 100 * random.nextDouble();
            double other = start + slope * (1 + 998 * random.nextDouble());
            Figure figure = Figure.of(x -> x.times(plain(slope)).plus(plain(start)), x -> plain(other));
            double expected = (other - start) / slope;
            assertThat(root(figure.search().between(1, 1000)).value())
                    .isCloseTo(expected, within(1e-12 * Math.max(1, other / slope)));
        }
    }

    @Test
    void whole_packs_jump_across() {
        Figure figure = Figure.of(x -> x.over(plain(10)).wholeUp().times(plain(3)), x -> plain(7));
        Found found = figure.search().between(1, 63);
        Crossing.Jump jump = jump(found);
        assertThat(jump.above()).isEqualTo(Math.nextUp(jump.below()));
        assertThat(jump.above()).isCloseTo(20.000005, within(1e-9));
        assertThat(figure.differenceAt(jump.below())).isEqualTo(6 - 7);
        assertThat(figure.differenceAt(jump.above())).isEqualTo(9 - 7);
        assertThat(jump.lesserBelow()).isEqualTo(Lesser.LEFT);
        assertThat(jump.lesserAbove()).isEqualTo(Lesser.RIGHT);
        assertThat(found.solved()).isEqualTo(Solved.number(jump.above()));
    }

    @Test
    void two_roots_are_both_found_in_order() {
        Figure figure = Figure.of(x -> x.times(x).plus(plain(6)), x -> x.times(plain(5)));
        Found found = figure.search().between(-7, 9);
        List<Crossing> crossings = assertThat(found.answer())
                .asInstanceOf(type(Answer.Several.class))
                .actual()
                .crossings();
        assertThat(crossings).hasSize(2);
        assertThat(crossings.get(0).first()).isCloseTo(2, NEIGHBOURS);
        assertThat(crossings.get(1).first()).isCloseTo(3, NEIGHBOURS);
        assertThat(crossings.get(0).lesserAbove()).isEqualTo(Lesser.LEFT);
        assertThat(found.solved()).isEqualTo(Solved.none("2 values in range"));
    }

    /** (x - 20)(x - 20.01): on a grid of 512 points from 0 to 63 both roots lie between two neighbours. */
    @Test
    void two_roots_between_neighbours_of_the_grid_are_both_found() {
        Figure figure = Figure.of(x -> x.minus(plain(20)).times(x.minus(plain(20.01))), x -> plain(0));
        Found found = figure.searchZero().between(0, 63);
        assertThat(Math.floor(20 / 63.0 * 511)).isEqualTo(Math.floor(20.01 / 63.0 * 511));
        assertThat(found.crossings()).hasSize(2);
        assertThat(found.crossings().get(0).first()).isCloseTo(20, within(1e-11));
        assertThat(found.crossings().get(1).first()).isCloseTo(20.01, within(1e-11));
        assertThat(found.points()).isEqualTo(512);
    }

    @Test
    void two_jumps_between_neighbours_of_a_whole_grid_are_both_found() {
        Figure figure = Figure.of(WHOLE, x -> x.minus(plain(50_000)).times(x.minus(plain(50_000))), x -> plain(1.5));
        List<Crossing> crossings = figure.search().between(1, 1e5).crossings();
        assertThat(crossings)
                .containsExactly(
                        new Crossing.Jump(49_998, 49_999, Lesser.RIGHT, Lesser.LEFT),
                        new Crossing.Jump(50_001, 50_002, Lesser.LEFT, Lesser.RIGHT));
    }

    @Test
    void a_touch_on_the_grid_is_a_root_with_the_same_side_around_it() {
        Figure figure = Figure.of(x -> x.minus(plain(2)).times(x.minus(plain(2))), x -> plain(0));
        Crossing.Root root = root(figure.searchZero().between(0, 4, 5));
        assertThat(root).isEqualTo(new Crossing.Root(2, 0, 0, Lesser.RIGHT, Lesser.RIGHT));
    }

    @Test
    void when_nothing_meets_the_lesser_side_is_named() {
        Figure figure = Figure.of(x -> x.plus(plain(1)), x -> x);
        Found found = figure.search().between(1, 1000);
        assertThat(found.answer()).isEqualTo(new Answer.None(Lesser.RIGHT));
        assertThat(found.solved()).isEqualTo(Solved.none("none in range"));
    }

    @Test
    void rounding_is_no_crossing() {
        Figure figure = Figure.of(x -> x.times(plain(0.1)).plus(x.times(plain(0.2))), x -> x.times(plain(0.3)));
        Found found = figure.search().between(1, 1000);
        assertThat(found.answer()).isEqualTo(new Answer.None(Lesser.NEITHER));
        assertThat(found.solved()).isEqualTo(Solved.none("the same all over"));
    }

    @Test
    void the_same_over_a_stretch_is_a_tie() {
        Figure figure = Figure.of(x -> lesser(greater(x, plain(2)), plain(3)), x -> x);
        Found found = figure.search().between(0, 4, 9);
        assertThat(found.answer()).isEqualTo(new Crossing.Tie(2, 3, Lesser.RIGHT, Lesser.LEFT));
        assertThat(found.solved()).isEqualTo(Solved.none("the same over a stretch"));
    }

    @Test
    void a_pole_is_a_jump() {
        Figure figure = Figure.of(x -> plain(1).over(x.minus(plain(2))), x -> plain(0));
        Crossing.Jump beside = jump(figure.searchZero().between(0, 4.1));
        assertThat(beside.below()).isLessThan(2).isCloseTo(2, NEIGHBOURS);
        assertThat(beside.above()).isGreaterThan(2).isCloseTo(2, NEIGHBOURS);
        Found on = figure.searchZero().between(0, 4, 5);
        assertThat(on.leftOut()).isEqualTo(1);
        assertThat(on.points()).isEqualTo(5);
        assertThat(jump(on).below()).isLessThan(2);
        assertThat(jump(on).above()).isGreaterThan(2);
    }

    @Test
    void points_without_a_number_are_left_out_and_counted() {
        Figure figure = Figure.of(x -> onlyWhen(x.exceeds(plain(5)), x.minus(plain(7)), "too short"), x -> plain(0));
        Found found = figure.search().between(2, 11, 10);
        assertThat(found.leftOut()).isEqualTo(4);
        assertThat(root(found).value()).isCloseTo(7, NEIGHBOURS);
        Found nothing = figure.search().between(1, 5);
        assertThat(nothing.answer()).isEqualTo(new Answer.None(Lesser.UNKNOWN));
        assertThat(nothing.leftOut()).isEqualTo(nothing.points());
        assertThat(nothing.solved()).isEqualTo(Solved.none("no finite figure"));
    }

    @Test
    void a_whole_entry_answers_two_neighbours() {
        Figure figure = Figure.of(WHOLE, x -> plain(100).over(x), x -> plain(0.7));
        assertThat(figure.search().between(1, 200).answer())
                .isEqualTo(new Crossing.Jump(142, 143, Lesser.RIGHT, Lesser.LEFT));
        assertThat(figure.search().between(0.5, 1e5).answer())
                .isEqualTo(new Crossing.Jump(142, 143, Lesser.RIGHT, Lesser.LEFT));
    }

    @Test
    void a_whole_entry_may_have_a_root() {
        Figure figure = Figure.of(WHOLE, x -> plain(100).over(x), x -> plain(20));
        assertThat(root(figure.search().between(1, 100)).value()).isEqualTo(5);
        assertThat(root(figure.search().between(1, 1e5)).value()).isEqualTo(5);
    }

    @Test
    void a_whole_entry_above_a_bound_begins_at_the_next_whole_number() {
        Bounds bounds = new Bounds(0, false, 1e15, true);
        Figure figure = Figure.of(bounds, x -> plain(100).over(x), x -> plain(20.5));
        Found found = figure.search().between(0, 1e15);
        assertThat(found.low()).isEqualTo(1);
        assertThat(found.answer()).isEqualTo(new Crossing.Jump(4, 5, Lesser.RIGHT, Lesser.LEFT));
    }

    @Test
    void a_range_of_many_sizes_is_searched_in_equal_ratios() {
        Figure figure = Figure.of(x -> x, x -> plain(3e-200));
        assertThat(root(figure.search().between(1e-300, 1e300)).value()).isEqualTo(3e-200);
    }

    @Test
    void the_hard_bounds_of_the_entry_hold() {
        Bounds bounds = new Bounds(0, false, 50, false);
        Figure figure = Figure.of(bounds, x -> plain(1).over(x), x -> plain(1000));
        Found found = figure.search().between(-10, 1e6);
        assertThat(found.low()).isPositive().isLessThan(1e-6);
        assertThat(found.high()).isEqualTo(50);
        assertThat(root(found).value()).isCloseTo(0.001, NEIGHBOURS);
        assertThatThrownBy(() -> figure.search().between(60, 70))
                .isInstanceOf(FormulaException.class)
                .hasMessage(
                        "There is nothing to search from 60.0 to 70.0 for an entry that is a number above 0 and of at"
                                + " most 50.");
        assertThatThrownBy(() -> figure.search().between(Double.NaN, 5)).isInstanceOf(FormulaException.class);
        assertThatThrownBy(() -> figure.search().between(1, 5, 1)).isInstanceOf(FormulaException.class);
    }

    @Test
    void a_single_value_is_looked_at_once() {
        Figure figure = Figure.of(x -> x, x -> plain(3));
        assertThat(root(figure.search().between(3, 3)).value()).isEqualTo(3);
        assertThat(figure.search().between(4, 4).answer()).isEqualTo(new Answer.None(Lesser.RIGHT));
    }

    @Test
    void what_cannot_be_searched_is_refused() {
        Figure figure = Figure.of(x -> x, x -> plain(3));
        Difference difference = Difference.of(figure.left());
        assertThatThrownBy(() -> BreakEven.of(figure.budget(), figure.left(), difference))
                .hasMessage("A search varies an entry that is a number, but left_side is not one.");
        Figure truths = Figure.of(x -> x, Formula::isPositive);
        CellRef truth = truths.right();
        assertThatThrownBy(() -> Difference.of(truth))
                .hasMessage("A difference is of numbers, but right_side is a TRUTH.");
    }

    @Test
    void a_search_serves_other_differences_of_its_lines() {
        Figure figure = Figure.of(x -> x.times(plain(3)).minus(plain(12)), x -> plain(6));
        BreakEven search = figure.search();
        assertThat(root(search.between(-50, 50)).value()).isCloseTo(6, NEIGHBOURS);
        BreakEven zero = search.with(Difference.of(figure.left()));
        assertThat(root(zero.between(-50, 50)).value()).isCloseTo(4, NEIGHBOURS);
        assertThat(root(search.between(-50, 50)).value()).isCloseTo(6, NEIGHBOURS);
        Difference strange = Difference.of(Figure.of(x -> x, x -> plain(3)).left());
        assertThatThrownBy(() -> search.with(strange))
                .isInstanceOf(FormulaException.class)
                .hasMessage(
                        "A search prepared for [left_side, right_side] knows no other lines, but found [left_side].");
    }
}
