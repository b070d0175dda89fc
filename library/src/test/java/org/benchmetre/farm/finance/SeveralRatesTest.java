package org.benchmetre.farm.finance;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Map;
import org.benchmetre.budget.run.Figures;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Cash that changes sign more than once: flows are the product of a factor 1 - (1 + rate)v for each rate, times an amount. */
class SeveralRatesTest {

    /** Rates, beyond every printed digit; roots this near are well apart. */
    private static final double RATE = 1e-9;

    private static final String[] ROWS = {"first", "second", "third"};

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
                    -1000,2300,-1320              | 2 | 0.1,0.2     | two rates: 10.0 % and 20.0 %
                    -1600,10000,-10000            | 1 | 0.25        | 25.0 %
                    -1000,4500,-6500,3000         | 3 | 0,0.5,1     | three rates: 0.0 %, 50.0 % and 100.0 %
                    -100,750,-2000,2250,-900      | 4 | 0,0.5,1     | 4 rates, the lowest 0.0 %, 50.0 % and 100.0 %
                    -1000,2200,-1210              | 1 | 0.1         | 10.0 %
                    -1000,1500,-1000              | 0 |             | no rate between -99 % and 300 %
                    -1000,1700,-600               | 2 | -0.5,0.2    | two rates: -50.0 % and 20.0 %
                    """)
    void everyRateWithinTheLimitsIsFound(String flows, int count, String rates, String words) {
        Figures f = Streams.of(0.05, Streams.flows(flows)).figures();
        assertThat(f.text("internal_rate_of_return")).isEqualTo("no single rate");
        assertThat(f.text("rates_of_return")).isEqualTo(words);
        assertThat(f.number("rate_root_count")).isEqualTo(count);
        double[] found = rates == null ? new double[0] : Streams.flows(rates);
        for (int row = 0; row < ROWS.length; row++) {
            boolean has = row < found.length;
            assertThat(f.hasReason(f.budget().line("rate_root"), row)).isEqualTo(!has);
            assertThat(f.number("rate_root_moved", ROWS[row])).isZero();
            assertThat(f.number("rate_root_value", ROWS[row])).isZero();
            if (has) {
                assertThat(f.number("rate_root", ROWS[row])).isCloseTo(found[row], within(RATE));
            }
        }
        assertThat(f.number("rate_root_stale")).isZero();
    }

    /** What a search found stays in a workbook; the live present value beside it is no longer nothing and words say so. */
    @Test
    void anEntryTypedOverInAWorkbookTellsThatTheRatesAreOld() {
        Streams streams = Streams.of(0.05, -1000, 2300, -1320);
        Figures written = streams.figures();
        assertThat(written.text("rates_of_return")).startsWith("two rates");
        Figures typed = written.typedOver(streams.typed(1, 2310));
        assertThat(typed.number("rate_root", "first")).isCloseTo(0.1, within(RATE));
        assertThat(typed.number("rate_root_value", "first")).isCloseTo(10 / 1.1, within(1e-6));
        assertThat(typed.text("rates_of_return"))
                .isEqualTo("several rates may hold; entries have changed since they were searched");
        assertThat(written.typedOver(Map.of()).text("rates_of_return")).startsWith("two rates");
    }

    /** Where no rate was found there is none to look at: trial rates tell that one has come about. */
    @Test
    void ratesThatComeAboutAreTold() {
        Streams streams = Streams.of(0.05, -1000, 1500, -1000);
        Figures written = streams.figures();
        assertThat(written.text("rates_of_return")).isEqualTo("no rate between -99 % and 300 %");
        assertThat(written.typedOver(streams.typed(1, 2300)).text("rates_of_return"))
                .contains("entries have changed");
    }

    /** Changed so that the sign changes once, the live rate stands again. */
    @Test
    void aSingleRateIsLive() {
        Streams streams = Streams.of(0.05, -1000, 2300, -1320);
        Figures written = streams.figures();
        assertThat(written.text("rates_of_return")).startsWith("two rates");
        assertThat(written.typedOver(streams.typed(2, 0)).text("rates_of_return"))
                .isEqualTo("130.0 %");
    }
}
