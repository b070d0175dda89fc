package org.benchmetre.farm.comparison;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import java.util.stream.LongStream;
import java.util.stream.Stream;
import org.benchmetre.budget.Axis;
import org.benchmetre.budget.Budget;
import org.benchmetre.budget.CellRef;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.Position;
import org.benchmetre.budget.entry.Given;
import org.benchmetre.budget.run.Figures;
import org.benchmetre.decision.BreakEven;
import org.benchmetre.decision.Crossing;
import org.benchmetre.decision.Difference;
import org.benchmetre.farm.Sample;
import org.benchmetre.farm.Seeded;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Where cost is a straight line in an entry, the formula gives what a search gives that knows nothing of slopes, and fed back it makes
 * the two yearly costs agree.
 */
class FlipFormulasTest {

    /** The search ends at neighbouring doubles; the formula divides differences of costs that agree to some nine digits. */
    private static final double RELATIVE = 1e-9;

    private static final long SPREAD = 0x9E3779B97F4A7C15L;
    private static final Budget TROUGHS = Sample.troughHouse();
    private static final Budget CONTAINERS = Sample.containerHouse();

    static Stream<Figures> cases() {
        Stream<Budget> seeded = LongStream.rangeClosed(1, 8)
                .boxed()
                .flatMap(seed ->
                        Stream.of(Seeded.budget(TROUGHS, seed * SPREAD), Seeded.budget(CONTAINERS, seed * SPREAD)));
        Stream<Budget> others = Stream.of(
                TROUGHS,
                CONTAINERS,
                Sample.with(TROUGHS, "recovery_method=straight_line", "receipts_by=one_price", "price_level=1.4 1"),
                Sample.with(TROUGHS, "way_outlet_replace_cost[emitter]=0.4 money/outlet", "target_uniformity=98.9 %"),
                Sample.with(CONTAINERS, "recovery_rate=0 real/a", "operating_rate=0.2 real/a"),
                Sample.with(TROUGHS, "material_life[tape]=1 1", "operating_rate=0.2 real/a", "contingency_share=0.1 1"),
                Sample.with(TROUGHS, "material_life[dripline]=0.5 1", "operating_rate=0.2 real/a"));
        return Stream.concat(others, seeded).map(Figures::of).filter(f -> f.number("ways_ranked_behind") > 0);
    }

    /** A doubtful entry in which cost is a straight line, held against one rival. */
    private record Row(Figures f, int flip, int way) {

        private double of(String id) {
            Line line = f.budget().line(id);
            if (line.axes().size() == 1) {
                return f.number(line, line.axes().get(0) == flips() ? flip : way);
            }
            return f.number(
                    line,
                    line.cellAt(
                            Position.NONE.with(flips(), flip).with(line.axes().get(1), way)));
        }

        private Axis flips() {
            return f.budget().line("flip_label").axes().get(0);
        }

        private CellRef entry() {
            String[] address = f.text(f.budget().line("flip_address"), flip).split("[\\[\\]]");
            Line line = f.budget().line(address[0]);
            return new CellRef(line, address.length > 1 ? line.axes().get(0).indexOf(address[1]) : 0);
        }

        private boolean isInRange() {
            return of("flip_way_closing") != 0
                    && of("flip_way_at") > of("flip_least")
                    && of("flip_way_at") < of("flip_most");
        }

        private Difference difference() {
            Line cost = f.budget().line("way_yearly_cost_per_metre");
            int first = cost.axes().get(0).indexOf(f.text("recommended_way"));
            return Difference.between(new CellRef(cost, first), new CellRef(cost, way));
        }

        private List<Crossing> searched() {
            return BreakEven.of(f.budget(), entry(), difference())
                    .between(of("flip_least"), of("flip_most"))
                    .crossings();
        }

        private double lead(double value) {
            CellRef entry = entry();
            Figures there = Figures.of(f.budget()
                    .with(Map.of(
                            entry.line(),
                            Map.of(
                                    entry.cell(),
                                    Given.number(value, entry.line().unit())))));
            Difference d = difference();
            return there.number(d.left().line(), d.left().cell())
                            / there.number(d.right().line(), d.right().cell())
                    - 1;
        }
    }

    private static List<Row> straight(Figures f) {
        Line address = f.budget().line("flip_address");
        Line rival = f.budget().line("way_is_rival");
        return IntStream.range(0, address.size())
                .filter(row -> f.text(address, row).matches("material_price.*|install_wage|price_level"))
                .boxed()
                .flatMap(row -> IntStream.range(0, rival.size())
                        .filter(way -> f.number(rival, way) > 0)
                        .mapToObj(way -> new Row(f, row, way)))
                .toList();
    }

    @ParameterizedTest
    @MethodSource("cases")
    void the_formula_gives_what_a_search_gives(Figures f) {
        assertThat(straight(f)).isNotEmpty();
        for (Row row : straight(f)) {
            List<Crossing> searched = row.searched();
            assertThat(searched).as(row.entry().toString()).hasSize(row.isInRange() ? 1 : 0);
            if (row.isInRange()) {
                assertThat(row.of("flip_way_at"))
                        .as(row.entry().toString())
                        .isCloseTo(
                                searched.get(0).first(),
                                within(RELATIVE * searched.get(0).first()));
                assertThat(row.lead(row.of("flip_way_at"))).isCloseTo(0, within(RELATIVE));
            }
        }
    }

    /** Else the law above would hold of nothing. */
    @Test
    void many_formulas_have_a_value_and_many_have_none() {
        List<Row> all = cases().flatMap(f -> straight(f).stream()).toList();
        assertThat(all.stream().filter(Row::isInRange)).hasSizeGreaterThan(40);
        assertThat(all.stream().filter(row -> !row.isInRange())).hasSizeGreaterThan(40);
    }
}
