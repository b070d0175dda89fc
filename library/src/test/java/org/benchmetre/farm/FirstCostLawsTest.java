package org.benchmetre.farm;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.function.BiFunction;
import java.util.stream.IntStream;
import java.util.stream.LongStream;
import org.benchmetre.budget.Budget;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.run.Figures;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Laws that first cost keeps for any entries: arithmetic anyone can redo, so no source is needed. */
class FirstCostLawsTest {

    /** Sums of a few hundred doubles of money, in another order. */
    private static final double RELATIVE = 1e-12;

    private static final Budget SAMPLE = Sample.troughHouse();

    /** A kind of plant stock whose price is the same for any quantity. */
    private static final String NO_BREAKS = "stock_choice=pre_grown";

    /** A thousandth of a cent, money, which is not paid: the rule of what is paid. */
    private static final double UNPAID = 1e-5;

    static LongStream seeds() {
        return LongStream.rangeClosed(1, 200);
    }

    private static double sumOf(Figures figures, String id) {
        Line line = figures.budget().line(id);
        return IntStream.range(0, line.size())
                .mapToDouble(i -> figures.number(line, i))
                .sum();
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void groupsSumToTheTotalAndEachUnitTimesItsCountIsTheTotal(long seed) {
        Figures f = Seeded.figures(SAMPLE, seed);
        double total = f.number("first_cost_total");
        assertThat(f.troubles()).isEmpty();
        assertThat(sumOf(f, "group_first_cost")).isCloseTo(total, within(RELATIVE * total));
        BiFunction<String, String, Double> product = (unit, count) -> f.number(unit) * f.number(count);
        assertThat(product.apply("first_cost_per_metre", "bench_metres")).isCloseTo(total, within(RELATIVE * total));
        assertThat(product.apply("first_cost_per_plant", "plant_count")).isCloseTo(total, within(RELATIVE * total));
        assertThat(product.apply("first_cost_per_area", "house_area")).isCloseTo(total, within(RELATIVE * total));
        assertThat(sumOf(f, "group_first_cost_per_metre"))
                .isCloseTo(f.number("first_cost_per_metre"), within(RELATIVE * total));
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void wholePacksCostTheExactQuantityAndItsLeftovers(long seed) {
        Figures f = Seeded.figures(SAMPLE, seed);
        double exact = f.number("exact_cost");
        double bought = f.number("purchase_cost");
        assertThat(bought).isGreaterThanOrEqualTo(exact);
        assertThat(exact + f.number("leftover_value") - unpaid(f)).isCloseTo(bought, within(RELATIVE * bought));
        assertThat(bought - exact).isPositive();
    }

    /** What of exact costs is not paid: for each part less than the rule of what is paid lets go. */
    private static double unpaid(Figures f) {
        Line exact = f.budget().line("material_exact_cost");
        Line bought = f.budget().line("material_purchase_cost");
        double unpaid = 0;
        for (int part = 0; part < exact.size(); part++) {
            double less = Math.max(0, f.number(exact, part) - f.number(bought, part));
            assertThat(less).as(exact.address(part)).isLessThan(UNPAID);
            unpaid += less;
        }
        return unpaid;
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void theTotalIsPartsPlantsLabourHouseAndContingency(long seed) {
        Figures f = Seeded.figures(SAMPLE, seed);
        String way = f.text("irrigation_choice");
        double listed = f.number("exact_cost") + f.number("plants_first_cost") + f.number("way_install_cost", way);
        double parts = listed + f.number("house_by_area_cost") + f.number("contingency_cost");
        assertThat(parts).isGreaterThan(listed);
        assertThat(f.number("first_cost_total")).isCloseTo(parts, within(RELATIVE * parts));
        assertThat(f.number("way_first_cost", way)).isCloseTo(parts, within(RELATIVE * parts));
    }

    @Test
    void tenAndAHundredBenchesCostTheSamePerMetreButForHouseWideItems() {
        Figures ten = Figures.of(Sample.with(SAMPLE, "bench_count=10 bench", NO_BREAKS));
        Figures hundred = Figures.of(Sample.with(SAMPLE, "bench_count=100 bench", NO_BREAKS));
        for (String group : List.of(
                "trough_and_supports", "liner_and_drainage", "substrate", "mulch", "irrigation_line", "plants")) {
            assertThat(hundred.number("group_first_cost_per_metre", group))
                    .as(group)
                    .isCloseTo(ten.number("group_first_cost_per_metre", group), within(1e-9));
        }
        double supply = ten.number("group_first_cost_per_metre", "water_supply");
        assertThat(hundred.number("group_first_cost_per_metre", "water_supply")).isLessThan(supply);
        assertThat(hundred.number("bench_metres")).isEqualTo(10 * ten.number("bench_metres"));
    }
}
