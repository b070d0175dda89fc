package org.benchmetre.farm.irrigation.hydraulics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The closed form of the multiple-outlet factor against its sum. */
class OutletFactorTest {

    /** What the class comment promises; the worst is two outlets, where the next term of the series is under 4e-8. */
    private static final double CLOSED_FORM = 1e-7;

    @ParameterizedTest
    @ValueSource(doubles = {1, 1.75, 1.85, 1.852, 2, 2.75})
    void is_the_sum_over_the_outlets(double exponent) {
        double[] found = HelperFormulas.outletFactors(exponent, 2000);
        double sum = 0;
        for (int n = 1; n <= found.length; n++) {
            sum += Math.pow(n, exponent);
            double expected = sum / Math.pow(n, exponent + 1);
            assertThat(found[n - 1]).as("%d outlets", n).isCloseTo(expected, within(CLOSED_FORM));
        }
    }

    @ParameterizedTest
    @ValueSource(doubles = {1, 1.75, 1.852, 2, 2.75})
    void is_one_for_one_outlet(double exponent) {
        assertThat(HelperFormulas.outletFactors(exponent, 1)[0]).isEqualTo(1);
    }

    /** Riemann's zeta function at -m, to twenty figures by an independent program, rounded. */
    @ParameterizedTest
    @CsvSource({"1.75,-0.00990137762367", "2.75,0.00914715006908", "1.852,-0.00527364131727", "1.85,-0.00535609877182"})
    void its_constant_is_the_zeta_function(double exponent, double zeta) {
        assertThat(OutletFactor.constant(exponent)).isCloseTo(zeta, within(5e-12));
    }

    @Test
    void an_exponent_of_no_law_is_refused() {
        assertThatThrownBy(() -> HelperFormulas.outletFactors(Double.NaN, 1))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("The exponent of a friction law is 1 to 3, but found NaN.");
    }
}
