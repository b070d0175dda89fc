package org.benchmetre.page;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.RoundingMode;
import java.util.List;
import java.util.SplittableRandom;
import org.benchmetre.page.PrintedDigits.Row;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Digits of quantities and prices: what is printed multiplies to what is printed. */
class PrintedDigitsTest {

    private static Row row(double quantity, double price) {
        return new Row(quantity, price, quantity * price);
    }

    private static PrintedDigits whole(Row... rows) {
        return PrintedDigits.of(List.of(rows), 0, 2);
    }

    @ParameterizedTest
    @CsvSource({
        "12971.4, 0.0506204, 5", // 12971.4 x 0.000005 = 0.065 < 0.5, and x 0.00005 = 0.65 is not
        "89, 18.4, 2", // the wage has no more digits
        "1, 370.7512, 2", // 1 x 0.005 < 0.5
        "200, 1.63671, 3", // 200 x 0.0005 = 0.1 < 0.5, and x 0.005 = 1 is not
        "0, 0, 2"
    })
    void a_price_has_as_many_decimals_as_its_quantity_asks_for(double quantity, double price, int decimals) {
        assertThat(whole(row(quantity, price)).prices()).containsExactly(decimals);
    }

    @ParameterizedTest
    @CsvSource({
        "200, 1.63, 0", // exact
        "1126.5441, 0.9, 0", // 0.9 x 0.5 < 0.5
        "34.86, 3.99, 1", // 3.99 x 0.05 < 0.5
        "89.0579, 18.4, 2", // 18.4 x 0.005 = 0.09 < 0.5
        "89.0579, 2000, 4" // 2000 x 0.00005 = 0.1 < 0.5
    })
    void quantities_have_as_many_as_the_price_asks_for(double quantity, double price, int decimals) {
        assertThat(whole(row(quantity, price)).quantity()).isEqualTo(decimals);
    }

    @Test
    void all_quantities_have_the_same_number() {
        PrintedDigits digits = whole(row(200, 1.63671), row(89.0579, 18.4));
        assertThat(digits.quantity()).isEqualTo(2);
        assertThat(digits.prices()).containsExactly(3, 2);
    }

    /** 3 x 0.83335 = 2.50005 prints as 3: 3 x 0.83 = 2.49 and 3 x 0.833 = 2.499 would print as 2, 3 x 0.8334 = 2.5002 does not. */
    @Test
    void a_product_near_the_middle_gets_more_digits() {
        assertThat(whole(row(3, 0.83335)).prices()).containsExactly(4);
    }

    @Test
    void what_is_no_number_asks_for_nothing() {
        assertThat(whole(new Row(Double.NaN, 3, Double.NaN)).prices()).containsExactly(2);
        assertThat(PrintedDigits.of(List.of(), 0, 2).quantity()).isZero();
    }

    @Test
    void a_currency_without_cents_has_prices_without_decimals_where_that_will_do() {
        assertThat(PrintedDigits.of(List.of(row(3, 1500)), 0, 0).prices()).containsExactly(0);
    }

    @Test
    void halves_go_away_from_zero() {
        assertThat(PrintedDigits.printed(2.5, 0)).isEqualByComparingTo("3");
        assertThat(PrintedDigits.printed(-2.5, 0)).isEqualByComparingTo("-3");
        assertThat(PrintedDigits.printed(1.005, 2)).isEqualByComparingTo("1.01");
    }

    /** The law itself, over many sizes. */
    @Test
    void printed_factors_multiply_to_the_printed_value() {
        SplittableRandom random = new SplittableRandom(7);
        for (int seed = 0; seed < 5000; seed++) {
            Row row = row(Math.exp(random.nextDouble() * 14 - 3), Math.exp(random.nextDouble() * 14 - 7));
            PrintedDigits digits = whole(row);
            assertThat(PrintedDigits.printed(row.quantity(), digits.quantity())
                            .multiply(PrintedDigits.printed(
                                    row.price(), digits.prices().get(0)))
                            .setScale(0, RoundingMode.HALF_UP))
                    .as(row.toString())
                    .isEqualByComparingTo(PrintedDigits.printed(row.value(), 0));
        }
    }
}
