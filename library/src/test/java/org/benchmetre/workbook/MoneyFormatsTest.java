package org.benchmetre.workbook;

import static org.assertj.core.api.Assertions.assertThat;

import org.benchmetre.budget.MinorUnit;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Minor units by ISO 4217 list one: USD and EUR 2, JPY 0, KWD 3. */
class MoneyFormatsTest {

    private static MoneyFormats of(String currency) {
        return new MoneyFormats(MinorUnit.decimals(currency));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = ';',
            value = {"USD;#,##0.00", "EUR;#,##0.00", "JPY;#,##0", "KWD;#,##0.000", "none;#,##0.00", "XXX;#,##0.00"})
    void an_amount_has_the_decimals_of_its_currency(String currency, String format) {
        assertThat(of(currency).amount()).isEqualTo(format);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = ';',
            value = {"USD;#,##0.00##", "JPY;General", "KWD;#,##0.000##"})
    void a_price_is_shown_as_typed(String currency, String format) {
        assertThat(of(currency).typed()).isEqualTo(format);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = ';',
            value = {
                "USD;0.05;0.9;#,##0.0000",
                "USD;0.05;2;#,##0.00",
                "USD;0.001;2;#,##0.00##",
                "JPY;5;90;#,##0.00",
                "JPY;0.1;2000;#,##0.00",
                "JPY;50;2000;#,##0",
                "KWD;0.005;0.09;#,##0.00000",
                "KWD;0.5;2;#,##0.000"
            })
    void a_small_price_for_each_unit_has_two_decimals_more(String currency, double least, double most, String format) {
        assertThat(of(currency).price(least, most)).isEqualTo(format);
    }
}
