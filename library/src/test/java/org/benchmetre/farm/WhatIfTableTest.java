package org.benchmetre.farm;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.stream.Stream;
import org.benchmetre.budget.Budget;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.run.Figures;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Each cell of the table of price by yield is what the budget shows with both entries typed over. */
class WhatIfTableTest {

    private static final int STEPS = 5;

    static Stream<Budget> samples() {
        return Stream.of(Sample.troughHouse(), Sample.containerHouse())
                .flatMap(sample -> Stream.of(sample, Seeded.budget(sample, 7), Seeded.budget(sample, 8)));
    }

    @ParameterizedTest
    @MethodSource("samples")
    void eachCellIsTheBudgetTypedOver(Budget budget) {
        Figures f = Figures.of(budget);
        Line table = budget.line("whatif_returns");
        assertThat(table.size()).isEqualTo(STEPS * STEPS);
        int asEntered = 0;
        for (int down = 0; down < STEPS; down++) {
            for (int across = 0; across < STEPS; across++) {
                double grams = f.number(budget.line("whatif_yield"), down);
                double level = f.number(budget.line("whatif_price_level"), across);
                double found = f.number(table, down * STEPS + across);
                Figures typed = new Cells(budget)
                        .number("yield_per_plant", "", grams)
                        .number("price_level", "", level)
                        .figures();
                near(found, typed, table.address(down * STEPS + across));
                assertThat(f.number(budget.line("whatif_price"), across))
                        .isCloseTo(typed.number("price_average"), within(1e-12 * (1 + typed.number("price_average"))));
                if (grams == f.number("yield_per_plant") && level == f.number("price_level")) {
                    near(found, f, "as entered");
                    asEntered++;
                }
            }
        }
        assertThat(asEntered).isPositive();
    }

    /** A step that is changed moves its row and no other. */
    @ParameterizedTest
    @MethodSource("samples")
    void aStepThatIsChangedMovesItsOwnRow(Budget budget) {
        Figures before = Figures.of(budget);
        Figures after = Figures.of(Sample.with(budget, "whatif_yield_share[step_2]=1 1"));
        Line table = budget.line("whatif_returns");
        for (int cell = 0; cell < table.size(); cell++) {
            int like = cell / STEPS == 1 ? cell + STEPS : cell;
            assertThat(after.number(table, cell)).isFinite().isEqualTo(before.number(table, like));
        }
    }

    private static void near(double found, Figures typed, String what) {
        double expected = typed.number("returns_above_total_per_area");
        double size = Math.max(typed.number("receipts_total"), typed.number("total_cost")) / typed.number("house_area");
        Near.near(found, expected, size, what);
    }
}
