package org.benchmetre.farm;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Map;
import org.assertj.core.data.Offset;
import org.benchmetre.budget.Budget;
import org.benchmetre.budget.run.Figures;
import org.benchmetre.workbook.Adjustments;
import org.benchmetre.workbook.LibreOfficeReferee;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Heat and electricity of houses that a reader can work out on paper. */
class EnergyTest {

    /** Sums of twelve products, up to some tens of thousands of kilowatt hours. */
    private static final Offset<Double> NEAR = within(1e-9);

    private static final Budget SAMPLE = Energy.alone();

    /** Cold in January, warm in every other month. */
    private static Budget twoKilowattsAKelvin() {
        Budget house = Energy.twoKilowattsAKelvin(SAMPLE);
        house = Energy.with(house, "day_temperature", month -> month == 0 ? 5 : 30);
        return Energy.with(house, "night_temperature", month -> month == 0 ? -5 : 30);
    }

    @Test
    void aMonthIsLossTimesKelvinsTimesHours() {
        Figures f = Figures.of(twoKilowattsAKelvin());
        assertThat(f.number("house_heat_loss")).isCloseTo(2000, NEAR);
        assertThat(f.number("day_heat", "jan")).isCloseTo(2.0 * 10 * 12 * 31, NEAR);
        assertThat(f.number("night_heat", "jan")).isCloseTo(2.0 * 15 * 12 * 31, NEAR);
        assertThat(f.number("heat_energy", "jul")).isZero();
        assertThat(f.number("heat_energy_total")).isCloseTo(2.0 * 25 * 12 * 31, NEAR);
        assertThat(f.number("night_heat_share")).isCloseTo(0.6, NEAR);
        assertThat(f.text("night_heat_compared")).isEqualTo("below the published 0.7 to 0.8");
    }

    @Test
    void theSunIsTakenOffTheDayAndWhatIsLeftOverIsLost() {
        Budget house = Sample.with(
                twoKilowattsAKelvin(),
                "house_length=20 m",
                "house_width=10 m",
                "solar_transmission=0.6 1",
                "solar_useful_share=0.5 1");
        Figures some = Figures.of(Energy.with(house, "solar_radiation", month -> 1));
        assertThat(some.number("sun_lift", "jan")).isCloseTo(1 * 200 * 0.6 * 0.5 / (2.0 * 12), NEAR);
        assertThat(some.number("day_heat", "jan")).isCloseTo((2.0 * 10 * 12 - 60) * 31, NEAR);
        Figures much = Figures.of(Energy.with(house, "solar_radiation", month -> 8));
        assertThat(much.number("day_heat", "jan")).isZero();
        assertThat(much.number("night_heat", "jan")).isCloseTo(2.0 * 15 * 12 * 31, NEAR);
    }

    @Test
    void aHouseThatIsNotHeatedHalfOfTheMonthTakesHalfTheHeat() {
        Figures f = Figures.of(Energy.with(twoKilowattsAKelvin(), "heated_share", month -> 0.5));
        assertThat(f.number("heat_energy", "jan")).isCloseTo(25.0 * 12 * 31, NEAR);
    }

    @Test
    void theDesignNightSizesTheHeaterWithTheScreenOpen() {
        Budget house = Sample.with(
                twoKilowattsAKelvin(),
                "night_screen=yes",
                "design_temperature=-20 degC",
                "design_inside=10 degC",
                "boiler_margin=0.25 1");
        Figures f = Figures.of(house);
        assertThat(f.number("design_heat_loss")).isCloseTo(60, NEAR);
        assertThat(f.number("boiler_size")).isCloseTo(75, NEAR);
        Figures mild = Figures.of(Sample.with(house, "design_temperature=50 degF", "design_inside=10 degC"));
        assertThat(mild.number("boiler_size")).isCloseTo(0, NEAR);
        assertThat(Energy.warnings(mild)).contains("design_night_warning");
    }

