package org.benchmetre.farm;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.stream.LongStream;
import org.benchmetre.budget.Budget;
import org.benchmetre.budget.run.Figures;
import org.benchmetre.farm.input.Months;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Laws of water given, zones, pump and their money, for any entries: arithmetic anyone can redo. */
class WaterLawsTest {

    /** Sums and products of a few dozen doubles, in another order. */
    private static final double RELATIVE = 1e-12;

    private static final Budget SAMPLE = Sample.troughHouse();

    private static final List<String> WAYS = List.of("emitter", "tape", "dripline");

    static LongStream seeds() {
        return LongStream.rangeClosed(1, 100);
    }

    private static double overMonths(Figures f, String id, String way) {
        return Months.KEYS.stream()
                .mapToDouble(month -> f.number(id, way, month))
                .sum();
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void waterGivenIsWaterKeptPlusDrainAndTheMonthsAddUpToTheYear(long seed) {
        Figures f = Seeded.figures(SAMPLE, seed);
        double kept = f.number("year_water_need");
        assertThat(f.troubles()).isEmpty();
        assertThat(kept).isPositive();
        for (String way : WAYS) {
            double given = f.number("way_gross_water", way);
            double near = RELATIVE * given;
            assertThat(given).isGreaterThanOrEqualTo(kept);
            assertThat(overMonths(f, "way_month_gross_water", way)).isCloseTo(given, within(near));
            assertThat(kept + f.number("way_drain_water", way)).isCloseTo(given, within(near));
            assertThat(f.number("way_gross_factor", way) * kept).isCloseTo(given, within(near));
            assertThat(f.number("way_drain_share", way))
                    .isGreaterThanOrEqualTo(f.number("drain_fraction") - RELATIVE)
                    .isLessThan(1);
        }
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void theLargerAllowanceNeverAsksForMoreThanBothMultiplied(long seed) {
        Budget seeded = Seeded.figures(SAMPLE, seed).budget();
        Figures larger = Figures.of(Sample.with(seeded, "uniformity_rule=larger"));
        Figures both = Figures.of(Sample.with(seeded, "uniformity_rule=both"));
        double forDrain = 1 / (1 - larger.number("drain_fraction"));
        for (String way : WAYS) {
            double forUneven = 1 / larger.number("way_uniformity_counted", way);
            assertThat(larger.number("way_gross_factor", way))
                    .isCloseTo(Math.max(forDrain, forUneven), within(RELATIVE * forDrain * forUneven))
                    .isLessThanOrEqualTo(both.number("way_gross_factor", way));
            assertThat(both.number("way_gross_factor", way))
                    .isCloseTo(forDrain * forUneven, within(RELATIVE * forDrain * forUneven));
        }
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void theZonesAsRunWaterEveryBenchAndTakeNoMoreThanTheSupplyGives(long seed) {
        Figures f = Seeded.figures(SAMPLE, seed);
        for (String way : WAYS) {
            double zones = f.number("way_zones_run", way);
            assertThat(zones).isGreaterThanOrEqualTo(f.number("way_zones_needed", way));
            assertThat(zones * f.number("way_benches_in_zone", way)).isGreaterThanOrEqualTo(f.number("bench_count"));
            if (f.number("way_benches_at_once", way) > 0) {
                assertThat(f.number("way_zone_flow", way))
                        .isPositive()
                        .isLessThanOrEqualTo(f.number("supply_flow") * (1 + 1e-6));
            }
        }
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void energyIsGivenWaterTimesPressureOverEfficiencyAndDoublesWithPressure(long seed) {
        Budget seeded = Sample.with(Seeded.figures(SAMPLE, seed).budget(), "supply_pressure=0 kPa");
        Figures once = Figures.of(seeded);
        for (String way : WAYS) {
            double pressure = once.number("way_pump_pressure", way);
            double more = once.number("regulator_loss") + pressure;
            Figures twice = Figures.of(Sample.typedOver(seeded, "regulator_loss=" + more + " kPa"));
            double joule = once.number("way_gross_water", way) * pressure * 1000;
            double expected = joule / 3.6e6 / once.number("pump_efficiency") / once.number("motor_efficiency");
            double energy = once.number("way_pump_energy", way);
            assertThat(pressure).isPositive();
            assertThat(energy).isCloseTo(expected, within(RELATIVE * expected));
            assertThat(twice.number("way_pump_pressure", way)).isCloseTo(2 * pressure, within(RELATIVE * pressure));
            assertThat(twice.number("way_pump_energy", way)).isCloseTo(2 * energy, within(RELATIVE * 2 * energy));
            assertThat(twice.number("way_pumping_cost", way))
                    .isCloseTo(2 * energy * once.number("electricity_price"), within(RELATIVE * 2 * energy));
        }
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void theRunningCostIsItsFourPartsAndReusedDrainSavesItsShareOfWaterAndFeed(long seed) {
        Budget seeded = Seeded.figures(SAMPLE, seed).budget();
        Figures spent = Figures.of(Sample.with(seeded, "drain_handling=treat"));
        Figures reused = Figures.of(Sample.with(seeded, "drain_handling=reuse"));
        for (String way : WAYS) {
            double saved = reused.number("reuse_share") * spent.number("way_drain_water", way);
            double given = spent.number("way_gross_water", way);
            assertThat(spent.number("way_fresh_water", way)).isEqualTo(given);
            assertThat(reused.number("way_fresh_water", way)).isCloseTo(given - saved, within(RELATIVE * given));
            for (String cost : List.of("way_water_cost", "way_feed_cost")) {
                double whole = spent.number(cost, way);
                assertThat(reused.number(cost, way))
                        .as(cost)
                        .isCloseTo(whole * (1 - saved / given), within(RELATIVE * whole));
            }
            assertThat(reused.number("way_drain_cost", way)).isEqualTo(spent.number("way_drain_cost", way));
            double parts = reused.number("way_water_cost", way)
                    + reused.number("way_feed_cost", way)
                    + reused.number("way_drain_cost", way)
                    + reused.number("way_pumping_cost", way);
            assertThat(reused.number("way_water_running", way)).isCloseTo(parts, within(RELATIVE * parts));
        }
    }

    /** Zones run one after the other, small ones as long as large: all hours of all months are the hours of the pump. */
    @ParameterizedTest
    @MethodSource("seeds")
    void theHoursOfThePumpAreThoseOfAllZonesInAllMonths(long seed) {
        Budget seeded = Seeded.figures(SAMPLE, seed).budget();
        for (String zones : List.of("zone_count=1 zone", "zone_count=3 zone", "zone_count=7 zone")) {
            Figures f = Figures.of(Sample.with(seeded, zones));
            for (String way : WAYS) {
                double hours = Months.KEYS.stream()
                        .mapToDouble(month -> f.number("way_month_hours", way, month)
                                * f.number("days_in_month", month)
                                * f.number("month_crop_share", month))
                        .sum();
                assertThat(hours).isPositive();
                assertThat(f.number("way_pump_hours", way)).as(zones).isCloseTo(hours, within(RELATIVE * hours));
            }
        }
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void theHoursOfADayAreWateringsTimesRunTimeTimesZones(long seed) {
        Figures f = Seeded.figures(SAMPLE, seed);
        for (String way : WAYS) {
            double busiest = 0;
            for (String month : Months.KEYS) {
                double expected = f.number("way_month_events", way, month)
                        * f.number("way_run_time", way)
                        * f.number("way_zones_run", way)
                        / 60;
                boolean inCrop = f.number("month_crop_share", month) > 0;
                assertThat(expected > 0).as(month).isEqualTo(inCrop);
                assertThat(f.number("way_month_hours", way, month)).isCloseTo(expected, within(RELATIVE * expected));
                busiest = Math.max(busiest, f.number("way_month_hours", way, month));
            }
            assertThat(f.number("way_peak_hours", way)).isEqualTo(busiest);
        }
    }
}
