package org.benchmetre.farm;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.SplittableRandom;
import java.util.stream.LongStream;
import org.benchmetre.budget.Budget;
import org.benchmetre.budget.run.Figures;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Laws of the chance that a plant has no working outlet left: exact arithmetic of chances. */
class FailedOutletsLawsTest {

    /** A few roundings of numbers up to 1. */
    private static final double ROUNDING = 1e-14;

    private static final Budget SAMPLE = Sample.troughHouse();

    static LongStream seeds() {
        return LongStream.rangeClosed(1, 25);
    }

    private record Case(double yearly, double months, double common, int outlets) {

        static Case of(long seed) {
            SplittableRandom random = new SplittableRandom(seed);
            return new Case(
                    0.001 + 0.5 * random.nextDouble(),
                    0.2 + 30 * random.nextDouble(),
                    0.99 * random.nextDouble(),
                    1 + random.nextInt(4));
        }

        Figures figures() {
            return new Cells(SAMPLE)
                    .number("way_failed_per_year", "emitter", yearly)
                    .number("check_interval", "", months)
                    .number("way_common_cause", "emitter", common)
                    .number("way_outlets_per_plant", "emitter", outlets)
                    .figures();
        }

        double chance() {
            return figures().number("way_no_outlet_left", "emitter");
        }

        double failed() {
            return figures().number("way_failed_at_end", "emitter");
        }
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void theChanceLiesBetweenAllOutletsFailingApartAndOneFailing(long seed) {
        Case c = Case.of(seed);
        double failed = -Math.expm1(c.months() / 12 * Math.log1p(-c.yearly()));
        assertThat(c.failed()).isCloseTo(failed, within(ROUNDING));
        assertThat(c.chance()).isBetween(Math.pow(failed, c.outlets()) - ROUNDING, failed + ROUNDING);
        assertThat(c.chance()).isBetween(0.0, 1.0);
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void theChanceGrowsWithFailuresTimeAndCommonCauseAndFallsWithOutlets(long seed) {
        Case c = Case.of(seed);
        double chance = c.chance();
        assertThat(new Case(c.yearly() + 0.02, c.months(), c.common(), c.outlets()).chance())
                .isGreaterThan(chance);
        assertThat(new Case(c.yearly(), c.months() + 1, c.common(), c.outlets()).chance())
                .isGreaterThan(chance);
        assertThat(new Case(c.yearly(), c.months(), c.common(), c.outlets() + 1).chance())
                .isLessThan(chance);
        Case more = new Case(c.yearly(), c.months(), c.common() + 0.01, c.outlets());
        if (c.outlets() == 1) {
            assertThat(more.chance()).isCloseTo(chance, within(ROUNDING));
        } else {
            assertThat(more.chance()).isGreaterThan(chance);
        }
    }

    @ParameterizedTest
    @ValueSource(ints = {1, 2, 3, 7})
    void whereEveryFailureIsOfCommonCauseMoreOutletsDoNotHelp(int outlets) {
        Case c = new Case(0.1, 18, 1, outlets);
        assertThat(c.chance()).isCloseTo(c.failed(), within(ROUNDING));
        assertThat(c.figures().number("way_standing_reserve", "emitter")).isCloseTo(1, within(1e-12));
    }

    @Test
    void twoStripsHoldAStandingReserveOverOne() {
        Figures two = Figures.of(SAMPLE);
        Figures one = new Cells(SAMPLE).number("way_lines", "tape", 1).figures();
        double failed = 1 - 0.96 * 0.96;
        double reserve = failed / (0.8 * failed * failed + 0.2 * failed);
        assertThat(two.number("way_failed_at_end", "tape")).isCloseTo(failed, within(ROUNDING));
        assertThat(two.number("way_standing_reserve", "tape")).isCloseTo(reserve, within(1e-12));
        assertThat(one.number("way_standing_reserve", "tape")).isCloseTo(1, within(1e-12));
        assertThat(one.number("way_dry_plants", "tape") / two.number("way_dry_plants", "tape"))
                .isCloseTo(reserve, within(1e-12));
        assertThat(reserve).isGreaterThan(3.5);
    }

    @ParameterizedTest
    @CsvSource({"0.25, 1", "1, 1", "1.5, 1", "2, 2", "3.2, 3"})
    void anOutletThatPlantsShareIsOneToEachAndAFractionIsNoOutlet(double perPlant, double whole) {
        Figures f = new Cells(SAMPLE)
                .number("way_outlets_per_plant", "emitter", perPlant)
                .figures();
        assertThat(f.number("way_outlets_lived_on", "emitter")).isEqualTo(whole);
        assertThat(f.number("way_no_outlet_left", "emitter"))
                .isLessThanOrEqualTo(f.number("way_failed_at_end", "emitter") + ROUNDING);
    }

    @Test
    void failuresAddUpUntilTheNextCheckOrForTheLifeOfTheLine() {
        Figures f = Figures.of(SAMPLE);
        assertThat(f.number("way_failing_years", "emitter")).isCloseTo(1.0 / 12, within(ROUNDING));
        assertThat(f.number("way_failing_years", "tape")).isEqualTo(f.number("material_life_years", "tape"));
        assertThat(f.number("way_failing_years", "dripline")).isEqualTo(7);
        Figures often = new Cells(SAMPLE).number("crops_per_year", "", 2).figures();
        assertThat(often.number("way_failing_years", "tape")).isEqualTo(1);
    }

    @Test
    void nothingFailsWhereNoShareIsGivenAndThatIsSaid() {
        Figures f =
                new Cells(SAMPLE).number("way_failed_per_year", "emitter", 0).figures();
        assertThat(f.troubles()).isEmpty();
        assertThat(f.number("way_no_outlet_left", "emitter")).isEqualTo(0);
        assertThat(f.hasReason(SAMPLE.line("way_standing_reserve"), 0)).isTrue();
        assertThat(Cells.text(f, "way_failed_warning", "emitter")).contains("failed_per_year");
        assertThat(Cells.text(f, "way_failed_warning", "tape")).isEmpty();
        assertThat(Cells.text(f, "way_failed_warning", "spare_1")).isEmpty();
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "no_such_part", "tape tape_fitting"})
    void aPartThatIsNotFoundCountsOneYearAndIsWarnedOf(String item) {
        Figures f = new Cells(SAMPLE).text("way_outlet_item", "tape", item).figures();
        assertThat(f.troubles()).isEmpty();
        assertThat(f.number("way_failing_years", "tape")).isEqualTo(1);
        assertThat(f.number("way_new_outlet_price", "tape")).isEqualTo(0);
        assertThat(Cells.text(f, "way_outlet_item_warning", "tape")).contains("outlet_item");
        assertThat(Cells.text(f, "way_outlet_item_warning", "emitter")).isEmpty();
        assertThat(Cells.text(f, "way_outlet_item_warning", "spare_1")).isEmpty();
    }
}
