package org.benchmetre.farm.ownership;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.benchmetre.budget.Budget;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.Texts;
import org.benchmetre.budget.run.Figures;
import org.benchmetre.farm.Near;
import org.benchmetre.farm.Sample;
import org.benchmetre.farm.SeededBlocks;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The enterprise budget closes, on both samples and on seeded random scenarios of each: arithmetic anyone can redo. */
class BudgetClosesTest {

    private static final int SEEDS = 1000;

    private static final Map<String, String> COUNTED_BY = Map.of(
            "budget_per_metre", "bench_metres",
            "budget_per_plant", "plant_count",
            "budget_per_area", "house_area",
            "budget_per_kg", "yield_total");

    private static final Map<String, String> TOTALS = Map.of(
            BudgetPart.RECEIPT, "receipts_total",
            BudgetPart.OPERATING, "operating_cost_total",
            BudgetPart.OWNERSHIP, "ownership_cost_total",
            BudgetPart.OVERHEAD, "budget_overhead");

    private static final List<String> FIGURES = List.of(
            "budget_quantity",
            "budget_price",
            "budget_value",
            "receipts_total",
            "operating_cost_total",
            "returns_above_operating",
            "ownership_cost_total",
            "overhead_total",
            "budget_overhead",
            "total_cost",
            "returns_above_total",
            "yearly_cost_total",
            "group_yearly_cost");

    static Stream<SeededBlocks> samples() {
        return Stream.of(Sample.troughHouse(), Sample.containerHouse()).map(sample -> blocks(sample, SEEDS));
    }

    /** Both samples with an entry at an end of its range, where a quantity is zero or a cost is. */
    static Stream<SeededBlocks> edges() {
        return Stream.of(Sample.troughHouse(), Sample.containerHouse())
                .flatMap(sample -> Stream.of(
                                "yield_per_plant=0 g/(plant crop)",
                                "price_level=0 1",
                                "marketable_share=0 1",
                                "first_grade_share=1 1",
                                "drain_fraction=0 1",
                                "water_price=0 money/m3",
                                "fuel_price=0 money/fuel_unit",
                                "heater_efficiency=1 1",
                                "wage_general=0 money/h",
                                "recovery_rate=0 real/a",
                                "operating_months=0 mo",
                                "management_cost=1e9 money/a")
                        .map(setting -> blocks(Sample.with(sample, setting), 0)));
    }

    private static SeededBlocks blocks(Budget sample, int seeds) {
        List<String> ids = new ArrayList<>(FIGURES);
        ids.addAll(COUNTED_BY.keySet());
        ids.addAll(COUNTED_BY.values());
        return new SeededBlocks(sample, seeds, ids);
    }

    @ParameterizedTest
    @MethodSource({"samples", "edges"})
    void closes(SeededBlocks all) {
        List<String> kinds = texts(all.sample(), "budget_kind");
        assertThat(kinds).hasSizeGreaterThan(30).containsAll(TOTALS.keySet()).allMatch(TOTALS::containsKey);
        for (int seed = 0; seed < all.cases(); seed++) {
            assertThat(seed == 0 || all.of("receipts_total", seed) > 0).isTrue();
            everyRowIsAQuantityAtAPriceForEachUnit(all, seed);
            theRowsOfASectionAddToItsTotal(all, seed, kinds);
            totalsFollowFromTotals(all, seed);
            twoRoutesToTheReturnsMeet(all, seed);
            groupsAddToYearlyCost(all, seed);
        }
    }

    private static void everyRowIsAQuantityAtAPriceForEachUnit(SeededBlocks all, int seed) {
        Line value = all.sample().line("budget_value");
        Line quantity = all.sample().line("budget_quantity");
        Line price = all.sample().line("budget_price");
        for (int row = 0; row < value.size(); row++) {
            double worth = all.of(value, row, seed);
            double product = all.of(quantity, row, seed) * all.of(price, row, seed);
            Near.near(worth, product, Math.abs(worth), value.address(row) + ", case " + seed);
            for (Map.Entry<String, String> unit : COUNTED_BY.entrySet()) {
                Line line = all.sample().line(unit.getKey());
                if (all.of(unit.getValue(), seed) == 0) {
                    assertThat(Texts.isNoNumber(all.of(line, row, seed))).isTrue();
                    continue;
                }
                double counted = all.of(line, row, seed) * all.of(unit.getValue(), seed);
                Near.near(
                        counted,
                        worth,
                        Math.abs(worth),
                        unit.getKey() + " of " + value.address(row) + ", case " + seed);
            }
        }
    }

    private static void theRowsOfASectionAddToItsTotal(SeededBlocks all, int seed, List<String> kinds) {
        Line value = all.sample().line("budget_value");
        TOTALS.forEach((section, total) -> {
            double[] rows = IntStream.range(0, value.size())
                    .filter(row -> kinds.get(row).equals(section))
                    .mapToDouble(row -> all.of(value, row, seed))
                    .toArray();
            Near.adds(all.of(total, seed), section + ", case " + seed, rows);
        });
    }

    private static void totalsFollowFromTotals(SeededBlocks all, int seed) {
        String at = "case " + seed;
        double receipts = all.of("receipts_total", seed);
        double operating = all.of("operating_cost_total", seed);
        double owning = all.of("ownership_cost_total", seed);
        double overhead = all.of("overhead_total", seed);
        double cost = all.of("yearly_cost_total", seed);
        Near.adds(all.of("returns_above_operating", seed), at, receipts, -operating);
        Near.adds(cost, at, operating, owning, overhead);
        same(all, seed, overhead, "budget_overhead");
        same(all, seed, cost, "total_cost");
    }

    private static void twoRoutesToTheReturnsMeet(SeededBlocks all, int seed) {
        String at = "returns, case " + seed;
        double receipts = all.of("receipts_total", seed);
        double cost = all.of("yearly_cost_total", seed);
        Near.adds(all.of("returns_above_total", seed), at, receipts, -cost);
        double owning = all.of("ownership_cost_total", seed);
        double overhead = all.of("overhead_total", seed);
        double above = all.of("returns_above_operating", seed);
        double largest = Math.max(receipts, cost);
        Near.near(above - owning - overhead, all.of("returns_above_total", seed), largest, at);
    }

    private static void groupsAddToYearlyCost(SeededBlocks all, int seed) {
        Near.adds(all.of("yearly_cost_total", seed), "groups, case " + seed, all.along("group_yearly_cost", seed));
    }

    private static void same(SeededBlocks all, int seed, double row, String... figures) {
        for (String figure : figures) {
            Near.near(all.of(figure, seed), row, Math.abs(row), figure + ", case " + seed);
        }
    }

    private static List<String> texts(Budget sample, String id) {
        Figures figures = Figures.of(sample);
        Line line = sample.line(id);
        return IntStream.range(0, line.size())
                .mapToObj(cell -> figures.text(line, cell))
                .toList();
    }
}
