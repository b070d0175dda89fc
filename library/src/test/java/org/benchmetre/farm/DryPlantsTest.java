package org.benchmetre.farm;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.stream.LongStream;
import org.assertj.core.data.Offset;
import org.benchmetre.budget.Budget;
import org.benchmetre.budget.run.Figures;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What dry plants cost: arithmetic anyone can redo. */
class DryPlantsTest {

    /** Products of a dozen doubles, up to some thousands. */
    private static final Offset<Double> ROUNDING = within(1e-9);

    /** A few products of doubles in another order. */
    private static final double RELATIVE = 1e-12;

    private static final Budget SAMPLE = Sample.troughHouse();
    /** All fruit at one price, nothing missed at harvest. */
    private static final Budget ONE_PRICE = Sample.with(
            SAMPLE,
            "receipts_by=one_price",
            "fruit_price=7 money/kg",
            "yield_per_plant=600 g/(plant crop)",
            "harvest_losses=0 1",
            "cost_per_kg=1.5 money/kg");

    private static final List<String> WAYS = List.of("emitter", "tape", "dripline");

    static LongStream seeds() {
        return LongStream.rangeClosed(1, 20);
    }

    private static void near(double found, double expected) {
        assertThat(found).isCloseTo(expected, within(RELATIVE * Math.abs(expected)));
    }

    @Test
    void theEmittersOfTheSampleByHand() {
        Figures f = Figures.of(ONE_PRICE);
        double dry = 1300 * (1 - Math.pow(0.98, 1.0 / 12)) * 12;
        double yearsFruit = 0.6 * 0.9;
        double lost = 0.5 * 0.6 + 0.5 * 0.15;
        double net = f.number("left_per_kg");
        double plant = f.number("plants_first_cost") / 1300 + 0.01 * 18;
        assertThat(f.number("way_dry_plants", "emitter")).isCloseTo(dry, ROUNDING);
        assertThat(f.number("way_dry_share", "emitter")).isCloseTo(dry / 13, ROUNDING);
        assertThat(f.number("way_plants_killed", "emitter")).isCloseTo(dry / 2, ROUNDING);
        assertThat(f.number("way_fruit_lost", "emitter")).isCloseTo(dry * lost * yearsFruit, ROUNDING);
        assertThat(f.number("way_dry_loss", "emitter"))
                .isCloseTo(dry * (lost * yearsFruit * net + 0.5 * plant), ROUNDING);
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void partsOfTheLossAddUpAndOnePerCentTimesThePerCentIsTheLoss(long seed) {
        Figures f = Seeded.figures(SAMPLE, seed);
        assertThat(f.troubles()).isEmpty();
        for (String way : WAYS) {
            double dry = f.number("way_dry_plants", way);
            near(f.number("way_plants_killed", way) + f.number("way_plants_set_back", way), dry);
            near(
                    dry * f.number("way_failing_years", way),
                    f.number("plant_count") * f.number("way_no_outlet_left", way));
            double loss = f.number("way_fruit_lost_value", way) + f.number("way_replant_cost", way);
            near(f.number("way_dry_loss", way), loss);
            near(
                    f.number("way_loss_per_percent", way) * f.number("way_dry_share", way),
                    loss / f.number("bench_metres"));
        }
    }

    @Test
    void aPlantThatIsSeenLaterLosesMoreUntilAllDie() {
        double before = 0;
        for (double days : new double[] {1, 3, 6, 10}) {
            Figures f = new Cells(SAMPLE).number("days_until_seen", "", days).figures();
            assertThat(f.number("dry_killed_share")).isCloseTo(days / 10, within(1e-15));
            assertThat(f.number("dry_plant_loss")).isGreaterThan(before);
            before = f.number("dry_plant_loss");
        }
        Figures late = new Cells(SAMPLE).number("days_until_seen", "", 30).figures();
        assertThat(late.number("dry_killed_share")).isEqualTo(1);
        assertThat(late.number("dry_plant_loss")).isEqualTo(before);
    }

    @Test
    void whereNoOutletIsInReachEveryPlantIsLostOnceAYear() {
        Figures f = new Cells(SAMPLE).number("way_lines", "tape", 0).figures();
        assertThat(f.troubles()).isEmpty();
        assertThat(f.number("way_no_outlet_left", "tape")).isEqualTo(1);
        assertThat(f.number("way_dry_share", "tape")).isEqualTo(100);
        assertThat(f.number("way_plants_killed", "tape")).isEqualTo(1300);
        near(f.number("way_fruit_lost", "tape"), f.number("fruit_marketable"));
        assertThat(Cells.text(f, "way_dry_warning", "tape")).contains("in reach");
        assertThat(Cells.text(f, "way_dry_warning", "emitter")).isEmpty();
        assertThat(Cells.text(f, "way_dry_warning", "spare_1")).isEmpty();
    }

    @Test
    void fruitThatLeavesNothingIsAGainToLose() {
        Figures f = new Cells(ONE_PRICE).number("fruit_price", "", 1).figures();
        double net = f.number("left_per_kg");
        assertThat(net).isLessThan(0.9 - 1.5 + 1e-12);
        near(f.number("way_fruit_lost_value", "tape"), net * f.number("way_fruit_lost", "tape"));
        assertThat(f.number("way_fruit_lost_value", "tape")).isNegative();
    }
}
