package org.benchmetre.budget.unit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Temperatures as levels, by the fixed points of their scales; all else by its factor. */
class LevelsTest {

    /** A few operations on temperatures in kelvin. */
    private static final double NEAR = 1e-10;

    @ParameterizedTest
    @CsvSource({
        "32, degF, 0, degC",
        "212, degF, 100, degC",
        "-40, degF, -40, degC",
        "0, degC, 273.15, K",
        "273.15, K, 32, degF",
        "100, degC, 212, degF",
        "20, degC, 20, degC",
        "59, degF, 59, degF",
        "3, ft, 0.9144, m",
        "0, ft, 0, m"
    })
    void convert(double value, String from, double expected, String to) {
        assertThat(Unit.parse(from).convertLevel(value, Unit.parse(to))).isCloseTo(expected, within(NEAR));
    }

    @Test
    void a_difference_of_temperature_has_no_zero_of_its_own() {
        assertThat(Unit.parse("degF").zero()).isCloseTo(459.67 / 1.8, within(NEAR));
        assertThat(Unit.parse("1/degF").zero()).isZero();
        assertThat(Unit.parse("W/K").zero()).isZero();
        assertThat(Unit.parse("m").zero()).isZero();
    }

    @Test
    void a_factor_of_one_over_a_whole_number_divides() {
        assertThat(Unit.apply(3, Unit.parse("mm").factorTo(Unit.METRE))).isEqualTo(3.0 / 1000);
        assertThat(Unit.apply(3, Unit.METRE.factorTo(Unit.parse("mm")))).isEqualTo(3000);
    }

    @Test
    void money_of_a_later_year_is_nominal() {
        assertThat(Unit.parse("money_nominal").isNominal()).isTrue();
        assertThat(Unit.parse("money").isNominal()).isFalse();
        assertThat(Unit.ONE.isNominal()).isFalse();
    }
}
