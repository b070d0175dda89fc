package org.benchmetre.budget;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.benchmetre.budget.Formulas.none;
import static org.benchmetre.budget.Formulas.number;
import static org.benchmetre.budget.Formulas.previous;
import static org.benchmetre.budget.Formulas.sum;

import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import org.benchmetre.budget.entry.Given;
import org.benchmetre.budget.run.Figures;
import org.benchmetre.budget.unit.Unit;
import org.junit.jupiter.api.Test;

/** Cases that move several entries at once show what the figures would be with all of them typed over. */
class WhatIfSeveralTest {

    private static final Unit MONEY = Unit.MONEY;
    private static final double[] PRICES = {4, 3, 5};
    private static final double[] CROPS = {50, 20, 80};

    private final BudgetBuilder b = new BudgetBuilder("Stall", "EUR");
    private final Axis days = Axis.periods("day", "Day", List.of("mon", "tue"));
    private final Axis shocks = Axis.rows("shock", "Shocks", List.of("plan", "poor", "good"), 0);
    private final ScheduleBuilder entries = b.schedule("Entries", "Entries");
    private final Line price = entries.entry("fruit_price", "Price", Unit.parse("money/kg"))
            .given(Given.number(PRICES[0], Unit.parse("money/kg")));
    private final Line crop =
            entries.entry("fruit_crop", "Crop", Unit.parse("kg")).given(Given.number(CROPS[0], Unit.parse("kg")));
    private final Line rent = entries.entry("stall_rent", "Rent", MONEY).given(Given.number(30, MONEY));
    private final Line share = b.schedule("Entries", "Days")
            .entry("day_share", "Share", Unit.ONE, days)
            .given(List.of(Given.number(0.25, Unit.ONE), Given.number(0.75, Unit.ONE)));
    private final Line sold = b.schedule("Work", "Day").line("day_sold", "Sold", Unit.parse("kg"), share.times(crop));
    private final Line taken = b.schedule("Work", "Day").line("day_taken", "Taken", MONEY, sold.times(price));
    private final Line till = till();
    private final Line left = b.schedule("Work", "Left")
            .line("stall_left", "Left", MONEY, sum(taken, days).minus(rent));
    private final Line twice = b.schedule("Work", "Rent").line("rent_twice", "Twice", MONEY, rent.plus(rent));

    /** A balance reads its own day before. */
    private Line till() {
        ScheduleBuilder s = b.schedule("Work", "Till");
        Line balance = s.declare("till_balance", "In the till", MONEY, Kind.NUMBER, List.of(days), "");
        b.define(balance, previous(balance, none(MONEY)).plus(taken));
        return balance;
    }

    private WhatIf.Steps steps(Line entry, double... values) {
        return WhatIf.cases(
                b,
                "Cases",
                entry,
                shocks,
                IntStream.range(0, values.length)
                        .mapToObj(i -> number(values[i], entry.unit()))
                        .toArray(Formula[]::new));
    }

    private Map<Line, Line> both(Line... targets) {
        return WhatIf.along(b, "Cases", "stress", List.of(steps(price, PRICES), steps(crop, CROPS)), List.of(targets));
    }

    private Figures typed(Budget budget, int at) {
        return Figures.of(budget.with(Map.of(
                price, Map.of(0, Given.number(PRICES[at], price.unit())),
                crop, Map.of(0, Given.number(CROPS[at], crop.unit())))));
    }

    @Test
    void eachCaseIsWhatTypingAllEntriesOverWouldGive() {
        Map<Line, Line> cases = both(left, till);
        Budget budget = b.build();
        Figures figures = Figures.of(budget);
        for (int at = 0; at < PRICES.length; at++) {
            Figures typed = typed(budget, at);
            assertThat(figures.number(cases.get(left), at)).isEqualTo(typed.number(left, 0));
            for (int day = 0; day < days.size(); day++) {
                assertThat(figures.number(cases.get(till), day * PRICES.length + at))
                        .isEqualTo(typed.number(till, day));
            }
        }
        assertThat(figures.number(cases.get(left), 1)).isEqualTo(3 * 20 - 30);
        assertThat(figures.number(cases.get(till), 1)).isEqualTo(3 * 20 * 0.25);
    }

    @Test
    void eachLineIsRepeatedOnceForAllEntriesAndFigures() {
        both(left, till, taken);
        Budget budget = b.build();
        assertThat(budget.lines().stream()
                        .filter(budget::isRepeated)
                        .map(Line::id)
                        .filter(id -> id.startsWith("case_stress_")))
                .containsExactlyInAnyOrder(
                        "case_stress_day_sold",
                        "case_stress_day_taken",
                        "case_stress_till_balance",
                        "case_stress_stall_left");
        assertThat(budget.isRepeated(left)).isFalse();
    }

    @Test
    void whatNoEntryMovesStandsForItself() {
        Map<Line, Line> cases = both(twice, left);
        b.build();
        assertThat(cases).containsEntry(twice, twice);
        assertThat(cases.keySet()).containsExactly(twice, left);
    }

    @Test
    void aFigureThatAnotherFollowsFromIsReplacedAndNotRepeated() {
        Map<Line, Line> cases =
                WhatIf.along(b, "Cases", "deep", List.of(steps(crop, CROPS), steps(left, 7, 8, 9)), List.of(left));
        Budget budget = b.build();
        assertThat(Figures.of(budget).number(cases.get(left), 2)).isEqualTo(9);
        assertThat(budget.lines().stream().map(Line::id)).noneMatch(id -> id.startsWith("case_deep_"));
    }

    @Test
    void casesAlongDifferentAxesOrTwiceOfOneEntryAreRefused() {
        Axis ends = Axis.rows("ends", "Ends", List.of("low", "high"), 0);
        WhatIf.Steps three = steps(price, PRICES);
        WhatIf.Steps two = WhatIf.cases(b, "Cases", crop, ends, number(1, crop.unit()), number(2, crop.unit()));
        assertThatThrownBy(() -> WhatIf.along(b, "Cases", "stress", List.of(three, two), List.of(left)))
                .isInstanceOf(FormulaException.class)
                .hasMessageContaining("run along one axis");
        assertThatThrownBy(() -> WhatIf.along(b, "Cases", "stress", List.of(three, three), List.of(left)))
                .isInstanceOf(FormulaException.class)
                .hasMessageContaining("fruit_price")
                .hasMessageContaining("given twice");
        assertThatThrownBy(() -> WhatIf.along(b, "Cases", "stress", List.of(), List.of(left)))
                .isInstanceOf(FormulaException.class);
    }
}
