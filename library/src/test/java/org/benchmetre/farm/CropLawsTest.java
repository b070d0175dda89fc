package org.benchmetre.farm;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.IntStream;
import java.util.stream.LongStream;
import org.benchmetre.budget.Budget;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.run.Figures;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Laws that fruit, receipts and plant stock keep for any entries: arithmetic anyone can redo, so no source is needed. */
class CropLawsTest {

    /** Sums of a hundred doubles in another order. */
    private static final double RELATIVE = 1e-11;

    private static final Budget SAMPLE = Sample.troughHouse();
    private static final List<String> STOCKS = List.of("bare_root", "tray_plant", "plug", "pre_grown");
    private static final List<String> METHODS = List.of("channels", "one_price");
    private static final Map<Long, Figures> WORKED_OUT = new ConcurrentHashMap<>();

    static LongStream seeds() {
        return LongStream.rangeClosed(1, 200);
    }

    private static Figures figures(long seed) {
        return WORKED_OUT.computeIfAbsent(seed, CropLawsTest::workOut);
    }

    private static Figures workOut(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        return Figures.of(Sample.with(
                Seeded.budget(SAMPLE, seed),
                "reference_density=" + (3 + 20 * random.nextDouble()) + " plant/m2",
                "price_level=" + (0.5 + random.nextDouble()) + " 1",
                "stock_choice=" + STOCKS.get(random.nextInt(4)),
                "receipts_by=" + METHODS.get(random.nextInt(2))));
    }

    private static double sum(Figures f, String id) {
        Line line = f.budget().line(id);
        return IntStream.range(0, line.size())
                .mapToDouble(i -> f.number(line, i))
                .sum();
    }

    private static void isSame(double found, double expected) {
        assertThat(found).isCloseTo(expected, within(RELATIVE * Math.abs(expected) + 1e-12));
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void monthsAddUpToTheYear(long seed) {
        Figures f = figures(seed);
        assertThat(f.troubles()).isEmpty();
        assertThat(f.number("yield_total")).isPositive();
        isSame(sum(f, "month_share"), 1);
        isSame(sum(f, "month_yield"), f.number("yield_total"));
        isSame(sum(f, "month_receipts"), f.number("receipts_total"));
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void fruitGrownIsSoldOrLostByOneCause(long seed) {
        Figures f = figures(seed);
        double lost = f.number("fruit_expected_lost")
                + f.number("fruit_missed")
                + f.number("fruit_graded_out")
                + f.number("fruit_lost_dry");
        isSame(f.number("yield_total") + lost, f.number("fruit_grown"));
        isSame(
                f.number("fruit_grown"),
                f.number("grams_per_plant") * f.number("plant_count") * f.number("crops_per_year") / 1000);
        isSame(
                f.number("yield_share")
                        * f.number("fruit_kept_share")
                        * f.number("grams_a_year")
                        * f.number("yield_level"),
                f.number("yield_total") * 1000 / f.number("plant_count"));
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void gradesAddUp(long seed) {
        Figures f = figures(seed);
        isSame(f.number("receipts_first") + f.number("receipts_second"), f.number("receipts_total"));
        isSame(f.number("fruit_first") + f.number("fruit_second"), f.number("yield_total"));
        isSame(f.number("fruit_first"), f.number("yield_total") * f.number("first_grade_share"));
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void channelsAddUpOrAllFruitHasOnePrice(long seed) {
        Figures f = figures(seed);
        isSame(sum(f, "channel_kg"), f.number("yield_total"));
        if (f.text("receipts_by").equals("channels")) {
            isSame(sum(f, "channel_receipts"), f.number("receipts_total"));
            isSame(sum(f, "channel_first") + sum(f, "channel_second"), f.number("receipts_total"));
            double costs = f.number("packs_cost") + f.number("channel_freight_total") + f.number("commission_cost");
            isSame(sum(f, "channel_left"), f.number("receipts_total") - costs);
        } else {
            isSame(
                    f.number("receipts_total"),
                    f.number("yield_total") * f.number("fruit_price") * f.number("price_level"));
            assertThat(f.number("packs_cost")).isZero();
            assertThat(f.number("channel_freight_total")).isZero();
        }
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void costsAddUpAndAFurtherKilogramLeavesTheAverage(long seed) {
        Figures f = figures(seed);
        double costs = f.number("packs_cost")
                + f.number("channel_freight_total")
                + f.number("commission_cost")
                + f.number("yield_total") * f.number("cost_per_kg");
        double left = f.number("receipts_total") - costs;
        isSame(f.number("yield_costs_total"), costs);
        assertThat(f.number("net_per_kg") * f.number("yield_total"))
                .isCloseTo(left, within(RELATIVE * f.number("receipts_total")));
        isSame(f.number("price_average") * f.number("yield_total"), f.number("receipts_total"));
        isSame(f.number("commission_average") * f.number("receipts_total"), f.number("commission_cost"));
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void theChosenPlantStockIsComparedWithItsOwnTotals(long seed) {
        Figures f = figures(seed);
        String stock = f.text("stock_choice");
        double net = f.number("receipts_total") - f.number("moves_with_yield_total");
        double near = RELATIVE * f.number("receipts_total");
        double margin = net - f.number("plants_yearly_cost");
        isSame(f.number("compared_fruit", stock), f.number("yield_total"));
        assertThat(f.number("compared_net", stock)).isCloseTo(net, within(near));
        assertThat(f.number("compared_returns_per_metre", stock) * f.number("bench_metres"))
                .isCloseTo(margin, within(near + RELATIVE * f.number("plants_yearly_cost")));
        assertThat(f.number("compared_returns_per_metre_week", stock) * f.number("compared_bench_weeks", stock))
                .isCloseTo(f.number("compared_returns_per_metre", stock), within(near));
        isSame(f.number("compared_established_cost", stock) * f.number("plant_count"), f.number("plants_first_cost"));
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void asPlantsStandCloserAPlantYieldsLessAndASquareMetreMore(long seed) {
        Figures wide = figures(seed);
        double width = wide.number("house_width") / 2;
        Figures close = Figures.of(Sample.with(wide.budget(), "house_width=" + width + " m"));
        double response = wide.number("density_response");
        assertThat(response).isBetween(0.0, 0.6);
        assertThat(close.number("plants_per_area")).isGreaterThan(wide.number("plants_per_area"));
        assertThat(close.number("grams_per_plant")).isLessThan(wide.number("grams_per_plant"));
        assertThat(close.number("fruit_grown_per_area")).isGreaterThan(wide.number("fruit_grown_per_area"));
        double ratio = close.number("plants_per_area") / wide.number("plants_per_area");
        isSame(close.number("grams_per_plant"), wide.number("grams_per_plant") * Math.pow(ratio, -response));
    }
}
