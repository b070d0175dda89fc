package org.benchmetre.budget;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.benchmetre.budget.Formulas.number;
import static org.benchmetre.budget.Formulas.sum;

import java.util.Arrays;
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

    private WhatIf.Steps steps(Line entry, String name) {
        Axis axis = Axis.rows(name + "_step", "Steps of " + name, List.of("one", "two", "three"), 0);
        List<Formula> values = Arrays.stream(SHARES)
                .<Formula>mapToObj(share -> entry.times(number(share, Unit.ONE)))
                .toList();
        Line value = b.schedule("Steps", name).line(name + "_value", name, entry.unit(), new Rows(axis, values));
        return new WhatIf.Steps(entry, name, axis, value);
    }

    private Line table(Line target) {
        Formula table = WhatIf.table(b, "Cases", target, steps(price, "price"), steps(crop, "crop"));
        return b.schedule("What-if", "Left").line("left_table", "Left", target.unit(), table);
    }

    private static Budget typed(Budget budget, Line line, double value) {
        return budget.with(Map.of(line, Map.of(0, Given.number(value, line.unit()))));
    }

    @Test
    void eachCellIsWhatTypingOverWouldGive() {
        Line table = table(margin);
        Budget budget = b.build();
        Figures figures = Figures.of(budget);
        for (int i = 0; i < SHARES.length; i++) {
            for (int j = 0; j < SHARES.length; j++) {
                Budget typed = typed(typed(budget, price, 4 * SHARES[i]), crop, 50 * SHARES[j]);
                assertThat(figures.number(table, i * SHARES.length + j))
                        .isEqualTo(Figures.of(typed).number("stall_margin"));
            }
        }
        assertThat(figures.number(table, 0)).isEqualTo(4 * 0.5 * 50 * 0.5 - 30);
    }

    /** A line along days that both entries move has no room for two axes of cases: it is repeated for each step of the first. */
    @Test
    void whatMovesWithOneEntryIsRepeatedAlongItsStepsAndShared() {
        table(margin);
        Budget budget = b.build();
        assertThat(copies(budget, "_day_sold"))
                .singleElement()
                .satisfies(copy -> assertThat(copy.size()).isEqualTo(2 * SHARES.length));
        assertThat(copies(budget, "_day_taken"))
                .hasSize(SHARES.length)
                .allSatisfy(copy -> assertThat(copy.size()).isEqualTo(2 * SHARES.length));
        assertThat(budget.isRepeated(margin)).isFalse();
    }

    /** Single lines that both move are one line along both axes of cases. */
    @Test
    void singleLinesThatBothMoveAreRepeatedOnce() {
        Line all = b.schedule("Work", "All").line("stall_sold", "Sold", Unit.parse("kg"), sum(sold, days));
        Line worth = b.schedule("Work", "Worth").line("stall_worth", "Worth", money, all.times(price));
        Line table = table(worth);
        Budget budget = b.build();
        assertThat(copies(budget, "_stall_worth"))
                .singleElement()
                .satisfies(copy -> assertThat(copy.size()).isEqualTo(SHARES.length * SHARES.length));
        assertThat(Figures.of(budget).number(table, 5)).isEqualTo(4 * 1 * 50 * 2);
    }

    @Test
    void casesOfOneEntryAreALine() {
        Axis ends = Axis.rows("ends", "Ends", List.of("low", "high"), 0);
        Line found = WhatIf.along(
                b,
                "Cases",
                margin,
                WhatIf.cases(b, "Cases", price, ends, number(3, price.unit()), number(6, price.unit())));
        Budget budget = b.build();
        Figures figures = Figures.of(budget);
        assertThat(budget.isRepeated(found)).isTrue();
        assertThat(figures.number(found, 0)).isEqualTo(3 * 50 - 30);
        assertThat(figures.number(found, 1)).isEqualTo(6 * 50 - 30);
    }

    @Test
    void aLineAlongTwoAxesHasNoRoom() {
        Axis hours = Axis.rows("hour", "Hour", List.of("am", "pm"), 0);
        Line split = b.schedule("Work", "Split")
                .entry("hour_share", "Share", Unit.ONE, hours)
                .given(List.of(Given.number(0.5, Unit.ONE), Given.number(0.5, Unit.ONE)));
        Line block = b.schedule("Work", "Block").line("hour_sold", "Sold", Unit.parse("kg"), sold.times(split));
        Line byDay = b.schedule("Work", "Again").line("day_again", "Sold", Unit.parse("kg"), sum(block, hours));
        Line all = b.schedule("Work", "All").line("all_again", "Sold", Unit.parse("kg"), sum(byDay, days));
        assertThatThrownBy(() -> WhatIf.along(b, "Cases", all, steps(crop, "crop")))
                .isInstanceOf(FormulaException.class)
                .hasMessageContaining("hour_sold")
                .hasMessageContaining("no room");
    }

    @Test
    void anEntryThatMovesNothingIsRefused() {
        assertThatThrownBy(() -> table(sold))
                .isInstanceOf(FormulaException.class)
                .hasMessageContaining("fruit_price does not move day_sold");
    }

    private static List<Line> copies(Budget budget, String end) {
        return budget.lines().stream()
                .filter(line -> budget.isRepeated(line) && line.id().endsWith(end))
                .toList();
    }
}
