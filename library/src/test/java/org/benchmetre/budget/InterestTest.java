package org.benchmetre.budget;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.benchmetre.budget.Formulas.number;
import static org.benchmetre.budget.Formulas.presentValue;

import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.assertj.core.data.Offset;
import org.benchmetre.budget.entry.Given;
import org.benchmetre.budget.run.Figures;
import org.benchmetre.budget.unit.Unit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Interest against printed answers and powers that anyone can redo. */
class InterestTest {

    /** A few operations on doubles. */
    private static final Offset<Double> EXACT = within(1e-9);

    private static double[] flows(String text) {
        return Stream.of(text.split(" ")).mapToDouble(Double::parseDouble).toArray();
    }

    /** 1.1^4 is 1.4641, 0.98^2 is 0.9604. */
    @Test
    void recovery_pays_interest_on_salvage_and_brings_back_the_rest() {
        assertThat(Interest.recovery(0.1, 4, 10_000, 1_000)).isCloseTo(9_000 * 0.14641 / 0.4641 + 100, EXACT);
        assertThat(Interest.recovery(0.1, 1, 100, 0)).isCloseTo(110, EXACT);
        assertThat(Interest.recovery(0.1, 4, 0, 100)).isCloseTo(-10 / 0.4641, EXACT);
        assertThat(Interest.recovery(-0.02, 2, 1_000, 0)).isCloseTo(1_000 * -0.02 * 0.9604 / (0.9604 - 1), EXACT);
    }

    @ParameterizedTest
    @CsvSource({"0", "0.00000005", "-0.00000005"})
    void without_a_rate_recovery_is_a_straight_line(double rate) {
        assertThat(Interest.recovery(rate, 10, 30_000, 10_000)).isEqualTo(2_000);
    }

    /** A straight line pays 2,000; a rate r adds about r times the mean of 30,000 and 12,000. */
    @ParameterizedTest
    @CsvSource({"0.000001", "-0.000001"})
    void a_small_rate_is_still_a_rate(double rate) {
        assertThat(Interest.recovery(rate, 10, 30_000, 10_000)).isCloseTo(2_000 + rate * 21_000, within(1e-6));
    }

    /** The first two from the documentation of numpy-financial and of Microsoft's IRR, the others by hand. */
    @ParameterizedTest
    @CsvSource({
        "-100 39 59 55 20, 0.28095, 0.000005",
        "-70000 12000 15000 18000 21000, -0.021, 0.0005",
        "-1 3, 2, 1e-12",
        "-1 0 4, 1, 1e-12",
        "100 -110, 0.1, 1e-12",
        "-100 50, -0.5, 1e-12",
        "-100 10, -0.9, 1e-12",
        "-100 100, 0, 1e-12",
        "-100 0.001, -0.99999, 1e-12"
    })
    void the_rate_of_return_makes_the_flows_worth_nothing(String flows, double rate, double near) {
        assertThat(Interest.rateOfReturn(flows(flows))).isCloseTo(rate, within(near));
    }

    @Test
    void what_never_pays_back_has_no_rate() {
        assertThat(Interest.rateOfReturn(flows("-100 -10"))).isNaN();
        assertThat(Interest.rateOfReturn(flows("100 10"))).isNaN();
        assertThat(Interest.rateOfReturn(flows("-10000000 1"))).isNaN();
    }

    /** The outlay of the documentation of numpy-financial, npv. */
    @ParameterizedTest
    @CsvSource({"0.08, 3065.22267, 0.000005", "0, 15000, 1e-9", "-0.5, 578000, 1e-6"})
    void a_present_value_discounts_from_the_second_flow_on(double rate, double expected, double near) {
        BudgetBuilder b = new BudgetBuilder("Test", "USD");
        ScheduleBuilder s = b.schedule("Sheet", "Table");
        double[] flows = flows("-40000 5000 8000 12000 30000");
        Axis years = Axis.periods("year", "Year", List.of("0", "1", "2", "3", "4"));
        Line line = s.entry("the_flows", "Flows", Unit.MONEY, years)
                .given(IntStream.range(0, flows.length)
                        .mapToObj(year -> Given.number(flows[year], Unit.MONEY))
                        .toList());
        b.schedule("Sheet", "Answer")
                .line(
                        "the_answer",
                        "Answer",
                        Unit.MONEY,
                        presentValue(number(rate, Unit.parse("real/a")), line, years));
        assertThat(Figures.of(b.build()).number("the_answer")).isCloseTo(expected, within(near));
    }
}
