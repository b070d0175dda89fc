package org.benchmetre.farm.whole;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.benchmetre.budget.Axis;
import org.benchmetre.budget.Budget;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.Texts;
import org.benchmetre.farm.Near;
import org.benchmetre.farm.Sample;
import org.benchmetre.farm.SeededBlocks;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The accounts for each measure and the parts of a metre's money, on both samples and seeded scenarios: arithmetic anyone can redo. */
class AccountsTest {

    private static final int SEEDS = 500;
    private static final double METRES_OF_A_FOOT = 0.3048;
    private static final double KILOGRAMS_OF_A_POUND = 0.45359237;

    private static final Map<String, String> TOTALS = Map.of(
            "receipts", "receipts_total",
            "operating", "operating_cost_total",
            "ownership", "ownership_cost_total",
            "overhead", "overhead_total",
            "costs", "total_cost",
            "returns", "returns_above_total");

    private static final Map<String, String> COUNTED_BY = Map.of(
            "account_per_metre", "bench_metres",
            "account_per_plant", "plant_count",
            "account_per_area", "house_area",
            "account_per_kg", "yield_total");

    static Stream<SeededBlocks> cases() {
        return Stream.of(
                blocks(Sample.troughHouse(), SEEDS),
                blocks(Sample.containerHouse(), SEEDS),
                blocks(Sample.with(Sample.troughHouse(), "yield_per_plant=0 g/(plant crop)"), 0),
                blocks(Sample.with(Sample.containerHouse(), "price_level=0 1"), 0));
    }

    private static SeededBlocks blocks(Budget sample, int seeds) {
        List<String> ids = new ArrayList<>(List.of(
                "account_total",
                "account_per_foot",
                "account_per_square_foot",
                "account_per_pound",
                "money_of_metre",
                "money_part_per_metre"));
        ids.addAll(TOTALS.values());
        ids.addAll(COUNTED_BY.keySet());
        ids.addAll(COUNTED_BY.values());
        return new SeededBlocks(sample, seeds, ids);
    }

    @ParameterizedTest
    @MethodSource("cases")
    void accounts_are_those_of_the_budget_for_each_measure(SeededBlocks all) {
        for (int seed = 0; seed < all.cases(); seed++) {
            for (Map.Entry<String, String> account : TOTALS.entrySet()) {
                String at = account.getKey() + ", case " + seed;
                double total = all.of("account_total", account.getKey(), seed);
                Near.near(total, all.of(account.getValue(), seed), Math.abs(total), at);
                eachMeasureTimesItsCountIsTheTotal(all, account.getKey(), seed, total);
                halves(all, account.getKey(), seed);
            }
            double[] returns = {all.of("account_total", "receipts", seed), -all.of("account_total", "costs", seed)};
            Near.adds(all.of("account_total", "returns", seed), "returns, case " + seed, returns);
            Near.adds(
                    all.of("account_total", "costs", seed),
                    "costs, case " + seed,
                    all.of("account_total", "operating", seed),
                    all.of("account_total", "ownership", seed),
                    all.of("account_total", "overhead", seed));
        }
    }

    private static void eachMeasureTimesItsCountIsTheTotal(SeededBlocks all, String account, int seed, double total) {
        COUNTED_BY.forEach((measure, count) -> {
            double each = all.of(measure, account, seed);
            if (all.of(count, seed) == 0) {
                assertThat(Texts.isNoNumber(each)).as(measure).isTrue();
            } else {
                Near.near(each * all.of(count, seed), total, Math.abs(total), measure + ", case " + seed);
            }
        });
    }

    private static void halves(SeededBlocks all, String account, int seed) {
        exact(all, account, seed, "account_per_foot", "account_per_metre", METRES_OF_A_FOOT);
        exact(all, account, seed, "account_per_square_foot", "account_per_area", METRES_OF_A_FOOT * METRES_OF_A_FOOT);
        if (all.of("yield_total", seed) == 0) {
            assertThat(Texts.isNoNumber(all.of("account_per_pound", account, seed)))
                    .isTrue();
        } else {
            exact(all, account, seed, "account_per_pound", "account_per_kg", KILOGRAMS_OF_A_POUND);
        }
    }

    private static void exact(SeededBlocks all, String account, int seed, String us, String metric, double factor) {
        double expected = all.of(metric, account, seed) * factor;
        Near.near(all.of(us, account, seed), expected, Math.abs(expected), us + ", case " + seed);
    }

    @ParameterizedTest
    @MethodSource("cases")
    void parts_of_the_money_add_to_receipts_and_to_all_costs(SeededBlocks all) {
        Line money = all.sample().line("money_of_metre");
        Axis parts = money.axes().get(0);
        assertThat(parts.size()).isEqualTo(11);
        for (int seed = 0; seed < all.cases(); seed++) {
            double[] receipts = new double[parts.size()];
            double[] costs = new double[parts.size()];
            for (int part = 0; part < parts.size(); part++) {
                receipts[part] = all.of(money, 2 * part, seed);
                costs[part] = all.of(money, 2 * part + 1, seed);
                assertThat(receipts[part] == 0 || costs[part] == 0).isTrue();
            }
            Near.adds(all.of("account_per_metre", "receipts", seed), "receipts, case " + seed, receipts);
            Near.adds(all.of("account_per_metre", "costs", seed), "costs, case " + seed, costs);
        }
    }
}
