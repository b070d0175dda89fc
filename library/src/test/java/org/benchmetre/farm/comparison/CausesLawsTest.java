package org.benchmetre.farm.comparison;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.IntStream;
import java.util.stream.LongStream;
import org.benchmetre.budget.Budget;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.Position;
import org.benchmetre.budget.run.Figures;
import org.benchmetre.farm.Sample;
import org.benchmetre.farm.Seeded;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Laws of the ways compared: causes are whole, the four boxes are their differences, and a change of way moves the margin by them. */
class CausesLawsTest {

    /** Sums of a dozen doubles in another order; the last cause is what the others leave. */
    private static final double RELATIVE = 1e-12;

    /** Neighbouring seeds of the usual generator begin alike; multiples of this number lie far apart. */
    private static final long SPREAD = 0x9E3779B97F4A7C15L;

    private static final Budget SAMPLE = Sample.troughHouse();
    private static final Map<Long, Figures> WORKED_OUT = new ConcurrentHashMap<>();

    static LongStream seeds() {
        return LongStream.rangeClosed(1, 50);
    }

    static LongStream fewerSeeds() {
        return LongStream.rangeClosed(1, 30);
    }

    private static Figures figures(long seed) {
        return WORKED_OUT.computeIfAbsent(seed, any -> Seeded.figures(SAMPLE, seed * SPREAD));
    }

    private static double cause(Figures f, int cause, int way) {
        Line cost = SAMPLE.line("cause_way_cost_per_metre");
        Position row = Position.NONE.with(SAMPLE.line("cause_label").axes().get(0), cause);
        return f.number(cost, cost.cellAt(row.with(SAMPLE.line("way_key").axes().get(0), way)));
    }

    private static int row(String way) {
        return SAMPLE.line("way_key").axes().get(0).indexOf(way);
    }

    /** What no cause names. */
    private static double same(Figures f, String way) {
        return f.number("way_yearly_cost_per_metre", way) - f.number("way_differing_cost_per_metre", way);
    }

    private static IntStream causes() {
        return IntStream.range(0, SAMPLE.line("cause_label").size());
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void causesAddUpToTheYearlyCostOfEveryWay(long seed) {
        Figures f = figures(seed);
        assertThat(f.troubles()).isEmpty();
        for (String way : new String[] {"emitter", "tape", "dripline"}) {
            double size =
                    causes().mapToDouble(i -> Math.abs(cause(f, i, row(way)))).sum();
            double same = same(f, way);
            assertThat(same + causes().mapToDouble(i -> cause(f, i, row(way))).sum())
                    .as(way)
                    .isCloseTo(f.number("way_yearly_cost_per_metre", way), within(RELATIVE * (size + Math.abs(same))));
        }
    }

    /** What no cause names is the same whichever way: nothing that differs between ways is left out of the causes. */
    @ParameterizedTest
    @MethodSource("seeds")
    void whatNoCauseNamesIsTheSameWhicheverWay(long seed) {
        Figures f = figures(seed);
        double first = same(f, "emitter");
        double size = f.number("way_yearly_cost_per_metre", "emitter");
        assertThat(same(f, "tape")).isCloseTo(first, within(RELATIVE * size));
        assertThat(same(f, "dripline")).isCloseTo(first, within(RELATIVE * size));
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void theGainOfChangingIsTheDifferenceOfYearlyCosts(long seed) {
        Figures f = figures(seed);
        String chosen = f.text("irrigation_choice");
        String rival = f.text("rival_way");
        double now = f.number("way_yearly_cost_per_metre", chosen);
        double then = f.number("way_yearly_cost_per_metre", rival);
        boolean alone =
                f.text("next_way").isEmpty() && f.text("recommended_way").equals(chosen);
        assertThat(rival.equals(chosen)).as("compared with itself").isEqualTo(alone);
        assertThat(f.number("partial_net")).isCloseTo(now - then, within(RELATIVE * (now + then)));
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void eachBoxHoldsWhatItIsNamedAfter(long seed) {
        Figures f = figures(seed);
        double[] boxes = new double[4];
        int now = row(f.text("irrigation_choice"));
        int then = row(f.text("rival_way"));
        causes().forEach(i -> {
            double more = cause(f, i, then) - cause(f, i, now);
            boolean fruit = f.text(SAMPLE.line("cause_label"), i).startsWith("Fruit lost");
            boxes[(fruit ? 0 : 1) + (more > 0 ? 2 : 0)] += Math.abs(more);
        });
        double near = RELATIVE * f.number("way_yearly_cost_per_metre", f.text("irrigation_choice"));
        assertThat(f.number("partial_added_returns")).isCloseTo(boxes[0], within(near));
        assertThat(f.number("partial_reduced_costs")).isCloseTo(boxes[1], within(near));
        assertThat(f.number("partial_reduced_returns")).isCloseTo(boxes[2], within(near));
        assertThat(f.number("partial_added_costs")).isCloseTo(boxes[3], within(near));
    }

    @ParameterizedTest
    @MethodSource("fewerSeeds")
    void anotherWayMovesTheMarginByTheDifferenceOfYearlyCosts(long seed) {
        Figures f = figures(seed);
        double before = f.number("returns_above_total");
        for (String way : new String[] {"emitter", "tape", "dripline"}) {
            Figures g = Figures.of(Sample.with(f.budget(), "irrigation_choice=" + way));
            double dearer = f.number("way_yearly_cost", way) - f.number("way_yearly_cost", f.text("irrigation_choice"));
            double size = f.number("receipts_total") + f.number("yearly_cost_total");
            assertThat(before - g.number("returns_above_total")).as(way).isCloseTo(dearer, within(RELATIVE * size));
        }
    }
}
