package org.benchmetre.farm.ownership;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.benchmetre.budget.Budget;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.run.Figures;
import org.benchmetre.farm.Sample;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Costs and returns for each metre, foot, plant, square metre and kilogram, and what moves with a kilogram. */
class ForEachUnitTest {

    /** A few operations on doubles. */
    private static final double RELATIVE = 1e-12;

    private static Budget sample;

    @BeforeAll
    static void read() {
        sample = Sample.with(
                Sample.troughHouse(),
                "task_driver[scouting]=yield_kg",
                "task_hours_per_driver[scouting]=0.01 h/driver",
                "task_times_unit[scouting]=a");
    }

    private static void near(double found, double expected) {
        assertThat(expected).isNotZero();
        assertThat(found).isCloseTo(expected, within(RELATIVE * Math.abs(expected)));
    }

    @Test
    void returns_are_shared_among_metres_plants_floor_and_fruit() {
        Figures f = Figures.of(sample);
        double returns = f.number("returns_above_total");
        near(f.number("returns_above_total_per_metre") * f.number("bench_metres"), returns);
        near(f.number("returns_above_total_per_plant") * f.number("plant_count"), returns);
        near(f.number("returns_above_total_per_area") * f.number("house_area"), returns);
        near(f.number("returns_above_total_per_kg") * f.number("yield_total"), returns);
    }

    @ParameterizedTest
    @ValueSource(strings = {"metre,bench_metres", "plant,plant_count", "area,house_area", "kg,yield_total"})
    void every_row_of_the_budget_is_shared_alike(String unit) {
        String[] by = unit.split(",");
        Figures f = Figures.of(sample);
        Line value = f.budget().line("budget_value");
        Line shared = f.budget().line("budget_per_" + by[0]);
        for (int row = 0; row < value.size(); row++) {
            double expected = f.number(value, row) / f.number(by[1]);
            assertThat(f.number(shared, row)).isCloseTo(expected, within(RELATIVE * Math.abs(expected)));
        }
    }

    @Test
    void what_moves_with_a_kilogram_adds_up() {
        Figures f = Figures.of(sample);
        double yield = f.number("yield_total");
        double work = f.number("picking_cost_of_one_more_kg")
                + f.number("packing_cost_of_one_more_kg")
                + f.number("yield_tasks_cost") / yield;
        assertThat(f.number("yield_tasks_per_kg")).isPositive();
        near(f.number("yield_tasks_per_kg") * yield, f.number("yield_tasks_cost"));
        near(f.number("work_per_kg"), work);
        near(f.number("yield_work_total"), work * yield);
        near(f.number("moves_with_yield_total"), f.number("yield_costs_total") + work * yield);
        near(f.number("moves_per_kg"), f.number("costs_per_kg") + work);
        near(f.number("left_per_kg"), f.number("net_per_kg") - work);
    }

    @Test
    void each_way_to_water_pays_interest_on_its_own_expense() {
        Figures f = Figures.of(Sample.with(
                sample,
                "operating_outstanding=0.4 1",
                "operating_rate=0.06 real/a",
                "operating_months=6 mo",
                "operating_financed=0.5 1"));
        near(f.number("operating_interest_factor"), 0.4 * 0.06 / 2 * 0.5);
        for (String way : List.of("emitter", "tape", "dripline")) {
            near(
                    f.number("way_operating_interest", way),
                    f.number("way_operating_expense", way) * 0.4 * 0.06 / 2 * 0.5);
        }
    }
}
