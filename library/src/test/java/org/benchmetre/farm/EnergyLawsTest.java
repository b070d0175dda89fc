package org.benchmetre.farm;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.Map;
import java.util.stream.LongStream;
import org.assertj.core.data.Offset;
import org.benchmetre.budget.Budget;
import org.benchmetre.budget.run.Figures;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Laws of heat and electricity over seeded random houses and climates. */
class EnergyLawsTest {

    /** Sums and quotients of a few dozen doubles, in another order. */
    private static final double RELATIVE = 1e-12;

    private static final Budget SAMPLE = Energy.alone();

    static LongStream seeds() {
        return LongStream.rangeClosed(1, 200);
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void noMonthTakesHeatBelowZeroAndMonthsAddUpToTheYear(long seed) {
        Figures f = Figures.of(Energy.seeded(SAMPLE, seed));
        assertThat(f.troubles()).isEmpty();
        for (String id : new String[] {"day_heat", "night_heat", "heat_energy", "fuel_use", "electricity_energy"}) {
            assertThat(Arrays.stream(Energy.months(f, id)))
                    .as(id)
                    .allMatch(value -> value >= 0 && Double.isFinite(value));
        }
        Map.of(
                        "heat_energy", "heat_energy_total",
                        "night_heat", "night_heat_total",
                        "fuel_use", "fuel_use_total",
                        "heating_cost", "heating_cost_total",
                        "electricity_energy", "electricity_energy_total",
                        "electricity_cost", "electricity_cost_total",
                        "energy_cost", "energy_cost_total")
                .forEach((month, year) -> assertThat(
                                Arrays.stream(Energy.months(f, month)).sum())
                        .as(year)
                        .isCloseTo(f.number(year), near(f.number(year))));
        double total = f.number("energy_cost_total");
        assertThat(f.number("heating_cost_total") + f.number("electricity_cost_total"))
                .isCloseTo(total, near(total));
        assertThat(f.number("energy_cost_per_area") * f.number("house_area")).isCloseTo(total, near(total));
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void partsAddUpToTheHouseAndToItsElectricity(long seed) {
        Figures f = Figures.of(Energy.seeded(SAMPLE, seed));
        double surfaces = 0;
        for (int i = 0; i < 4; i++) {
            surfaces += f.number(SAMPLE.line("surface_area"), i) * f.number(SAMPLE.line("surface_u_value"), i);
        }
        assertThat(surfaces).isPositive().isCloseTo(f.number("ua_total"), near(surfaces));
        double house = f.number("house_heat_loss");
        assertThat(surfaces + f.number("air_change_loss")).isCloseTo(house, near(house));
        double night = f.number("design_heat_loss");
        assertThat(house * f.number("design_difference") / 1000).isCloseTo(night, near(night));
        double[] all = Energy.months(f, "electricity_energy");
        double[] sum = new double[Energy.MONTHS];
        for (String load : new String[] {"fan", "cooler", "circulation", "light", "base"}) {
            double[] part = Energy.months(f, load + "_energy");
            Arrays.setAll(sum, month -> sum[month] + part[month]);
        }
        for (int month = 0; month < Energy.MONTHS; month++) {
            assertThat(sum[month]).isPositive().isCloseTo(all[month], near(all[month]));
        }
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void aColderMonthNeverTakesLessHeat(long seed) {
        Budget budget = Energy.seeded(SAMPLE, seed);
        Figures before = Figures.of(budget);
        for (String outside : new String[] {"day_temperature", "night_temperature"}) {
            double[] now = Energy.months(before, outside);
            Figures colder = Figures.of(Energy.with(budget, outside, month -> now[month] - 4));
            assertNowhereLess(Energy.months(colder, "heat_energy"), Energy.months(before, "heat_energy"));
        }
        double[] night = Energy.months(before, "night_temperature");
        Figures colder =
                Figures.of(Energy.with(budget, "night_temperature", month -> Math.max(-60, night[month] - 40)));
        double[] heated = Energy.months(before, "heated_share");
        double[] heat = Energy.months(before, "night_heat");
        double[] more = Energy.months(colder, "night_heat");
        for (int month = 0; month < Energy.MONTHS; month++) {
            if (heated[month] > 0) {
                assertThat(more[month]).isGreaterThan(heat[month]);
            } else {
                assertThat(more[month]).isZero();
            }
        }
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void aBetterCoverAndFewerLeaksNeverTakeMoreHeat(long seed) {
        Budget budget = Energy.seeded(SAMPLE, seed);
        Figures before = Figures.of(budget);
        for (String entry : new String[] {"u_value_single", "u_value_double", "u_value_insulated", "air_changes"}) {
            String unit = SAMPLE.line(entry).unit().toString();
            Figures after = Figures.of(Sample.with(budget, entry + "=" + 0.7 * before.number(entry) + " " + unit));
            assertNowhereLess(Energy.months(before, "heat_energy"), Energy.months(after, "heat_energy"));
            assertThat(after.number("boiler_size")).isLessThanOrEqualTo(before.number("boiler_size"));
        }
        Figures single = Figures.of(Sample.with(budget, "roof_glazing=single"));
        Figures twofold = Figures.of(Sample.with(budget, "roof_glazing=double"));
        assertThat(twofold.number("ua_total")).isLessThan(single.number("ua_total"));
        assertNowhereLess(Energy.months(single, "heat_energy"), Energy.months(twofold, "heat_energy"));
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void aScreenSavesItsShareOfTheNightAndNothingElse(long seed) {
        Budget budget = Energy.seeded(SAMPLE, seed);
        Figures open = Figures.of(Sample.with(budget, "night_screen=no"));
        Figures drawn = Figures.of(Sample.with(budget, "night_screen=yes"));
        assertThat(Energy.months(drawn, "day_heat")).isEqualTo(Energy.months(open, "day_heat"));
        assertThat(drawn.number("boiler_size")).isEqualTo(open.number("boiler_size"));
        double[] without = Energy.months(open, "night_heat");
        double[] with = Energy.months(drawn, "night_heat");
        for (int month = 0; month < Energy.MONTHS; month++) {
            double left = without[month] * (1 - open.number("screen_saving"));
            assertThat(with[month]).isCloseTo(left, near(left));
        }
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void fuelTimesItsHeatAndEfficiencyIsTheHeatAndFuelTimesPriceTheCost(long seed) {
        Figures f = Figures.of(Energy.seeded(SAMPLE, seed));
        double[] fuel = Energy.months(f, "fuel_use");
        double[] heat = Energy.months(f, "heat_energy");
        double[] cost = Energy.months(f, "heating_cost");
        for (int month = 0; month < Energy.MONTHS; month++) {
            double reached = fuel[month] * f.number("fuel_heat_counted") * f.number("heater_efficiency");
            assertThat(reached).isCloseTo(heat[month], near(heat[month]));
            assertThat(fuel[month] * f.number("fuel_price")).isCloseTo(cost[month], near(cost[month]));
        }
        double kilowattHours = f.number("electricity_energy_total");
        double bill = f.number("electricity_cost_total");
        assertThat(kilowattHours * f.number("electricity_price")).isCloseTo(bill, near(bill));
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void whereItIsWarmerOutsideNothingIsHeatedAndNoWarningSaysSo(long seed) {
        Budget warm = Energy.seeded(SAMPLE, seed);
        warm = Energy.with(warm, "day_temperature", month -> 31);
        warm = Energy.with(warm, "night_temperature", month -> 24);
        warm = Energy.with(warm, "day_set", month -> 20);
        warm = Energy.with(warm, "night_set", month -> 12);
        warm = Sample.with(warm, "temperature_spread=0 K", "house_regime=own");
        Figures f = Figures.of(warm);
        assertThat(f.troubles()).isEmpty();
        assertThat(Energy.months(f, "heat_energy")).containsOnly(0);
        assertThat(f.number("heating_cost_total")).isZero();
        assertThat(f.hasReason(SAMPLE.line("night_heat_share"), 0)).isTrue();
        assertThat(f.text("night_heat_compared")).isEqualTo("no heat");
        assertThat(Energy.warnings(f))
                .doesNotContain("set_point_warning", "design_night_warning", "efficiency_warning", "surface_warning");
    }

    private static void assertNowhereLess(double[] more, double[] less) {
        for (int month = 0; month < Energy.MONTHS; month++) {
            assertThat(more[month]).isGreaterThanOrEqualTo(less[month]);
        }
    }

    private static Offset<Double> near(double size) {
        return within(RELATIVE * Math.abs(size));
    }
}
