package org.benchmetre.batch;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Decimals of money by ISO 4217 list one: USD 2, JPY 0, KWD 3. */
class AmountsTest {

    @TempDir
    Path folder;

    private Path in(String currency) {
        Path scenario = Ran.copy(folder);
        try {
            Path farm = scenario.resolve("farm.csv");
            Files.writeString(farm, Files.readString(farm).replace("USD", currency));
        } catch (IOException e) {
            throw new java.io.UncheckedIOException(e);
        }
        return scenario;
    }

    @ParameterizedTest
    @CsvSource({"USD,[0-9]+\\.[0-9]{2}", "JPY,[0-9]+", "KWD,[0-9]+\\.[0-9]{3}"})
    void amounts_have_the_decimals_of_their_currency(String currency, String form) {
        String out = Ran.with("price", in(currency)).out();

        assertThat(out).containsPattern("In total +" + form + "  " + currency + "\n");
        assertThat(out).containsPattern("Labour hours +[0-9]+\\.[0-9]{2}  h");
    }

    @Test
    void money_for_each_metre_keeps_two_decimals_while_it_is_below_a_hundred() {
        assertThat(Ran.with("price", in("JPY")).out())
                .containsPattern("Per metre of bench +[0-9]{2}\\.[0-9]{2}  JPY/m\n");
    }

    @Test
    void numbers_of_four_figures_have_at_most_the_decimals_of_their_currency() {
        assertThat(Shown.money(12_345.678, "JPY")).isEqualTo("12346");
        assertThat(Shown.money(123.45678, "KWD")).isEqualTo("123.457");
        assertThat(Shown.money(123.456, "USD")).isEqualTo("123.46");
        assertThat(Shown.money(12.34567, "JPY")).isEqualTo("12.35");
    }

    @ParameterizedTest
    @CsvSource({"XXX", "DEM", "XAU", "usd"})
    void what_is_no_money_of_any_country_is_refused(String currency) {
        Ran ran = Ran.with("check", in(currency));

        assertThat(ran.exit()).isEqualTo(1);
        assertThat(ran.err())
                .contains("found \"" + currency
                        + "\", expected an ISO 4217 code in capitals of money in use, such as EUR,");
    }

    @Test
    void zero_has_no_sign() {
        assertThat(Amounts.fixed(-0.001, 2)).isEqualTo("0.00");
        assertThat(Amounts.fixed(-0.4, 0)).isEqualTo("0");
        assertThat(Amounts.fixed(-0.6, 0)).isEqualTo("-1");
    }
}
