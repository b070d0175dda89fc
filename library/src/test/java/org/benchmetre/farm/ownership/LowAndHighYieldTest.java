package org.benchmetre.farm.ownership;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.stream.Stream;
import org.assertj.core.data.Offset;
import org.benchmetre.budget.Budget;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.run.Figures;
import org.benchmetre.farm.Sample;
import org.benchmetre.farm.Seeded;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/** The columns at low and high yield are the plan with that yield entered, row by row. */
class LowAndHighYieldTest {

    private static final int SEEDS = 20;

    /** A few operations on doubles, against the largest amount of the year. */
    private static final double RELATIVE = 1e-11;

    static Stream<Budget> plans() {
        Budget trough = Sample.with(
                Sample.troughHouse(),
                "task_driver[scouting]=yield_kg",
                "task_hours_per_driver[scouting]=0.01 h/driver",
                "task_times_unit[scouting]=a",
                "task_input_price[scouting]=0.2 money/driver",
                "task_price_year[scouting]=2026 1");
        return Stream.of(
                trough,
                Sample.with(trough, "picking_wage_class=family", "task_wage_class[scouting]=family"),
                Sample.with(trough, "packing_wage_class=skilled", "receipts_by=one_price"),
                Sample.with(trough, "channel_most[wholesale]=60 kg/mo", "channel_most[direct]=150 kg/mo"),
                Sample.containerHouse());
    }

    @ParameterizedTest
    @MethodSource("plans")
    void they_are_the_plan_with_that_yield(Budget plan) {
        for (int seed = 0; seed <= SEEDS; seed++) {
            Budget budget = seed == 0 ? plan : Seeded.budget(plan, seed);
            Figures base = Figures.of(budget);
            for (String end : List.of("low", "high")) {
                double grams = base.number("yield_per_plant_" + end);
                Figures entered = Figures.of(Sample.with(budget, "yield_per_plant=" + grams + " g/(plant crop)"));
                same(base, "budget_" + end, entered, "budget_value", seed);
                assertThat(last(base, "budget_total_" + end))
                        .isCloseTo(entered.number("returns_above_total"), near(entered));
            }
        }
    }

    private static void same(Figures base, String at, Figures entered, String value, int seed) {
        Line expected = entered.budget().line(value);
        Line found = base.budget().line(at);
        for (int row = 0; row < found.size(); row++) {
            assertThat(base.number(found, row))
                    .as("%s, case %s", found.address(row), seed)
                    .isCloseTo(entered.number(expected, row), near(entered));
        }
    }

    private static Offset<Double> near(Figures f) {
        return within(RELATIVE * Math.max(f.number("receipts_total"), f.number("total_cost")));
    }

    private static double last(Figures f, String totals) {
        Line line = f.budget().line(totals);
        return f.number(line, line.size() - 1);
    }

    /** Where there is nothing to compare with, both columns repeat the year. */
    @ParameterizedTest
    @CsvSource({"yield_per_plant, low", "yield_per_plant, high", "yield_per_plant_low, low"})
    void they_stand_as_entered_where_yield_or_range_is_not_known(String unknown, String end) {
        Figures f = Figures.of(Sample.with(Sample.troughHouse(), unknown + "=0 g/(plant crop)"));
        Line found = f.budget().line("budget_" + end);
        for (int row = 0; row < found.size(); row++) {
            assertThat(f.number(found, row)).isEqualTo(f.number(f.budget().line("budget_value"), row));
        }
        assertThat(f.text("budget_yields")).startsWith("Low and high yield stand as entered");
    }
}
