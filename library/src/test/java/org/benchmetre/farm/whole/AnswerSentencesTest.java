package org.benchmetre.farm.whole;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.LongStream;
import org.benchmetre.budget.Budget;
import org.benchmetre.budget.run.Figures;
import org.benchmetre.farm.Sample;
import org.benchmetre.farm.Seeded;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The sentences of the answer are true whatever is entered. */
class AnswerSentencesTest {

    /** Half of the last digit that is printed, and what a double of that size may miss. */
    private static final double HALF_A_CENT = 0.005 + 1e-9;

    private static final String NUMBER = "([0-9,]+\\.[0-9]{2})";

    private static final Pattern COST_AND_RETURN = Pattern.compile("A metre of bench costs " + NUMBER
            + " USD to build and " + NUMBER + " a year to own and run\\. It brings in " + NUMBER + ", so " + NUMBER
            + " is (left above the costs that are listed|left above total cost|missing)\\.");
    private static final Pattern MONEY = Pattern.compile("Of " + NUMBER + " USD a metre, labour takes " + NUMBER
            + ", heat and power " + NUMBER + "; " + NUMBER + " is (left|missing)\\.");
    private static final Pattern BREAK_EVEN = Pattern.compile("Nothing is left below " + NUMBER + " USD/kg \\("
            + NUMBER + " USD/lb\\)(, or below ([0-9,]+) g a plant and crop\\.|"
            + "\\. No yield covers the costs at the prices entered: a further kg leaves nothing\\.)");

    private static final Budget SAMPLE = Sample.troughHouse();

    static LongStream seeds() {
        return LongStream.rangeClosed(0, 100);
    }

    private static Figures seeded(long seed) {
        return seed == 0 ? Figures.of(SAMPLE) : Seeded.figures(SAMPLE, seed);
    }

    private static Matcher found(Pattern pattern, String sentence) {
        Matcher matcher = pattern.matcher(sentence);
        assertThat(matcher.matches()).as(sentence).isTrue();
        return matcher;
    }

    private static void near(Matcher matcher, int group, double expected) {
        double shown = new BigDecimal(matcher.group(group).replace(",", "")).doubleValue();
        assertThat(Math.abs(shown - expected)).as(matcher.group()).isLessThanOrEqualTo(HALF_A_CENT);
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void cost_and_return_are_those_of_a_metre(long seed) {
        Figures f = seeded(seed);
        double left = f.number("returns_above_total_per_metre");
        Matcher m = found(COST_AND_RETURN, f.text("answer_cost_and_return"));
        near(m, 1, f.number("first_cost_per_metre"));
        near(m, 2, f.number("yearly_cost_per_metre"));
        near(m, 3, f.number("account_per_metre", "receipts"));
        near(m, 4, Math.abs(left));
        assertThat(m.group(5).equals("missing")).isEqualTo(left < 0);
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void the_money_of_a_metre_goes_where_the_sentence_says(long seed) {
        Figures f = seeded(seed);
        Matcher m = found(MONEY, f.text("money_sentence"));
        near(m, 1, f.number("account_per_metre", "receipts"));
        near(m, 2, (f.number("labour_cost_total") + f.number("parts_used_up_labour")) / f.number("bench_metres"));
        near(m, 3, f.number("energy_cost_total") / f.number("bench_metres"));
        near(m, 4, Math.abs(f.number("returns_above_total_per_metre")));
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void nothing_is_left_at_the_break_evens(long seed) {
        Figures f = seeded(seed);
        Matcher m = found(BREAK_EVEN, f.text("answer_break_even"));
        near(m, 1, f.number("break_even_price"));
        near(m, 2, f.number("break_even_price") * 0.45359237);
        boolean even = !f.hasReason(SAMPLE.line("break_even_yield"), 0);
        assertThat(m.group(4) != null).isEqualTo(even);
        if (even) {
            assertThat(Math.abs(Double.parseDouble(m.group(4).replace(",", "")) - f.number("break_even_yield")))
                    .isLessThanOrEqualTo(0.5 + 1e-9);
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"yield_per_plant=0 g/(plant crop)", "marketable_share=0 1"})
    void without_fruit_nothing_comes_in_and_no_price_helps(String setting) {
        Figures f = Figures.of(Sample.with(SAMPLE, setting));
        assertThat(f.text("answer_cost_and_return"))
                .contains(" It brings in nothing, so ")
                .endsWith(" is missing.");
        assertThat(f.text("answer_break_even")).isEqualTo("There is no fruit to sell, so no price covers the costs.");
        assertThat(f.text("money_sentence"))
                .startsWith("Nothing comes in; in USD a metre, labour takes ")
                .endsWith(" is missing.");
    }

    @Test
    void a_kilogram_that_leaves_nothing_has_no_break_even_yield() {
        Figures f = Figures.of(Sample.with(SAMPLE, "receipts_by=one_price", "fruit_price=1 money/kg"));
        assertThat(f.text("answer_break_even"))
                .endsWith("No yield covers the costs at the prices entered: a further kg leaves nothing.");
    }

    @Test
    void no_sentence_is_longer_than_a_line_of_the_page() {
        Figures f = Figures.of(SAMPLE);
        assertThat(f.text("answer_cost_and_return")).hasSizeLessThan(150);
        assertThat(f.text("answer_break_even")).hasSizeLessThan(150);
        assertThat(f.text("money_sentence")).hasSizeLessThan(150);
    }
}
