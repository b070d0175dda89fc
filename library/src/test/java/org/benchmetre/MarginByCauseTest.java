package org.benchmetre;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class MarginByCauseTest {

    /** A sum of a few dozen amounts of some tens differs by rounding alone. */
    private static final Offset<Double> ROUNDING = within(1e-9);

    private static final Path TROUGHS = Path.of("..", "samples", "trough-house");
    private static final Path CONTAINERS = Path.of("..", "samples", "container-house");

    /** Troughs, containers, and troughs once more. */
    private static Comparison comparison;

    @BeforeAll
    static void read() throws ScenarioException {
        comparison = Comparison.read(List.of(TROUGHS, CONTAINERS, TROUGHS), Optional.empty(), List.of());
    }

    private static double sum(List<Cause> causes, ToDoubleFunction<Cause> value) {
        return causes.stream().mapToDouble(value).sum();
    }

    @ParameterizedTest
    @EnumSource(Measure.class)
    void the_difference_in_what_is_left_is_the_sum_of_the_differences_of_its_causes(Measure per) throws Exception {
        MarginByCause margin = MarginByCause.of(comparison, per);
        double more = margin.left().values().get(1) - margin.left().values().get(0);

        assertThat(margin.causes()).hasSizeGreaterThan(30);
        assertThat(Math.abs(more)).isGreaterThan(1e-6); // the two do differ
        assertThat(sum(margin.causes(), cause -> cause.difference(1))).isCloseTo(more, ROUNDING);
        assertThat(margin.sum().difference(1)).isCloseTo(more, ROUNDING);
        assertThat(margin.left().difference(1)).isCloseTo(more, ROUNDING);
        assertThat(margin.disagreements()).isEmpty();
    }

    @ParameterizedTest
    @EnumSource(Measure.class)
    void what_is_left_is_the_margin_of_each_scenario(Measure per) throws Exception {
        MarginByCause margin = MarginByCause.of(comparison, per);

        for (int i = 0; i < 3; i++) {
            double alone = comparison.scenarios().get(i).figures().number("margin_per_" + per);
            assertThat(margin.left().values().get(i)).isCloseTo(alone, ROUNDING);
        }
    }

    @ParameterizedTest
    @EnumSource(Measure.class)
    void the_difference_in_receipts_is_the_sum_of_its_causes(Measure per) throws Exception {
        MarginByCause margin = MarginByCause.of(comparison, per);
        double effects = margin.receipts().stream()
                .mapToDouble(step -> step.effects().get(1))
                .sum();

        assertThat(margin.receipts()).hasSize(per == Measure.KG ? 1 : per == Measure.PLANT ? 2 : 3);
        assertThat(Math.abs(effects)).isGreaterThan(0.01);
        assertThat(effects).isCloseTo(margin.total(Section.RECEIPTS).difference(1), ROUNDING);
    }

    @ParameterizedTest
    @EnumSource(Measure.class)
    void a_scenario_against_itself_differs_nowhere(Measure per) throws Exception {
        MarginByCause margin = MarginByCause.of(comparison, per);

        assertThat(margin.causes())
                .allSatisfy(cause -> assertThat(cause.difference(2)).isZero());
        assertThat(margin.receipts()).allSatisfy(step -> {
            assertThat(step.difference(2)).isZero();
            assertThat(step.effects().get(2)).isZero();
        });
        assertThat(margin.left().difference(2)).isZero();
        assertThat(ResultsCompared.of(comparison))
                .allSatisfy(result -> assertThat(result.difference(2)).isZero());
    }

    @Test
    void equal_names_are_told_apart() {
        assertThat(comparison.scenarios())
                .extracting(Compared::name)
                .containsExactly("trough-house", "container-house", "trough-house (2)");
    }
}
