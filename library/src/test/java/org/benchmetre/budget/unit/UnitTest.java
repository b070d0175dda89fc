package org.benchmetre.budget.unit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class UnitTest {

    @ParameterizedTest
    @ValueSource(
            strings = {"m", "L/h", "W/(m2 K)", "money/(m2 a)", "1/m", "1", "kg/m3", "%", "Btu/(h ft2 degF)", "mH2O"})
    void aUnitReadsBackAsItPrints(String text) {
        assertThat(Unit.parse(text).toString()).isEqualTo(text);
        assertThat(Unit.parse(Unit.parse(text).toString())).isEqualTo(Unit.parse(text));
    }

    @Test
    void unitsAreEqualWhenTheyMeasureTheSame() {
        assertThat(Unit.parse("mm").times(Unit.parse("m"))).isEqualTo(Unit.parse("L/m"));
        assertThat(Unit.parse("kWh")).isEqualTo(Unit.parse("kW h"));
        assertThat(Unit.parse("kg/m").times(Unit.METRE)).hasToString("kg");
        assertThat(Unit.parse("L")).isNotEqualTo(Unit.parse("gal"));
    }

    @Test
    void countsAndBothKindsOfMoneyAreDimensionsOfTheirOwn() {
        assertThat(Unit.parse("plant").sameDimension(Unit.ONE)).isFalse();
        assertThat(Unit.MONEY.sameDimension(Unit.MONEY_NOMINAL)).isFalse();
        assertThatThrownBy(() -> Unit.METRE.factorTo(Unit.parse("L")))
                .isInstanceOf(UnitException.class)
                .hasMessage("Unit m does not convert to L: they measure different things.");
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "furlong", "m/", "m//s", "L/(h", "2m", "m2)", "ML", "Mg", "m yr/"})
    void whatIsNoUnitIsRefused(String text) {
        assertThatThrownBy(() -> Unit.parse(text)).isInstanceOf(UnitException.class);
    }

    @ParameterizedTest
    @CsvSource({
        "money/(m a), EUR/m/yr",
        "money/(a m2), EUR/m²/yr",
        "money/a, EUR/yr",
        "money, EUR",
        "%/a, %/yr",
        "g/(plant crop), g/plant/crop",
        "L/(h plant), L/h/plant",
        "h/(mo person), h/person/mo",
        "m3, m³",
        "1/h, 1/h",
        "1, 1",
        "degC, °C",
        "Btu/(h ft2 degF), Btu/h/ft²/°F",
        "Pa s, Pa·s",
        "mH2O, mH₂O",
        "uS/cm, µS/cm",
        "kWh/fuel_unit, kWh/fuel unit",
        "real/a, 1/yr (real)",
        "money_nominal/a, EUR/yr (nominal)"
    })
    void aUnitIsShownAsPeopleWriteItAndReadsBack(String inFiles, String written) {
        assertThat(Unit.parse(inFiles).display("EUR")).isEqualTo(written);
        assertThat(Unit.parse(written, Map.of("EUR", Unit.MONEY))).isEqualTo(Unit.parse(inFiles));
    }

    /** Whichever money the currency alone stands for. */
    @Test
    void moneyOfItsYearReadsBackAsFilesKeepItAndAsItIsShown() {
        for (Unit money : List.of(Unit.MONEY, Unit.MONEY_NOMINAL)) {
            Map<String, Unit> names = Map.of("EUR", money, "eur", money);
            assertThat(Unit.parse(Unit.MONEY_NOMINAL.inFiles("EUR"), names)).isEqualTo(Unit.MONEY_NOMINAL);
            assertThat(Unit.parse(Unit.MONEY_NOMINAL.display("EUR"), names)).isEqualTo(Unit.MONEY_NOMINAL);
            assertThat(Unit.parse("eur_nominal/a", names)).isEqualTo(Unit.parse("money_nominal/a"));
            assertThatThrownBy(() -> Unit.parse("USD_nominal", names)).isInstanceOf(UnitException.class);
        }
        assertThatThrownBy(() -> Unit.parse("roll_nominal", Map.of("roll", Unit.ONE)))
                .isInstanceOf(UnitException.class);
    }

    @ParameterizedTest
    @CsvSource({
        "feet, ft",
        "Foot, ft",
        "FT, ft",
        "inches, in",
        "inch, in",
        "hours, h",
        "hr, h",
        "years, a",
        "yr, a",
        "days, d",
        "weeks, wk",
        "months, mo",
        "F, degF",
        "°F, degF",
        "° C, degC",
        "lbs, lb",
        "LB, lb",
        "sq ft, ft2",
        "square feet, ft2",
        "sqft, ft2",
        "cu ft, ft3",
        "sq. m, m2",
        "cubic metres, m3",
        "litre, L",
        "liters, L",
        "l/h, L/h",
        "m^2, m2",
        "m², m2",
        "gpm, gal/min",
        "g per plant per crop, g/(plant crop)",
        "plants, plant",
        "L / h, L/h",
        "Pa·s, Pa s",
        "ft., ft",
        "in., in",
        "lbs., lb",
        "sq. ft., ft2",
        "sq.ft, ft2",
        "SF, ft2",
        "cu. ft., ft3",
        "cu.ft., ft3",
        "cuft, ft3",
        "CF, ft3",
        "linear feet, ft",
        "gallons, gal",
        "US gal, gal",
        "U.S. gallons, gal",
        "deg F, degF",
        "degrees F, degF",
        "f, degF",
        "c, degC",
        "per yr, 1/a",
        "/yr, 1/a",
        "%/year, %/a",
        "CM, cm",
        "millimeters, mm",
        "ltr, L",
        "ac, acre",
        "mos, mo",
        "BTU/hr, Btu/h",
        "lpm, L/min"
    })
    void whatElsePeopleWriteIsTaken(String written, String inFiles) {
        assertThat(Unit.parse(written)).isEqualTo(Unit.parse(inFiles));
    }

    @Test
    void signsOfFeetAndInchesAreTaken() {
        assertThat(Unit.parse("\"")).isEqualTo(Unit.parse("in"));
        assertThat(Unit.parse("'")).isEqualTo(Unit.parse("ft"));
        assertThat(Unit.parse("″")).isEqualTo(Unit.parse("in"));
    }

    @Test
    void oneThingThatIsCountedIsKnown() {
        assertThat(Unit.parse("money/plant").counted()).contains(Unit.parse("plant"));
        assertThat(Unit.parse("plant").counted()).contains(Unit.parse("plant"));
        assertThat(Unit.ONE.counted()).contains(Unit.ONE);
        assertThat(Unit.parse("item/pack").counted()).isEmpty();
        assertThat(Unit.parse("m").counted()).isEmpty();
    }

    @Test
    void whatIsCountedIsToldFromWhatIsMeasured() {
        assertThat(List.of("1", "bench", "plant").stream().map(Unit::parse)).allMatch(Unit::isCount);
        assertThat(List.of("%", "m", "m2", "money", "bench2", "1/bench").stream()
                        .map(Unit::parse))
                .noneMatch(Unit::isCount);
    }

    @Test
    void filesKeepTheirSpelling() {
        assertThat(Unit.parse("money/(m2 a)").inFiles("EUR")).isEqualTo("EUR/(m2 a)");
        assertThat(Unit.parse("EUR/m", Map.of("EUR", Unit.MONEY))).isEqualTo(Unit.parse("money/m"));
    }

    @Test
    void anInchIsExact() {
        assertThat(Unit.parse("in").factorTo(Unit.METRE)).isEqualTo(Ratio.of("0.0254"));
    }
}
