package org.benchmetre;

import static org.assertj.core.api.Assertions.assertThat;

import java.lang.management.ManagementFactory;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import org.benchmetre.budget.Budget;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.Structure;
import org.benchmetre.farm.FarmBudget;
import org.benchmetre.scenario.Faults;
import org.benchmetre.scenario.Settings;
import org.junit.jupiter.api.Test;

/** Many values at once take as long as they are many: five times the settings in no more than a multiple of five times the time. */
class ManyValuesTest {

    private static final int PARTS = 2000;
    /** Linear work takes five times as long, quadratic 25 times; between them is room for a busy machine. */
    private static final double MOST_FOR_FIVE_TIMES = 15;

    private static Budget house() {
        Map<String, Structure.Keys> tables = new HashMap<>();
        tables.put(
                "materials.csv",
                new Structure.Keys(
                        IntStream.range(0, PARTS).mapToObj(i -> "part_" + i).toList(), List.of()));
        tables.put("irrigation.csv", new Structure.Keys(List.of("tape"), List.of()));
        tables.put("plant_stock.csv", new Structure.Keys(List.of("plug"), List.of()));
        return FarmBudget.of(new Structure("Many", "USD", "strawberry", tables));
    }

    private static double seconds(Budget budget, int count) {
        List<String> columns = List.of("rate", "waste", "freight", "repairs", "install_hours");
        List<String> texts = IntStream.range(0, count)
                .mapToObj(i -> "material_" + columns.get(i % 5) + "[part_" + i / 5 + "]=0.5")
                .toList();
        double best = Double.POSITIVE_INFINITY;
        for (int run = 0; run < 3; run++) {
            long start = ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
            Faults faults = new Faults();
            Budget laid = budget.gate()
                    .lay(Settings.parse(texts).over(budget, faults), line -> false, no -> {})
                    .orElseThrow();
            best = Math.min(best, (ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime() - start) / 1e9);
            assertThat(faults.isEmpty()).isTrue();
            Line rate = laid.line("material_rate");
            assertThat(laid.given(rate).get(0).number()).isEqualTo(0.5);
        }
        return best;
    }

    @Test
    void ten_thousand_settings_take_about_five_times_as_long_as_two_thousand() {
        Budget budget = house();
        double few = seconds(budget, 2000);
        double many = seconds(budget, 10_000);
        assertThat(many / few).as("%s s against %s s", many, few).isLessThan(MOST_FOR_FIVE_TIMES);
    }
}
