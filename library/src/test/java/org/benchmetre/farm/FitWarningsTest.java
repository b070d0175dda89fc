package org.benchmetre.farm;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.benchmetre.budget.Budget;
import org.benchmetre.budget.run.Figures;
import org.junit.jupiter.api.Test;

/** What does not fit is told, and so is what total cost leaves out. */
class FitWarningsTest {

    private static final Budget SAMPLE = Sample.troughHouse();

    private static Figures with(String... settings) {
        return Figures.of(Sample.with(SAMPLE, settings));
    }

    @Test
    void theSampleFits() {
        Figures f = Figures.of(SAMPLE);
        assertThat(f.text("bench_fit_warning")).isEmpty();
        assertThat(f.text("litres_per_plant_warning")).isEmpty();
        assertThat(f.text("house_charge_warning")).isEmpty();
    }

    @Test
    void aBenchLongerThanTheHouseAndBenchesWithoutAislesAreTold() {
        assertThat(with("bench_length=24.1 m").text("bench_fit_warning")).contains("do not fit");
        assertThat(with("bench_count=27 bench").number("bench_floor_share")).isGreaterThan(0.7);
        assertThat(with("bench_count=27 bench").text("bench_fit_warning")).contains("do not fit");
        assertThat(with("bench_count=26 bench").text("bench_fit_warning")).isEmpty();
    }

    /** The sample's bench has a margin of 0.1 m at each end: 0.2 m leave no room but carry a plant between them, 0.19 m do not. */
    @Test
    void aBenchShorterThanItsMarginsCarriesNoPlantAndThatIsTold() {
        Figures fits = with("bench_length=0.2 m");
        assertThat(fits.number("plants_per_bench")).isEqualTo(1);
        assertThat(fits.text("plants_per_bench_warning")).isEmpty();
        Figures none = with("bench_length=0.19 m");
        assertThat(none.number("plants_per_bench")).isEqualTo(0);
        assertThat(none.text("plants_per_bench_warning"))
                .contains("shorter than its two margins")
                .contains("bench_length");
        assertThat(none.troubles()).isEmpty();
        assertThat(none.number("first_cost_per_plant")).isEqualTo(0);
        assertThat(none.text("litres_per_plant_warning")).isEmpty();
    }

    /** A trough of 200 mm and two laps: film of 1,200 mm covers laps of up to 500 mm. */
    @Test
    void aStripOfMulchWiderThanItsFilmIsTold() {
        assertThat(with("mulch_lap=500 mm").text("mulch_width_warning")).isEmpty();
        Figures wide = with("mulch_lap=600 mm");
        assertThat(wide.number("mulch_width")).isEqualTo(1400);
        assertThat(wide.text("mulch_width_warning"))
                .contains("mulch_stock_width")
                .contains("lower mulch_lap");
        assertThat(with("mulch_lap=600 mm", "mulch_stock_width=1400 mm").text("mulch_width_warning"))
                .isEmpty();
    }

    /** What is bought is what friction is worked out for: the pipe of 40 m with its waste of 5 %. */
    @Test
    void theHeaderBoughtIsTheHeaderThatLosesPressure() {
        assertThat(with("header_length=40 m").number("material_quantity", "header"))
                .isCloseTo(40 * 1.05, within(1e-12));
    }

    @Test
    void tooLittleSubstrateForAPlantIsTold() {
        Figures f = with("plant_spacing=0.08 m");
        assertThat(f.number("litres_per_plant")).isLessThan(2.1);
        assertThat(f.text("litres_per_plant_warning")).contains("2.1 L");
    }

    @Test
    void waterThatDripsBesideTheSubstrateIsGivenOnTop() {
        Figures all = Figures.of(SAMPLE);
        Figures half = with("way_share_caught[tape]=0.5 1");
        double given = all.number("way_gross_water", "tape");
        assertThat(given).isPositive();
        assertThat(half.number("way_gross_water", "tape")).isCloseTo(2 * given, within(1e-9 * given));
        assertThat(half.number("way_gross_water", "emitter")).isEqualTo(all.number("way_gross_water", "emitter"));
    }

    @Test
    void aHouseChargedForNothingIsTold() {
        Figures charged =
                with("house_charge_by=bench_week", "bench_week_charge=0.3 money/(m wk)", "office_cost=500 money/a");
        assertThat(charged.text("house_charge_warning")).isEmpty();
        assertThat(with("house_charge_by=bench_week", "bench_week_charge=0 money/(m wk)")
                        .text("house_charge_warning"))
                .contains("charged once");
    }

    @Test
    void aRentedHouseCostsCashAndOneOfOnesOwnDoesNot() {
        String[] charge = {"house_charge_by=bench_week", "bench_week_charge=0.3 money/(m wk)"};
        Figures own = with(charge);
        Figures rented = with(charge[0], charge[1], "house_of=rented");
        assertThat(own.number("house_charge")).isCloseTo(0.3 * 200 * 52, within(1e-9));
        assertThat(rented.number("running_cash") - own.number("running_cash")).isCloseTo(0.3 * 200 * 52, within(1e-9));
        assertThat(rented.number("returns_above_total")).isEqualTo(own.number("returns_above_total"));
    }
}
