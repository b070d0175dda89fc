package org.benchmetre.budget;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class RoundingTest {

    @ParameterizedTest
    @CsvSource({
        "2.0000004, 2, 2",
        "2.0000006, 3, 2",
        "1.9999996, 2, 2",
        "1.9999994, 2, 1",
        "0, 0, 0",
        "-1.2, -2, -2",
        "-1.0000001, -1, -1",
        "1e12, 1e12, 1e12",
        "6.999999999999999, 7, 7"
    })
    void wholeNumbersAreFoundAfterSixDecimals(double x, double up, double down) {
        assertThat(Rounding.wholeUp(x)).isEqualTo(up);
        assertThat(Rounding.wholeDown(x)).isEqualTo(down);
    }

    @Test
    void quotientsThatShouldBeWholeAre() {
        for (int packs = 1; packs < 3000; packs++) {
            double quantity = packs * 0.1;
            assertThat(Rounding.wholeUp(quantity / 0.1)).isEqualTo(packs);
            assertThat(Rounding.wholeDown(quantity / 0.1)).isEqualTo(packs);
        }
    }

    @Test
    void moreMeansMoreByAMillionth() {
        assertThat(Rounding.exceeds(0.1 + 0.2, 0.3)).isFalse();
        assertThat(Rounding.exceeds(0.300001, 0.3)).isTrue();
        assertThat(Rounding.exceeds(0.3, 0.300001)).isFalse();
    }
}
