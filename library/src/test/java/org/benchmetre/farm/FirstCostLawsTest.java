package org.benchmetre.farm;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.function.BiFunction;
import java.util.stream.IntStream;
import java.util.stream.LongStream;
import org.benchmetre.budget.Budget;
import org.benchmetre.budget.CellRef;
import org.benchmetre.budget.Dependencies;
import org.benchmetre.budget.Given;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.run.Figures;
import org.benchmetre.budget.unit.Unit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Laws that first cost keeps for any entries: arithmetic anyone can redo, so no source is needed. */
class FirstCostLawsTest {

    /** Sums of a few hundred doubles of money, in another order. */
    private static final double RELATIVE = 1e-12;

    private static final Budget SAMPLE = Sample.troughHouse();

    static LongStream seeds() {
        return LongStream.rangeClosed(1, 200);
    }

    /** The sample with every bounded single entry and every price moved at random inside its plausible range. */
    private static Figures seeded(long seed) {
        Random random = new Random(seed);
        Map<Line, Map<Integer, Given>> changes = new HashMap<>();
        for (Line line : SAMPLE.lines()) {
            SAMPLE.entry(line).ifPresent(entry -> {
                double low = entry.plausible().low();
                double high = entry.plausible().high();
                if (line.axes().isEmpty() && high > low && !entry.bounds().whole()) {
                    double value = low + random.nextDouble() * (high - low);
                    changes.put(line, Map.of(0, Given.number(value, line.unit())));
                }
            });
        }
        Line count = SAMPLE.line("bench_count");
        changes.put(count, Map.of(0, Given.number(1 + random.nextInt(80), count.unit())));
        Line choice = SAMPLE.line("irrigation_choice");
        changes.put(
                choice,
                Map.of(0, Given.text(List.of("emitter", "tape", "dripline").get(random.nextInt(3)))));
        Line price = SAMPLE.line("material_price");
        Map<Integer, Given> prices = new HashMap<>();
        IntStream.range(0, price.axes().get(0).filled())
                .forEach(i -> prices.put(i, Given.number(random.nextDouble() * 400, price.unit())));
        changes.put(price, prices);
        return Figures.of(SAMPLE.with(changes));
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
        Figures f = seeded(seed);
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
        Figures f = seeded(seed);
        double exact = f.number("exact_cost");
        double bought = f.number("purchase_cost");
        assertThat(bought).isGreaterThanOrEqualTo(exact);
        assertThat(exact + f.number("leftover_value")).isCloseTo(bought, within(RELATIVE * bought));
        assertThat(bought - exact).isPositive();
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void theTotalIsPartsPlusPlantsPlusLabour(long seed) {
        Figures f = seeded(seed);
        String way = f.text("irrigation_choice");
        double parts = f.number("exact_cost") + f.number("plants_first_cost") + f.number("way_install_cost", way);
        assertThat(f.number("first_cost_total")).isCloseTo(parts, within(RELATIVE * parts));
        assertThat(f.number("way_first_cost", way)).isCloseTo(parts, within(RELATIVE * parts));
    }

    @Test
    void tenAndAHundredBenchesCostTheSamePerMetreButForHouseWideItems() {
        Figures ten = Figures.of(Sample.with(SAMPLE, "bench_count=10 bench"));
        Figures hundred = Figures.of(Sample.with(SAMPLE, "bench_count=100 bench"));
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

    @Test
    void everyAmountReachesTheTotalAlongExactlyOnePath() {
        Map<CellRef, Integer> paths = PathCount.of(SAMPLE).from(new CellRef(SAMPLE.line("first_cost_total"), 0));
        for (String owner : List.of("material_way_cost", "way_install_cost", "plants_first_cost")) {
            Line line = SAMPLE.line(owner);
            int expected =
                    owner.equals("plants_first_cost") ? SAMPLE.line("way_key").size() : 1;
            for (int cell = 0; cell < line.size(); cell++) {
                assertThat(paths.get(new CellRef(line, cell)))
                        .as(line.address(cell))
                        .isEqualTo(expected);
            }
        }
    }

    /**
     * Counts the paths from a total down to each cell of money. A filtered sum is followed only where the tag matches, else each
     * part would count once for each group. What every way to water shares, the plants, is reached once for each way.
     */
    private record PathCount(Figures figures, Line groupLabel, Line partGroup) {

        static PathCount of(Budget budget) {
            return new PathCount(Figures.of(budget), budget.line("group_label"), budget.line("material_group_counted"));
        }

        Map<CellRef, Integer> from(CellRef total) {
            Map<CellRef, Integer> paths = new HashMap<>();
            descend(total, paths);
            return paths;
        }

        private void descend(CellRef cell, Map<CellRef, Integer> paths) {
            paths.merge(cell, 1, Integer::sum);
            Line line = cell.line();
            figures.budget()
                    .formula(line)
                    .ifPresent(formula -> Dependencies.of(line, formula, cell.cell()).stream()
                            .filter(read -> read.line().unit().equals(Unit.MONEY) && belongs(cell, read))
                            .forEach(read -> descend(read, paths)));
        }

        private boolean belongs(CellRef group, CellRef read) {
            if (!read.line().id().equals("material_way_cost")) {
                return true;
            }
            int row = group.line().positionOf(group.cell()).on(groupLabel.axes().get(0));
            int part = read.line().positionOf(read.cell()).on(partGroup.axes().get(0));
            return figures.text(groupLabel, row).equals(figures.text(partGroup, part));
        }
    }
}
