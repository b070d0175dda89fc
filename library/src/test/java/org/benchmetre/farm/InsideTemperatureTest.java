package org.benchmetre.farm;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.stream.IntStream;
import org.assertj.core.data.Offset;
import org.benchmetre.budget.Budget;
import org.benchmetre.budget.run.Figures;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** How warm it is in the house, what the days of a month hide, and regimes, in houses that a reader can work out on paper. */
class InsideTemperatureTest {

    private static final Offset<Double> NEAR = within(1e-9);

    /** Steps of the integral that is held against the rule, and how far it reaches in spreads. */
    private static final int STEPS = 20_000;

    private static final double REACH = 9;

    private static final Budget SAMPLE = Energy.alone();

    /** Two kilowatts a kelvin on 200 m2 of floor; 5 degC by day and -5 by night in every month. */
    private static Budget house(String... entries) {
        Budget house = Energy.twoKilowattsAKelvin(
                SAMPLE,
                "house_length=20 m",
                "house_width=10 m",
                "solar_transmission=0.6 1",
                "solar_useful_share=0.5 1");
        house = Energy.with(house, "day_temperature", month -> 5);
        house = Energy.with(house, "night_temperature", month -> -5);
        return Sample.with(house, entries);
    }

    private static Figures inside(Budget house) {
        return Figures.of(house);
    }

    private static void assertInside(Figures f, double day, double night, double mean) {
        assertThat(f.number("inside_day", "jan")).as("day").isCloseTo(day, NEAR);
        assertThat(f.number("inside_night", "jan")).as("night").isCloseTo(night, NEAR);
        assertThat(f.number("inside_mean", "jan")).as("mean").isCloseTo(mean, NEAR);
    }

    @Test
    void aHeatedHouseIsAtItsSetPoints() {
        assertInside(inside(house()), 15, 10, 12.5);
        assertInside(inside(house("set_point_shift=2 K")), 17, 12, 14.5);
    }

    @Test
    void aHouseThatIsNotHeatedIsAsColdAsTheNightAndLiftedByTheSun() {
        Budget cold = Energy.with(house("heating_use=no"), "solar_radiation", month -> 2);
        assertInside(inside(cold), 5 + 2 * 200 * 0.6 * 0.5 / (2.0 * 12), -5, 2.5);
        Budget half = Energy.with(house(), "heated_share", month -> 0.5);
        assertInside(inside(half), (5 + 15) / 2.0, (-5 + 10) / 2.0, 6.25);
    }

    @Test
    void ventsHoldTheDayDownButNeverBelowOutsideNorBelowWhatIsHeated() {
        Budget sunny = Energy.with(house(), "solar_radiation", month -> 10);
        assertInside(inside(Sample.with(sunny, "vent_set=24 degC")), 24, 10, 17);
        Budget hot = Energy.with(sunny, "day_temperature", month -> 28);
        assertInside(inside(Sample.with(hot, "vent_set=24 degC")), 28, 10, 19);
        Figures against = inside(Sample.with(sunny, "vent_set=12 degC"));
        assertInside(against, 15, 10, 12.5);
        assertThat(Energy.warnings(against)).contains("vent_warning");
    }

    @Test
    void aMonthWithoutAClimateHasNoTemperature() {
        Figures f = inside(Energy.with(house(), "day_hours", month -> month == 0 ? 0 : 12));
        for (String id : new String[] {"inside_day", "inside_night", "inside_mean"}) {
            assertThat(f.hasReason(SAMPLE.line(id), 0)).as(id).isTrue();
            assertThat(f.hasReason(SAMPLE.line(id), 1)).as(id).isFalse();
        }
        assertThat(f.troubles()).isEmpty();
    }

    @Test
    void aRegimeGoesBeforeWhatIsTypedAndIsMovedWithIt() {
        assertInside(inside(house("house_regime=forced")), 18, 15, 16.5);
        assertInside(inside(house("house_regime=cool")), 15, 8, 11.5);
        assertInside(inside(house("house_regime=frost_free")), 5, 2, 3.5);
        assertInside(inside(house("house_regime=frost_free", "set_point_shift=1 K")), 6, 3, 4.5);
        double[] heat = Arrays.stream(new String[] {"frost_free", "cool", "forced"})
                .mapToDouble(regime -> inside(house("house_regime=" + regime)).number("heat_energy_total"))
                .toArray();
        assertThat(heat).isSorted();
        assertThat(heat[0]).isPositive().isLessThan(heat[1]);
    }

    @Test
    void aRegimeWithoutAClimateOrWithoutHeatIsNamed() {
        Figures noClimate = inside(Energy.with(house("house_regime=cool"), "day_hours", month -> 0));
        assertThat(Energy.warnings(noClimate)).contains("regime_climate_warning");
        assertThat(noClimate.text("regime_climate_warning")).startsWith("The regime Cool has no climate");
        Figures cold = inside(house("house_regime=cool", "heating_use=no"));
        assertThat(Energy.warnings(cold)).contains("regime_heating_warning");
        assertThat(Energy.warnings(inside(house("heating_use=no")))).doesNotContain("regime_heating_warning");
    }

    /** Days that are normally distributed: mean of what they are short of the base temperature, by a sum of many narrow strips. */
    private static double ofNormalDays(double below, double spread) {
        double width = 2 * REACH / STEPS;
        return IntStream.range(0, STEPS)
                .mapToDouble(i -> -REACH + (i + 0.5) * width)
                .map(z -> Math.max(0, below - spread * z) * Math.exp(-z * z / 2) / Math.sqrt(2 * Math.PI) * width)
                .sum();
    }

    @ParameterizedTest
    @ValueSource(doubles = {1, 2.5, 3.5, 6})
    void whatDaysHideIsWithinAHundredthOfTheSpreadOfNormalDays(double spread) {
        for (double below = -15; below <= 15; below += 0.5) {
            double set = below - 5;
            Budget house = Energy.with(house("temperature_spread=" + spread + " K"), "night_set", month -> set);
            double found = Figures.of(house).number("night_kelvins", "jan");
            assertThat(found)
                    .as("%s K below the base", below)
                    .isCloseTo(ofNormalDays(below, spread), within(0.012 * spread))
                    .isGreaterThanOrEqualTo(Math.max(0, below));
        }
    }

    @Test
    void moreSpreadIsMoreHeatAndNoneIsTheMeanAlone() {
        double[] heat = IntStream.rangeClosed(0, 6)
                .mapToDouble(spread ->
                        Figures.of(house("temperature_spread=" + spread + " K")).number("heat_energy_total"))
                .toArray();
        assertThat(heat).isSorted();
        assertThat(heat[0]).isCloseTo(2.0 * (10 * 12 + 15 * 12) * 365.25, within(1e-6));
        assertThat(heat[6]).isGreaterThan(heat[0]);
    }

    @Test
    void heatIsToldAsGasAndHeldAgainstWhatIsPublished() {
        Figures f = Figures.of(house("heater_efficiency=0.8 1"));
        double gas = 2.0 * 25 * 12 * 365.25 / 200 / 0.8 / 10.5;
        assertThat(f.number("gas_per_area")).isCloseTo(gas, NEAR);
        assertThat(f.text("gas_compared")).isEqualTo("above what is published of glass houses");
        assertThat(Figures.of(house("heating_use=no")).text("gas_compared")).isEqualTo("no heat");
    }
}
