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

/** Receipts and cash by month add to those of the year, on both samples and on seeded random scenarios of each. */
class BudgetMonthsTest {

    private static final int SEEDS = 1000;

    private static final List<String> FIGURES = List.of(
            "receipts_total",
            "yield_costs_total",
            "labour_cash_total",
            "inputs_cost_total",
            "energy_cost_total",
            "watering_cost_chosen",
            "watering_cash",
            "care_cash",
            "overhead_cash",
            "running_cash",
            "parts_repairs_total",
            "charges_cash",
            "used_up_cash",
            "plants_order_cost",
            "crop_plants_life",
            "plants_cash_year",
            "cash_without_month",
            "cash_out_year",
            "cash_left_year",
            "water_given_chosen",
            "month_water_given",
            "budget_month_receipts",
            "budget_month_selling",
            "budget_month_water",
            "budget_month_plants",
            "budget_month_costs",
            "season_receipts",
            "season_cash_out",
            "season_cash_so_far",
            "season_cash_lowest");

    static Stream<SeededBlocks> samples() {
        return Stream.of(Sample.troughHouse(), Sample.containerHouse())
                .flatMap(sample -> Stream.of(
                        blocks(sample, SEEDS),
                        blocks(Sample.with(sample, "planting_month=jan"), 0),
                        blocks(Sample.with(sample, "crops_per_year=2 crop/a"), 0),
                        blocks(Sample.with(sample, "crops_per_year=0.5 crop/a"), 0),
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
        double receipts = all.of("receipts_total", seed);
        Near.adds(receipts, at, all.along("budget_month_receipts", seed));
        Near.adds(receipts, at, all.along("season_receipts", seed));
        double selling = all.sum("budget_month_selling", seed);
        Near.near(selling, all.of("yield_costs_total", seed), Math.max(receipts, Math.abs(selling)), at);
        assertThat(all.of("watering_cost_chosen", seed)).as(at).isPositive();
        Near.adds(all.of("watering_cost_chosen", seed), at, all.along("budget_month_water", seed));
        Near.adds(all.of("water_given_chosen", seed), at, all.along("month_water_given", seed));
        Near.adds(all.of("plants_cash_year", seed), at, all.along("budget_month_plants", seed));
        Near.adds(all.of("cash_out_year", seed), at, all.along("budget_month_costs", seed));
        Near.adds(all.of("cash_out_year", seed), at, all.along("season_cash_out", seed));
        Near.near(all.of("cash_left_year", seed), receipts - all.of("cash_out_year", seed), receipts, at);
    }

    /** Only plants and what is used up, which stand in the cash of the years where a life ends, are in the calendar and not in a year's running cash. */
    @ParameterizedTest
    @MethodSource("samples")
    void theYearAgreesWithTheRunningCashOfAFullYear(SeededBlocks all) {
        for (int seed = 0; seed < all.cases(); seed++) {
            String at = "year, case " + seed;
            Near.adds(
                    all.of("cash_out_year", seed),
                    at,
                    all.of("yield_costs_total", seed),
                    all.of("running_cash", seed),
                    all.of("parts_repairs_total", seed),
                    all.of("charges_cash", seed),
                    all.of("used_up_cash", seed),
                    all.of("plants_cash_year", seed));
            Near.adds(
                    all.of("cash_without_month", seed),
                    at,
                    all.of("care_cash", seed),
                    all.of("overhead_cash", seed),
                    all.of("parts_repairs_total", seed),
                    all.of("charges_cash", seed),
                    all.of("used_up_cash", seed));
            double bought = Math.max(1, 1 / all.of("crop_plants_life", "crop", seed));
            Near.adds(all.of("plants_cash_year", seed), at, bought * all.of("plants_order_cost", seed));
        }
    }

    @ParameterizedTest
    @MethodSource("samples")
    void cashSoFarIsWhatTheMonthsLeave(SeededBlocks all) {
        for (int seed = 0; seed < all.cases(); seed++) {
            String at = "cash so far, case " + seed;
            double[] in = all.along("season_receipts", seed);
            double[] out = all.along("season_cash_out", seed);
            double[] soFar = all.along("season_cash_so_far", seed);
            double size = all.of("receipts_total", seed) + all.of("cash_out_year", seed);
            double sum = 0;
            double least = Double.POSITIVE_INFINITY;
            for (int month = 0; month < soFar.length; month++) {
                sum += in[month] - out[month];
                least = Math.min(least, soFar[month]);
                Near.near(soFar[month], sum, size, at);
            }
            Near.near(sum, all.of("cash_left_year", seed), size, at);
            assertThat(all.of("season_cash_lowest", seed)).as(at).isEqualTo(least);
        }
    }
}
