package org.benchmetre;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.run.Figures;
import org.benchmetre.farm.Sample;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The longest line that is found still meets the uniformity asked for, and a metre more does not. */
class LongestRunTest {

    private static Figures with(String... settings) throws ScenarioException {
        return Benchmetre.read(Sample.TROUGH_HOUSE, Optional.empty(), List.of(settings))
                .figures();
    }

    private static double uniformity(String way, double run) throws ScenarioException {
        return with("way_run_length[" + way + "]=" + run).number("way_uniformity_in_range", way);
    }

    @ParameterizedTest
    @ValueSource(strings = {"emitter", "tape", "dripline"})
    void the_longest_line_meets_the_target_and_a_metre_more_does_not(String way) throws ScenarioException {
        Figures f = with();
        Line longest = f.budget().line("way_longest_run");
        int row = longest.axes().get(0).indexOf(way);
        assertThat(f.hasReason(longest, row)).isFalse();
        double run = f.number(longest, row);
        double target = f.number("target_uniformity");
        assertThat(uniformity(way, run)).isGreaterThanOrEqualTo(target);
        assertThat(uniformity(way, run + 1)).isLessThan(target);
        assertThat(uniformity(way, run / 2)).isGreaterThanOrEqualTo(target);
        assertThat(f.number("way_longest_listed_run", way)).isLessThanOrEqualTo(run);
    }

    @ParameterizedTest
    @ValueSource(strings = {"emitter", "tape", "dripline"})
    void where_no_line_meets_it_that_is_said(String way) throws ScenarioException {
        Figures f = with("target_uniformity=99", "way_coefficient_of_variation[" + way + "]=0.2");
        Line longest = f.budget().line("way_longest_run");
        assertThat(f.text(longest, longest.axes().get(0).indexOf(way))).isEqualTo("none meets it");
        assertThat(f.text(longest, longest.axes().get(0).indexOf("spare_1"))).isEmpty();
    }
}
