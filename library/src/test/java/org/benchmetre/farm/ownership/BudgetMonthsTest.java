package org.benchmetre.farm.ownership;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.Stream;
import org.benchmetre.budget.Budget;
import org.benchmetre.farm.Near;
import org.benchmetre.farm.Sample;
import org.benchmetre.farm.SeededBlocks;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Receipts and costs by month add to those of the year, on both samples and on seeded random scenarios of each. */
class BudgetMonthsTest {

    private static final int SEEDS = 1000;

    private static final List<String> FIGURES = List.of(
            "receipts_total",
            "group_yearly_cost",
            "yield_costs_total",
            "labour_cost_total",
            "inputs_cost_total",
            "energy_cost_total",
            "budget_month_receipts",
            "budget_month_selling",
            "budget_month_work",
            "budget_month_inputs",
            "budget_month_water",
            "budget_month_energy",
            "budget_month_costs",
            "budget_month_left",
            "budget_month_so_far");

    static Stream<SeededBlocks> samples() {
        return Stream.of(Sample.troughHouse(), Sample.containerHouse())
                .flatMap(sample -> Stream.of(
                        blocks(sample, SEEDS),
                        blocks(Sample.with(sample, "price_level=0 1"), 0),
                        blocks(Sample.with(sample, "yield_per_plant=0 g/(plant crop)"), 0)));
    }

    private static SeededBlocks blocks(Budget sample, int seeds) {
        return new SeededBlocks(sample, seeds, FIGURES);
    }

    @ParameterizedTest
    @MethodSource("samples")
    void monthsAddToTheYear(SeededBlocks all) {
        for (int seed = 0; seed < all.cases(); seed++) {
            monthsAddToTheYear(all, seed);
        }
    }

    private static void monthsAddToTheYear(SeededBlocks all, int seed) {
        String at = "months, case " + seed;
        Near.adds(all.of("receipts_total", seed), at, all.along("budget_month_receipts", seed));
        double selling = all.sum("budget_month_selling", seed);
        double receipts = all.of("receipts_total", seed);
        Near.near(selling, all.of("yield_costs_total", seed), Math.max(receipts, Math.abs(selling)), at);
        Near.adds(all.of("labour_cost_total", seed), at, all.along("budget_month_work", seed));
        Near.adds(all.of("inputs_cost_total", seed), at, all.along("budget_month_inputs", seed));
        Near.adds(all.of("energy_cost_total", seed), at, all.along("budget_month_energy", seed));
        double watering = Stream.of("water_and_drain", "nutrient_solution", "pumping")
                .mapToDouble(group -> all.of("group_yearly_cost", group, seed))
                .sum();
        assertThat(watering).as(at).isPositive();
        Near.adds(watering, at, all.along("budget_month_water", seed));
        double costs = selling
                + all.of("labour_cost_total", seed)
                + all.of("inputs_cost_total", seed)
                + watering
                + all.of("energy_cost_total", seed);
        Near.adds(costs, at, all.along("budget_month_costs", seed));
        double left = all.of(all.sample().line("budget_month_so_far"), 11, seed);
        Near.near(left, receipts - costs, Math.max(receipts, costs), at);
        Near.near(all.sum("budget_month_left", seed), left, Math.max(receipts, costs), at);
    }
}
