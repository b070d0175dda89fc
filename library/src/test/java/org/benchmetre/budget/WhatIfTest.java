package org.benchmetre.budget;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.benchmetre.budget.Formulas.sum;

import java.util.List;
import java.util.Map;
import org.benchmetre.budget.entry.Given;
import org.benchmetre.budget.run.Figures;
import org.benchmetre.budget.unit.Unit;
import org.junit.jupiter.api.Test;

/** A what-if table shows what the figure would be if the entries were typed over. */
class WhatIfTest {

    private final BudgetBuilder b = new BudgetBuilder("Stall", "EUR");
    private final Axis days = Axis.rows("day", "Day", List.of("mon", "tue"), 0);
    private final Unit money = Unit.MONEY;
    private final ScheduleBuilder entries = b.schedule("Entries", "Entries");
    private final Line price = entries.entry("fruit_price", "Price", Unit.parse("money/kg"))
            .given(Given.number(4, Unit.parse("money/kg")));
    private final Line crop =
            entries.entry("fruit_crop", "Crop", Unit.parse("kg")).given(Given.number(50, Unit.parse("kg")));
    private final Line cost = entries.entry("stall_cost", "Cost", money).given(Given.number(30, money));
    private final Line share = b.schedule("Entries", "Days")
            .entry("day_share", "Share", Unit.ONE, days)
            .given(List.of(Given.number(0.25, Unit.ONE), Given.number(0.75, Unit.ONE)));
    private final Line sold =
            b.schedule("Labour", "By day").line("day_sold", "Sold", Unit.parse("kg"), share.times(crop));
    private final Line taken = b.schedule("Labour", "Taken").line("day_taken", "Taken", money, sold.times(price));
    private final Line margin = b.schedule("Labour", "Result")
            .line("stall_margin", "Left", money, sum(taken, days).minus(cost));

    private static final double[] SHARES = {0.5, 1, 2};

    @Test
    void eachCellIsWhatTypingOverWouldGive() {
        Line table = WhatIf.table(
                b,
                "What-if",
                "Left, by price and crop",
                margin,
                new WhatIf.Steps(price, "price", "Price", SHARES),
                new WhatIf.Steps(crop, "crop", "Crop", SHARES));
        Budget budget = b.build();
        Figures figures = Figures.of(budget);
        for (int i = 0; i < SHARES.length; i++) {
            for (int j = 0; j < SHARES.length; j++) {
                Budget typed = budget.with(Map.of(
                        price, Map.of(0, Given.number(4 * SHARES[i], price.unit())),
                        crop, Map.of(0, Given.number(50 * SHARES[j], crop.unit()))));
                assertThat(figures.number(table, i * SHARES.length + j))
                        .isEqualTo(Figures.of(typed).number("stall_margin"));
            }
        }
        assertThat(figures.number(table, 0)).isEqualTo(4 * 0.5 * 50 * 0.5 - 30);
    }

    @Test
    void whatMovesWithOneEntryIsRepeatedOnceAStep() {
        WhatIf.table(
                b,
                "What-if",
                "Left",
                margin,
                new WhatIf.Steps(price, "price", "Price", SHARES),
                new WhatIf.Steps(crop, "crop", "Crop", SHARES));
        Budget budget = b.build();
        long copiesOfSold = budget.lines().stream()
                .filter(line -> budget.isRepeated(line) && line.id().endsWith("_day_sold"))
                .count();
        long copiesOfTaken = budget.lines().stream()
                .filter(line -> budget.isRepeated(line) && line.id().endsWith("_day_taken"))
                .count();
        assertThat(copiesOfSold).isEqualTo(3);
        assertThat(copiesOfTaken).isEqualTo(9);
        assertThat(budget.isRepeated(margin)).isFalse();
    }

    @Test
    void anEntryThatMovesNothingIsRefused() {
        WhatIf.Steps steps = new WhatIf.Steps(price, "price", "Price", SHARES);
        assertThatThrownBy(() ->
                        WhatIf.table(b, "What-if", "Left", sold, steps, new WhatIf.Steps(crop, "crop", "Crop", SHARES)))
                .isInstanceOf(FormulaException.class)
                .hasMessageContaining("fruit_price does not move day_sold");
    }
}
