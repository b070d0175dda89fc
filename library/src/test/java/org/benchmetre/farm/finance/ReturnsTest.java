package org.benchmetre.farm.finance;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.stream.IntStream;
import org.benchmetre.budget.run.Figures;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What streams of cash are worth, against published figures and arithmetic anyone can redo. */
class ReturnsTest {

    /** Double arithmetic on money of tens of thousands. */
    private static final double MONEY = 1e-9;

    /** Rates, beyond every printed digit. */
    private static final double RATE = 1e-9;

    /** Adobe FormCalc reference, NPV, whose first flow comes a year later; numpy-financial documentation, npv. */
    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
                    0.10 | 0,500,1500,4000,10000         | 11529.60863329007 | 1e-8
                    0.08 | -40000,5000,8000,12000,30000  | 3065.22267        | 0.000005
                    """)
    void netPresentValueIsWhatIsPrinted(double rate, String flows, double expected, double near) {
        Figures f = Streams.of(rate, Streams.flows(flows)).figures();
        assertThat(f.number("net_present_value")).isCloseTo(expected, within(near));
    }

    /** Microsoft Support, IRR; numpy-financial documentation, irr. */
    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
                    -70000,12000,15000,18000,21000,26000 | 0.08663094803653162   | 1e-9     | 8.7 %
                    -70000,12000,15000,18000,21000       | -0.021244848273410968 | 1e-9     | -2.1 %
                    -100,39,59,55,20                     | 0.28095               | 0.000005 | 28.1 %
                    """)
    void rateOfReturnIsWhatIsPrinted(String flows, double expected, double near, String words) {
        Figures f = Streams.of(0.05, Streams.flows(flows)).figures();
        assertThat(f.number("internal_rate_of_return")).isCloseTo(expected, within(near));
        assertThat(f.text("rates_of_return")).isEqualTo(words);
        assertThat(f.number("rate_root", "first")).isCloseTo(expected, within(near));
        assertThat(f.number("rate_root_count")).isEqualTo(1);
    }

    /** Microsoft Support, MIRR: 120,000 paid with a loan at 10 %, yearly income put by at 12 %; printed 13 %. */
    @Test
    void modifiedRateIsWhatIsPrinted() {
        Figures f = Streams.of(0.10, -120000, 39000, 30000, 21000, 37000, 46000).figures();
        assertThat(f.number("modified_rate_of_return")).isCloseTo(0.1260941303659051, within(RATE));
        double in = 39000 * Math.pow(1.12, 4) + 30000 * Math.pow(1.12, 3) + 21000 * 1.12 * 1.12 + 37000 * 1.12 + 46000;
        assertThat(f.number("modified_rate_in")).isCloseTo(in, within(MONEY));
        assertThat(f.number("modified_rate_out")).isCloseTo(120000, within(MONEY));
    }

    /** Later outlays are discounted at the finance rate: 100 at once and 110 a year later at 10 % are 200; 288 back is 20 % over two years. */
    @Test
    void modifiedRateDiscountsWhatGoesOutLater() {
        Figures f = Streams.of(0.10, -100, -110, 288).figures();
        assertThat(f.number("modified_rate_out")).isCloseTo(200, within(MONEY));
        assertThat(f.number("modified_rate_of_return")).isCloseTo(0.2, within(RATE));
    }

    /** An exercise of corporate finance as in Ross, Westerfield and Jaffe: 48,000 at 6 % for 6,000 a year, printed 11.23 years. */
    @Test
    void discountedPaybackIsWhatIsPrinted() {
        double[] flows = new double[13];
        IntStream.range(1, flows.length).forEach(year -> flows[year] = 6000);
        flows[0] = -48000;
        Figures f = Streams.of(0.06, flows).figures();
        assertThat(f.number("discounted_payback_years")).isCloseTo(11.227630577425234, within(RATE));
        assertThat(f.number("payback_years")).isCloseTo(8, within(RATE));
        assertThat(f.number("discounted_cumulative", "12")).isCloseTo(f.number("net_present_value"), within(MONEY));
    }

    /** The same family: 1,748,000 for 400,000 a year over ten years at 19 %. */
    @Test
    void whatEarnsLessThanTheRateIsNeverPaidBackWithInterest() {
        double[] flows = new double[11];
        IntStream.range(1, flows.length).forEach(year -> flows[year] = 400_000);
        flows[0] = -1_748_000;
        Figures f = Streams.of(0.19, flows).figures();
        assertThat(f.text("discounted_payback_years")).isEqualTo("never");
        assertThat(f.number("payback_years")).isCloseTo(4.37, within(RATE));
    }

    @Test
    void cashThatNeverFallsBelowNothingHasNothingToPayBack() {
        Figures f = Streams.of(0.05, 0, 10, -5, 20).figures();
        assertThat(f.text("payback_years")).isEqualTo("nothing to pay back");
        assertThat(f.text("discounted_payback_years")).isEqualTo("nothing to pay back");
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
                    0,0,0          | no rate: there is no cash
                    -10,-5,0       | no rate: cash never comes in
                    0,10,5         | no rate: cash never goes out
                    100,-50,-60    | no return: cash comes in before it goes out
                    1000,-1,0      | no return: cash comes in before it goes out
                    -10000000,1,0  | no rate above -99 %
                    """)
    void withoutARateWordsSayWhy(String flows, String words) {
        Figures f = Streams.of(0.05, Streams.flows(flows)).figures();
        assertThat(f.text("internal_rate_of_return")).isEqualTo(words);
        assertThat(f.text("rates_of_return")).isEqualTo(words);
        assertThat(f.troubles()).isEmpty();
    }

    @Test
    void whereNothingGoesOutThereIsNoModifiedRateAndWhereNothingComesInAllIsLost() {
        assertThat(Streams.of(0.05, 0, 10, 5).figures().text("modified_rate_of_return"))
                .isEqualTo("no rate: cash never goes out");
        assertThat(Streams.of(0.05, -10, -5, 0).figures().number("modified_rate_of_return"))
                .isEqualTo(-1);
    }

    /** A lump of 1,000 over four years at 10 %: 1000 x 0.1 / (1 - 1.1^-4) a year, on 50 m of bench. */
    @Test
    void equivalentYearlyCostOfALumpIsItsCapitalRecovery() {
        Figures f = Streams.of(0.10, -1000, 0, 0, 0, 0).figures();
        double yearly = 1000 * 0.1 / (1 - Math.pow(1.1, -4));
        assertThat(f.number("costs_present_value")).isCloseTo(1000, within(MONEY));
        assertThat(f.number("equivalent_cost")).isCloseTo(yearly, within(MONEY));
        assertThat(f.number("equivalent_cost_per_metre")).isCloseTo(yearly / 50, within(MONEY));
    }

    /** Equal costs at the end of each year are their own equivalent. */
    @Test
    void equivalentYearlyCostOfEqualCostsIsEachOfThem() {
        Figures f = Streams.of(0.07, 0, -300, -300, -300).figures();
        assertThat(f.number("equivalent_cost")).isCloseTo(300, within(MONEY));
    }

    @Test
    void aStreamOfMoneyOfItsYearHasNamesUnitsAndLabelsOfItsOwn() {
        Streams streams = Streams.nominal(0.08, -40000, 5000, 8000, 12000, 30000);
        Figures f = streams.figures();
        assertThat(f.number("equity_net_present_value")).isCloseTo(3065.22267, within(0.000005));
        assertThat(streams.budget.line("equity_net_present_value").label())
                .isEqualTo("Net present value, after finance (nominal)");
        assertThat(streams.budget.line("equity_internal_rate_of_return").unit()).hasToString("nominal/a");
        assertThat(f.hasReason(streams.budget.line("equity_modified_rate_of_return"), 0))
                .isFalse();
        assertThat(f.troubles()).isEmpty();
    }
}
