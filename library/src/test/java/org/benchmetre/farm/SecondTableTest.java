package org.benchmetre.farm;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.benchmetre.Benchmetre;
import org.benchmetre.PlanBuilder;
import org.benchmetre.ScenarioException;
import org.benchmetre.budget.Budget;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.Structure;
import org.benchmetre.budget.run.Figures;
import org.benchmetre.farm.levers.LeverList;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The second what-if table takes any two levers, and each of its cells is the plan with both entries set. */
class SecondTableTest {

    private static final int STEPS = 5;

    /** Every two levers, now one and now the other of them down. */
    static Stream<List<String>> pairs() {
        List<String> names = LeverList.names();
        return IntStream.range(0, names.size())
                .boxed()
                .flatMap(one -> IntStream.range(0, one)
                        .mapToObj(two -> (one + two) % 2 == 0
                                ? List.of(names.get(one), names.get(two))
                                : List.of(names.get(two), names.get(one))));
    }

    private static Budget withTable(Budget sample, List<String> pair) {
        Structure s = sample.structure();
        return FarmBudget.of(new Structure(
                s.title(),
                s.currency(),
                s.kind(),
                s.tables(),
                Map.of(LeverList.DOWN, pair.get(0), LeverList.ACROSS, pair.get(1))));
    }

    @ParameterizedTest
    @MethodSource("pairs")
    void everyPairHasATable(List<String> pair) {
        Budget budget = withTable(Sample.containerHouse(), pair);
        Figures f = Figures.of(budget);
        Line table = budget.line("second_returns");
        assertThat(table.size()).isEqualTo(STEPS * STEPS);
        for (int cell : new int[] {1, 9, 15}) {
            double down = f.number(budget.line("second_down_value"), cell / STEPS);
            double across = f.number(budget.line("second_across_value"), cell % STEPS);
            Figures typed = new Cells(budget)
                    .number(pair.get(0), "", down)
                    .number(pair.get(1), "", across)
                    .figures();
            double size = Math.max(typed.number("receipts_total"), typed.number("total_cost")) / f.number("house_area");
            Near.near(f.number(table, cell), typed.number("returns_above_total_per_area"), size, pair + " " + cell);
        }
    }

    @Test
    void anUnknownLeverIsAFault() {
        assertThat(faults("second_table_down", "pickin_rate"))
                .contains("pickin_rate")
                .contains("one of price_level")
                .contains("picking_rate");
    }

    @Test
    void bothLeversMayNotBeTheSame() {
        assertThat(faults("second_table_across", "picking_rate"))
                .contains("another word than that of second_table_down");
    }

    @Test
    void aLeverThatIsTheUsualOtherMovesItAside() throws Exception {
        Budget budget = house().row("irrigation", "tape", Map.of("lines", "2", "outlet_spacing", "0.2"))
                .row("plant_stock", "tray", Map.of("price", "0.50", "price_year", "2026"))
                .entry("second_table_down", "wage_level")
                .build()
                .budget();
        assertThat(budget.structure().choices())
                .containsEntry("second_table_down", "wage_level")
                .containsEntry("second_table_across", "price_level");
        assertThat(budget.line("second_down_value").label()).isEqualTo("Wages");
    }

    private static PlanBuilder house() {
        return Benchmetre.plan("strawberry");
    }

    private static String faults(String line, String word) {
        try {
            house().entry(line, word).build();
            return "";
        } catch (ScenarioException e) {
            return e.getMessage();
        }
    }
}
