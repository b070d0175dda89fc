package org.benchmetre.budget.unit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
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
    @ValueSource(strings = {"", "furlong", "m/", "m//s", "L/(h", "2m", "m^2", "m2)"})
    void whatIsNoUnitIsRefused(String text) {
        assertThatThrownBy(() -> Unit.parse(text)).isInstanceOf(UnitException.class);
    }

    @Test
    void moneyShowsTheCurrencyAndReadsItBack() {
        assertThat(Unit.parse("money/m").display("EUR")).isEqualTo("EUR/m");
        assertThat(Unit.parse("EUR/m", Map.of("EUR", Unit.MONEY))).isEqualTo(Unit.parse("money/m"));
    }

    @Test
    void anInchIsExact() {
        assertThat(Unit.parse("in").factorTo(Unit.METRE)).isEqualTo(Ratio.of("0.0254"));
    }
}
