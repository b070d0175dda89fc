package org.benchmetre.farm.ownership;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.benchmetre.budget.Budget;
import org.benchmetre.budget.run.Figures;
import org.benchmetre.farm.Near;
import org.benchmetre.farm.Sample;
import org.benchmetre.farm.SeededBlocks;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** A break-even fed back into the budget leaves nothing, whatever moves with price and yield; two tasks are counted by fruit. */
class BreakEvensTest {

    private static final int SEEDS = 200;

    private static final List<String> FIGURES = List.of(
            "receipts_total",
            "total_cost",
            "price_average",
            "returns_above_operating",
            "returns_above_total",
            "break_even_price_operating",
            "break_even_yield_operating",
            "break_even_price",
            "break_even_yield");

    /** A sample, and operating or total. */
    record Case(Budget sample, String over) {}

    static Stream<Case> cases() {
        return Stream.of(Sample.troughHouse(), Sample.containerHouse())
                .map(sample -> Sample.with(
                        sample,
                        "task_driver[scouting]=yield_kg",
                        "task_hours_per_driver[scouting]=0.01 h/driver",
                        "task_times_unit[scouting]=a",
                        "task_driver[protection_products]=yield_kg",
                        "task_input_price[protection_products]=0.2 money/driver"))
                .flatMap(sample -> Stream.of("operating", "total").map(over -> new Case(sample, over)));
    }

    private static String id(String what, Case c) {
        return "break_even_" + what + (c.over().equals("total") ? "" : "_" + c.over());
    }

    @ParameterizedTest
    @MethodSource("cases")
    void atTheBreakEvenPriceNothingIsLeft(Case c) {
        SeededBlocks all = new SeededBlocks(c.sample(), SEEDS, FIGURES);
        String id = id("price", c);
        double[] levels = IntStream.range(0, all.cases())
                .mapToDouble(seed -> all.input("price_level", seed) * all.of(id, seed) / all.of("price_average", seed))
                .toArray();
        assertThat(IntStream.range(0, all.cases()).noneMatch(seed -> all.hasReason(id, seed)))
                .isTrue();
        all.replace("price_level", levels);
        IntStream.range(0, all.cases()).forEach(seed -> nothingIsLeft(all, c.over(), seed));
    }

    @ParameterizedTest
    @MethodSource("cases")
    void atTheBreakEvenYieldNothingIsLeft(Case c) {
        SeededBlocks all = new SeededBlocks(c.sample(), SEEDS, FIGURES);
        String id = id("yield", c);
        boolean[] reason = new boolean[all.cases()];
        double[] yields = new double[all.cases()];
        int numbers = 0;
        for (int seed = 0; seed < all.cases(); seed++) {
            reason[seed] = all.hasReason(id, seed);
            yields[seed] = reason[seed]
                    ? all.input("yield_per_plant", seed)
                    : all.of(id, seed) / all.input("yield_level", seed);
            numbers += reason[seed] ? 0 : 1;
        }
        assertThat(numbers).isGreaterThan(all.cases() / 2);
        all.replace("yield_per_plant", yields);
        IntStream.range(0, all.cases())
                .filter(seed -> !reason[seed])
                .forEach(seed -> nothingIsLeft(all, c.over(), seed));
    }

    /** Without fruit there is no picking, no task counted by fruit and no dry plant to go by: no break-even rather than a wrong one. */
    @ParameterizedTest
    @MethodSource("cases")
    void withoutYieldThereIsNoBreakEven(Case c) {
        Figures f = Figures.of(Sample.with(c.sample(), "yield_per_plant=0 g/(plant crop)"));
        assertThat(f.text(id("yield", c))).isEqualTo("no yield, or a kg leaves nothing");
        assertThat(f.text(id("price", c))).isEqualTo("no yield");
    }

    /** However little fruit the plan has, the break-even is the same. */
    @ParameterizedTest
    @MethodSource("cases")
    void theBreakEvenYieldDoesNotDependOnThePlannedYield(Case c) {
        String id = id("yield", c);
        double found = Figures.of(c.sample()).number(id);
        Figures little = Figures.of(Sample.with(c.sample(), "yield_per_plant=0.001 g/(plant crop)"));
        Near.near(little.number(id), found, found, id);
    }

    private static void nothingIsLeft(SeededBlocks all, String over, int seed) {
        double size = Math.max(all.of("receipts_total", seed), all.of("total_cost", seed));
        Near.near(all.of("returns_above_" + over, seed), 0, size, "left above " + over + ", case " + seed);
    }
}