    @Test
    void aHouseThatIsHeatedInNoMonthHasNoHeater() {
        Figures f = Figures.of(Energy.with(twoKilowattsAKelvin(), "heated_share", month -> 0));
        assertThat(f.number("heat_energy_total")).isZero();
        assertThat(f.number("boiler_size")).isZero();
        assertThat(f.number("design_day_fuel")).isZero();
        assertThat(Energy.warnings(f)).isEmpty();
    }

    @Test
    void aMonthWithoutAClimateIsNotHeatedAndThatIsSaid() {
        Budget house = twoKilowattsAKelvin();
        Figures none = Figures.of(Energy.with(house, "day_hours", month -> 0));
        assertThat(none.number("heat_energy_total")).isZero();
        assertThat(none.number("boiler_size")).isZero();
        assertThat(Energy.warnings(none)).containsExactly("heating_warning");
        Figures one = Figures.of(Energy.with(house, "day_hours", month -> month == 6 ? 0 : 12));
        assertThat(one.number("heat_energy", "jan")).isCloseTo(2.0 * 25 * 12 * 31, NEAR);
        assertThat(one.number("months_without_climate")).isEqualTo(1);
        assertThat(Energy.warnings(one)).containsExactly("heating_warning");
    }

    /** Bartok, Greenhouse heat loss: propane 92,500 and heating oil 138,500 Btu/gal; 1 Btu is 1055.05585262 J. */
    @Test
    void theHeatOfTheFuelIsThatOfItsNameAndUnit() {
        double gallonOfOil = 138_500 * 1055.05585262 / 3.6e6;
        Budget house = Sample.with(twoKilowattsAKelvin(), "fuel_name=oil", "fuel_sold_by=gallon");
        Figures oil = Figures.of(house);
        assertThat(oil.number("fuel_heat_counted")).isCloseTo(gallonOfOil, NEAR);
        double needed = 2.0 * 25 * 12 * 31 / oil.number("heater_efficiency") / gallonOfOil;
        assertThat(oil.number("fuel_use_total")).isCloseTo(needed, NEAR);
        assertThat(Energy.warnings(oil)).isEmpty();
        Figures litre = Figures.of(Sample.with(house, "fuel_name=Propane", "fuel_sold_by=litre"));
        assertThat(litre.number("fuel_heat_counted")).isCloseTo(92_500 * 1055.05585262 / 3.6e6 / 3.785411784, NEAR);
        Figures entered = Figures.of(Sample.with(house, "fuel_heat=40 kWh/fuel_unit"));
        assertThat(entered.number("fuel_heat_counted")).isEqualTo(40);
        assertThat(Energy.warnings(entered)).isEmpty();
    }

    @Test
    void aFuelThatIsNotKnownOrHasNoPriceIsSaid() {
        Budget house = twoKilowattsAKelvin();
        Figures straw = Figures.of(Sample.with(house, "fuel_name=straw", "fuel_sold_by=bale"));
        assertThat(straw.number("fuel_use_total")).isZero();
        assertThat(Energy.warnings(straw)).containsExactly("fuel_unknown_warning");
        assertThat(straw.text("fuel_unknown_warning")).startsWith("The table has no straw by the bale, so no fuel is");
        Figures known =
                Figures.of(Sample.with(house, "fuel_name=straw", "fuel_sold_by=bale", "fuel_heat=60 kWh/fuel_unit"));
        assertThat(Energy.warnings(known)).isEmpty();
        Figures other = Figures.of(Sample.with(house, "fuel_name=oil", "fuel_heat=7.16 kWh/fuel_unit"));
        assertThat(Energy.warnings(other)).containsExactly("fuel_heat_warning");
        assertThat(other.text("fuel_heat_warning")).startsWith("The heat entered is not that of oil by the litre");
        assertThat(Energy.warnings(Figures.of(Sample.with(house, "fuel_price=0 money/fuel_unit"))))
                .containsExactly("fuel_price_warning");
        Budget cold = Energy.with(house, "heated_share", month -> 0);
        assertThat(Energy.warnings(Figures.of(
                        Sample.with(cold, "fuel_price=0 money/fuel_unit", "fuel_name=straw", "fuel_sold_by=bale"))))
                .isEmpty();
    }

