package org.benchmetre.farm.ownership;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.Stream;
import org.benchmetre.budget.Budget;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.run.Figures;
import org.benchmetre.farm.Near;
import org.benchmetre.farm.Sample;
import org.benchmetre.farm.SeededBlocks;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/** What of the enterprise budget is paid in cash, by another route: the cash of a full year in the cash flow, and what goes beside it. */
class PaidInCashTest {

    private static final int SEEDS = 200;

    static Stream<SeededBlocks> plans() {
        return Stream.of(Sample.troughHouse(), Sample.containerHouse())
                .map(plan -> new SeededBlocks(
                        Sample.with(plan, "packing_wage_class=family"),
                        SEEDS,
                        List.of(
                                "budget_total_cash",
                                "cost_not_in_cash",
                                "total_cost",
                                "running_cash",
                                "yield_costs_total",
                                "parts_repairs_total",
                                "budget_value",
                                "budget_cash",
                                "budget_quantity",
                                "plants_used_up",
                                "used_up_cash",
                                "hired_hours_total",
                                "family_hours_total",
                                "labour_cash_total",
                                "family_wage_total")));
    }

    @ParameterizedTest
    @MethodSource("plans")
    void it_is_that_of_the_cash_flow_and_what_is_used_up(SeededBlocks all) {
        for (int seed = 0; seed < all.cases(); seed++) {
            String at = "case " + seed;
            double paid = all.of("budget_total_cash", "costs", seed);
            Near.adds(
                    paid,
                    at,
                    all.of("running_cash", seed),
                    all.of("yield_costs_total", seed),
                    all.of("parts_repairs_total", seed),
                    all.of("budget_value", "own_charges", seed),
                    all.of("used_up_cash", seed),
                    all.of("plants_used_up", seed));
            Near.adds(all.of("total_cost", seed), at, paid, all.of("cost_not_in_cash", seed));
        }
    }

    @ParameterizedTest
    @MethodSource("plans")
    void hired_work_and_work_of_the_family_stand_apart(SeededBlocks all) {
        Line quantity = all.sample().line("budget_quantity");
        List<String> hired = quantity.axes().get(0).keys().stream()
                .filter(key -> key.startsWith("work_") && !key.equals("work_of_family"))
                .toList();
        assertThat(hired).hasSizeGreaterThan(5);
        for (int seed = 0; seed < all.cases(); seed++) {
            Near.adds(all.of("hired_hours_total", seed), "hours", rows(all, "budget_quantity", hired, seed));
            Near.adds(all.of("labour_cash_total", seed), "cash", rows(all, "budget_value", hired, seed));
            Near.adds(all.of("family_hours_total", seed), "family", all.of("budget_quantity", "work_of_family", seed));
            Near.adds(all.of("family_wage_total", seed), "family", all.of("budget_value", "work_of_family", seed));
            assertThat(all.of("budget_cash", "work_of_family", seed)).isZero();
        }
    }

    private static double[] rows(SeededBlocks all, String id, List<String> keys, int seed) {
        return keys.stream().mapToDouble(key -> all.of(id, key, seed)).toArray();
    }

    @ParameterizedTest
    @CsvSource({
        "management, management_by=own, management_by=hired",
        "land, land_of=own, land_of=rented",
        "house_charge, house_of=own, house_of=rented"
    })
    void what_is_ones_own_costs_no_cash(String row, String own, String other) {
        Budget plan = Sample.with(
                Sample.troughHouse(),
                "management_cost=3000 money/a",
                "land_rent=0.5 money/(m2 a)",
                "house_charge_by=bench_week",
                "bench_week_charge=0.2 money/(m wk)",
                "bench_weeks_charged=40 wk/a");
        assertThat(number(Sample.with(plan, own), "budget_cash", row)).isZero();
        assertThat(number(Sample.with(plan, other), "budget_cash", row))
                .isPositive()
                .isEqualTo(number(plan, "budget_value", row));
    }

    @Test
    void capital_recovery_and_interest_cost_no_cash() {
        Budget plan = Sample.troughHouse();
        for (String key : plan.line("budget_cash").axes().get(0).keys()) {
            boolean recovered = key.startsWith("own_") && !key.equals("own_charges");
            if (recovered || key.equals("operating_interest")) {
                assertThat(number(plan, "budget_cash", key)).as(key).isZero();
            }
        }
        assertThat(number(plan, "budget_value", "own_substrate")).isPositive();
        assertThat(number(plan, "budget_value", "operating_interest")).isPositive();
    }

    private static double number(Budget plan, String id, String key) {
        Line line = plan.line(id);
        return Figures.of(plan).number(line, line.axes().get(0).indexOf(key));
    }
}
