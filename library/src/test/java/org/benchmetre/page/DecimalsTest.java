package org.benchmetre.page;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.List;
import org.benchmetre.budget.unit.Unit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class DecimalsTest {

    private static List<String> shown(String unit, int currency, double... values) {
        Decimals decimals = Decimals.of(Unit.parse(unit), values, currency);
        return Arrays.stream(values).mapToObj(decimals::shown).toList();
    }

    @Test
    void money_of_the_whole_farm_is_whole_with_thousands_and_zero_a_dash() {
        assertThat(shown("money", 2, 9903.4, 12_971.5, 0, 46)).containsExactly("9,903", "12,972", "–", "46");
        assertThat(shown("money/a", 2, -1_234_567.8)).containsExactly("-1,234,568");
        assertThat(shown("money/a", 2, 4.2, 0.046)).containsExactly("4.20", "0.05");
        assertThat(shown("money_nominal/a", 0, 4.2)).containsExactly("4");
    }

    @Test
    void money_for_a_unit_has_the_decimals_of_the_currency() {
        assertThat(shown("money/m", 2, 49.5061, 1200, 0.23)).containsExactly("49.51", "1,200.00", "0.23");
        assertThat(shown("money/m", 3, 49.5061)).containsExactly("49.506");
        assertThat(shown("money/m", 0, 4950.61, 3)).containsExactly("4,951", "3");
    }

    @Test
    void small_money_for_a_unit_has_four_decimals_and_smaller_six() {
        assertThat(shown("money/L", 2, 0.0506, 0.012)).containsExactly("0.0506", "0.0120");
        assertThat(shown("money/L", 2, 0.0506, 0.12)).containsExactly("0.05", "0.12");
        assertThat(shown("money/L", 2, 0.000506)).containsExactly("0.000506");
        assertThat(shown("money/L", 0, 0.45, 9.9)).containsExactly("0.45", "9.90");
    }

    @Test
    void other_quantities_have_three_figures_of_the_middle_one() {
        assertThat(shown("m", 2, 0.3925, 0.02365, 0.2078)).containsExactly("0.393", "0.024", "0.208");
        assertThat(shown("%", 2, 93.65, 97.26, 94.92)).containsExactly("93.7", "97.3", "94.9");
        assertThat(shown("1", 2, 0.001682, 0.0206, 0.1319)).containsExactly("0.0017", "0.0206", "0.1319");
        assertThat(shown("kg", 2, 1_252.25, 900.75)).containsExactly("1,252", "901");
    }

    @Test
    void the_largest_has_at_most_six_figures() {
        assertThat(shown("L", 2, 0.05, 0.04, 1500.5)).containsExactly("0.05", "0.04", "1,500.50");
    }

    @Test
    void whole_numbers_stay_whole_and_years_have_no_comma() {
        assertThat(shown("outlet/plant", 2, 1, 2, 1)).containsExactly("1", "2", "1");
        assertThat(shown("1", 2, 2026)).containsExactly("2026");
        assertThat(shown("plant", 2, 1300)).containsExactly("1,300");
        assertThat(shown("plant", 2, 0, 0)).containsExactly("–", "–");
    }

    /** A sum of what is paid is the sum of what is printed; what is not paid is shown as anywhere. */
    @Test
    void payments_keep_their_coins() {
        double[] values = {8190.19, 858.31, 1231.05};
        assertThat(Decimals.ofPayments(Unit.parse("money"), values, 2)).isEqualTo(new Decimals(2, true));
        assertThat(Decimals.ofPayments(Unit.parse("money"), values, 0)).isEqualTo(new Decimals(0, true));
        assertThat(Decimals.of(Unit.parse("money"), values, 2)).isEqualTo(new Decimals(0, true));
        assertThat(Decimals.ofPayments(Unit.parse("m"), values, 2)).isEqualTo(Decimals.of(Unit.parse("m"), values, 2));
    }

    @ParameterizedTest
    @CsvSource({"0.085,0.3,5.2,3,0.300", "6,4,0,0,4", "0.0003,0.05,0.1,4,0.0500"})
    void typed_numbers_lose_no_digit(double first, double second, double third, int count, String shown) {
        Decimals decimals = Decimals.exact(Unit.parse("h"), new double[] {first, second, third});

        assertThat(decimals.count()).isEqualTo(count);
        assertThat(decimals.written(second)).isEqualTo(shown);
    }

    @Test
    void what_is_not_finite_counts_nowhere_and_rounded_nothing_has_no_minus() {
        double[] values = {Double.NaN, 12.34, Double.POSITIVE_INFINITY};

        assertThat(Decimals.of(Unit.parse("m"), values, 2)).isEqualTo(new Decimals(1, true));
        assertThat(new Decimals(2, true).shown(-0.001)).isEqualTo("0.00");
        assertThat(new Decimals(2, true).shown(1.005)).isEqualTo("1.01");
        assertThat(new Decimals(2, true).written(0)).isEqualTo("0.00");
    }
}