    @Test
    void theSkinOfAGabledHouseIsPlainGeometry() {
        Figures f = Figures.of(Sample.with(
                SAMPLE,
                "envelope_areas=from_house",
                "house_length=20 m",
                "house_width=8 m",
                "eave_height=2 m",
                "roof_pitch=0.75 1",
                "span_count=1 1"));
        assertThat(f.number("surface_area", "roof")).isCloseTo(2 * 20 * 5, NEAR);
        assertThat(f.number("surface_area", "sides")).isCloseTo(2 * 20 * 2, NEAR);
        assertThat(f.number("surface_area", "ends")).isCloseTo(2 * (8 * 2 + 8 * 3 / 2.0), NEAR);
        assertThat(f.number("house_volume")).isCloseTo(20 * 28, NEAR);
    }

    @Test
    void powerTimesHoursTimesDaysIsElectricity() {
        Budget house = Sample.with(
                SAMPLE,
                "house_length=20 m",
                "house_width=10 m",
                "fan_power=5 W/m2",
                "cooler_power=2 kW",
                "base_power=0.1 kW");
        house = Energy.with(house, "fan_hours", month -> 6);
        house = Energy.with(house, "cooler_hours", month -> month == 6 ? 3 : 0);
        Figures f = Figures.of(house);
        assertThat(f.number("fan_energy", "jun")).isCloseTo(1.0 * 6 * 30, NEAR);
        assertThat(f.number("cooler_energy", "jul")).isCloseTo(2.0 * 3 * 31, NEAR);
        assertThat(f.number("cooler_energy", "jun")).isZero();
        assertThat(f.number("base_energy", "feb")).isCloseTo(0.1 * 24 * 28.25, NEAR);
    }

    @Test
    void whatIsOddIsSaid() {
        assertThat(Energy.warnings(Figures.of(SAMPLE))).isEmpty();
        Budget swapped = Energy.with(SAMPLE, "night_set", month -> month == 3 ? 25 : 8);
        assertThat(Energy.warnings(Figures.of(swapped))).containsExactly("set_point_warning");
        assertThat(Figures.of(swapped).text(SAMPLE.line("set_point_warning"), 2))
                .isEmpty();
        assertThat(Energy.warnings(Figures.of(Sample.with(SAMPLE, "heater_efficiency=3 1"))))
                .containsExactly("efficiency_warning");
        assertThat(Energy.warnings(Figures.of(Sample.with(SAMPLE, "envelope_areas=measured"))))
                .containsExactly("surface_warning");
    }

    @Test
    void theContainerHouseStandsEmptyInJulyAndReadsCustomaryUnits() {
        Figures f = Figures.of(Sample.containerHouse());
        assertThat(f.number("heat_energy", "jul")).isZero();
        assertThat(f.number("heat_energy", "jan")).isPositive();
        assertThat(f.number("design_difference")).isCloseTo((45 - 23) * 5 / 9.0, NEAR);
        assertThat(f.number("fuel_heat")).isCloseTo(92_500 * 1055.05585262 / 3.6e6, NEAR);
        assertThat(Energy.warnings(f)).allMatch(id -> id.startsWith("crop_"), "of crops, not of energy");
    }

    @Test
    void aSpreadsheetProgramAgreesBeforeAndAfterChanges(@TempDir Path folder) throws IOException {
        LibreOfficeReferee.require();
        LibreOfficeReferee referee = new LibreOfficeReferee(folder);
        referee.book(SAMPLE).add(Map.of()).add(Adjustments.seeded(SAMPLE, 1)).add(Energy.changes(SAMPLE, 2));
        assertThat(referee.differences()).isEmpty();
    }
}
