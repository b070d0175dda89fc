package org.benchmetre.farm.comparison;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.LongStream;
import java.util.stream.Stream;
import org.benchmetre.budget.Axis;
import org.benchmetre.budget.Budget;
import org.benchmetre.budget.run.Figures;
import org.benchmetre.farm.Sample;
import org.benchmetre.farm.Seeded;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What an irrigation system costs a year does not depend on which way is chosen; before lost fruit it is the year's cost of choosing it. */
class WayCostsTest {

    /** Sums of some thousand doubles in another order. */
    private static final double RELATIVE = 1e-12;

    static Stream<Budget> cases() {
        Budget troughs = Sample.troughHouse();
        Budget containers = Sample.containerHouse();
        return Stream.concat(
                Stream.of(troughs, containers),
                LongStream.rangeClosed(1, 10)
                        .boxed()
                        .flatMap(seed -> Stream.of(Seeded.budget(troughs, seed), Seeded.budget(containers, seed))));
    }

    private static List<String> ways(Budget budget) {
        Axis axis = budget.line("way_key").axes().get(0);
        return axis.keys().subList(0, axis.filled());
    }

    private static Map<String, Figures> byChoice(Budget budget) {
        return ways(budget).stream()
                .collect(Collectors.toMap(
                        way -> way, way -> Figures.of(Sample.with(budget, "irrigation_choice=" + way))));
    }

    @ParameterizedTest
    @MethodSource("cases")
    void no_choice_moves_what_a_way_costs(Budget budget) {
        Map<String, Figures> byChoice = byChoice(budget);
        for (String id : List.of("way_yearly_cost", "way_yearly_cost_before_losses", "way_yearly_cost_per_metre")) {
            for (String way : ways(budget)) {
                double own = byChoice.get(way).number(id, way);
                assertThat(own).isPositive();
                byChoice.forEach((choice, f) -> assertThat(f.number(id, way))
                        .as(id + " of " + way + ", chosen " + choice)
                        .isCloseTo(own, within(RELATIVE * own)));
            }
        }
    }

    @ParameterizedTest
    @MethodSource("cases")
    void before_lost_fruit_it_is_the_cost_of_the_year_when_it_is_chosen(Budget budget) {
        Figures now = Figures.of(budget);
        byChoice(budget).forEach((way, f) -> {
            double total = f.number("yearly_cost_total");
            assertThat(now.number("way_yearly_cost_before_losses", way))
                    .as(way)
                    .isCloseTo(total, within(RELATIVE * total));
        });
    }
}
