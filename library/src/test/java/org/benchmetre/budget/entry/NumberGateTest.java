package org.benchmetre.budget.entry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.benchmetre.budget.unit.Unit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class NumberGateTest {

    private static final Unit METRE = Unit.METRE;
    private static final Bounds NOT_NEGATIVE = new Bounds(0, true, 500, false);
    private static final String EXPECTED = ", expected a number from 0 to 500 m for Length (bench_length)";

    private final List<String> refusals = new ArrayList<>();

    private Optional<Given> take(Typed typed, Bounds bounds, Blank blank) {
        Subject subject = new Subject("Length", "bench_length", METRE, "EUR");
        return new NumberGate(subject, bounds, blank)
                .accept(typed, Given.number(7, METRE))
                .orElse(no -> refusals.add(no.words()));
    }

    private Optional<Given> take(String text) {
        return take(Typed.of(text, METRE), NOT_NEGATIVE, Blank.REFUSED);
    }

    @ParameterizedTest
    @CsvSource({"0,0", "12,12", "+1.5,1.5", ".5,0.5", "007,7", "1e2,100", "2.5E-1,0.25", "0.1,0.1", "1e-400,0"})
    void plain_numbers_are_taken(String text, double value) {
        assertThat(take(text).orElseThrow().number()).isEqualTo(value);
        assertThat(refusals).isEmpty();
    }

    @ParameterizedTest
    @CsvSource({
        "3 metrs, 3 metrs, did you mean m?",
        "3 foots, foots, did you mean ft?",
        "3 inchs, inchs, did you mean in?",
        "3 furlong, furlong, ''",
        "3 liters, liters, ''"
    })
    void a_unit_that_is_none_is_told_with_the_one_that_was_meant(String typed, String unit, String question) {
        assertThat(take(typed)).isEmpty();
        String behind = question.isEmpty() ? "" : "; " + question;
        assertThat(refusals)
                .containsExactly("found \"" + unit.replace("3 ", "")
                        + "\", expected a unit that converts to m for Length (bench_length)" + behind);
    }

    @ParameterizedTest
    @CsvSource({"bench, ea", "plant, pcs", "1, each", "outlet, Pieces"})
    void pieces_are_what_the_line_counts(String counted, String word) {
        Unit unit = Unit.parse(counted);
        NumberGate gate = new NumberGate(new Subject("Count", "count", unit, "EUR"), Bounds.ANY, Blank.REFUSED);
        assertThat(gate.accept(Typed.of("12 " + word, unit), Given.blank(unit))
                        .orElse(no -> refusals.add(no.words()))
                        .orElseThrow()
                        .number())
                .isEqualTo(12);
        assertThat(take("12 " + word)).isEmpty();
    }

    private Optional<Given> takeIn(String unit, String typed, Bounds bounds) {
        Unit line = Unit.parse(unit);
        return new NumberGate(new Subject("Rate", "rate", line, "USD"), bounds, Blank.REFUSED)
                .accept(Typed.of(typed, line), Given.blank(line))
                .orElse(no -> refusals.add(no.words()));
    }

    @ParameterizedTest
    @ValueSource(strings = {"7%/yr", "7 % per year", "7 %/a", "7 %/yr (real)", "0.07 /yr", "0.07", "7 %"})
    void a_rate_that_does_not_say_which_money_it_is_on_is_of_the_kind_of_the_line(String typed) {
        assertThat(takeIn("real/a", typed, NOT_NEGATIVE).orElseThrow().number()).isCloseTo(0.07, within(1e-15));
        assertThat(refusals).isEmpty();
    }

    @Test
    void a_percentage_that_is_typed_as_a_number_is_asked_about() {
        Bounds half = new Bounds(0, true, 0.5, false);
        assertThat(takeIn("nominal/a", "8", half)).isEmpty();
        assertThat(takeIn("nominal/a", "80", half)).isEmpty();
        assertThat(takeIn("nominal/a", "60 %", half)).isEmpty();
        assertThat(refusals)
                .containsExactly(
                        "found \"8 1/yr (nominal)\", expected a number from 0 to 0.5 1/yr (nominal) for Rate (rate); did you mean 0.08"
                                + " or 8 %? 8 would be 800 % a year",
                        "found \"80 1/yr (nominal)\", expected a number from 0 to 0.5 1/yr (nominal) for Rate (rate)",
                        "found \"60 %/yr (nominal)\", expected a number from 0 to 50 %/yr (nominal) for Rate (rate)");
    }

    @ParameterizedTest
    @ValueSource(strings = {"5 USD", "5 usd", "5 USD (nominal)", "5 USD_nominal", "5"})
    void money_of_a_later_year_is_typed_with_its_currency_alone(String typed) {
        assertThat(takeIn("money_nominal", typed, NOT_NEGATIVE).map(Given::number))
                .hasValue(5.0);
        assertThat(refusals).isEmpty();
    }

    @Test
    void a_nominal_rate_is_no_real_one() {
        assertThat(takeIn("real/a", "7 %/yr (nominal)", NOT_NEGATIVE)).isEmpty();
        assertThat(refusals)
                .containsExactly(
                        "found \"%/yr (nominal)\", expected a unit that converts to 1/yr (real) for Rate (rate)");
    }

    @ParameterizedTest
    @ValueSource(strings = {"0.4 USD/ea", "0.4 usd/each", "0.4 USD per plant", "0.4 USD/pc."})
    void pieces_stand_for_what_the_line_counts_in_a_price_too(String typed) {
        assertThat(takeIn("money/plant", typed, NOT_NEGATIVE).orElseThrow().number())
                .isEqualTo(0.4);
    }

    @Test
    void signs_of_feet_and_inches_stand_behind_a_number() {
        assertThat(take("6\"").orElseThrow().typedIn()).isEqualTo(Unit.parse("in"));
        assertThat(take("6'").orElseThrow().number()).isEqualTo(6 * 0.3048);
        assertThat(take("1'234")).isEmpty();
    }

    /** 0.02 to 2 m are 0.7874 to 78.74 in: what is named is allowed. */
    @ParameterizedTest
    @CsvSource({
        "degC, -60, 40, 150 F, -76 to 104 °F",
        "m, 0.02, 2, 0.5 in, 0.7875 to 78.74 in",
        "m, 0.02, 2, 1 mm, 20 to 2000 mm",
        "m2, 0.5, 500, 9000 sq ft, 5.382 to 5381 ft²"
    })
    void a_range_is_quoted_in_the_unit_that_was_typed(
            String unit, double least, double most, String typed, String range) {
        assertThat(takeIn(unit, typed, new Bounds(least, true, most, false))).isEmpty();
        assertThat(refusals)
                .singleElement()
                .asString()
                .endsWith("expected a number from " + range + " for Rate (rate)");
    }

    @Test
    void minus_zero_is_zero() {
        assertThat(Double.doubleToRawLongBits(take("-0").orElseThrow().number()))
                .isZero();
        assertThat(Double.doubleToRawLongBits(take("-1e-400").orElseThrow().number()))
                .isZero();
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "abc",
                "NaN",
                "Infinity",
                "-Infinity",
                "--1",
                "+",
                ".",
                "-",
                "\u0661\u0662",
                "\u22121",
                "=1+1",
                "\u20ac12.50"
            })
    void all_else_is_refused_with_what_was_found_and_what_is_taken(String text) {
        assertThat(take(text)).isEmpty();
        assertThat(refusals).containsExactly("found \"" + text + "\"" + EXPECTED);
    }

    @ParameterizedTest
    @ValueSource(strings = {"0x1F", "1e", "5.", "1.2.3", "1f", "1d", "1_000", "1-2", "3 foo"})
    void a_number_with_what_is_no_unit_behind_it_is_refused(String text) {
        assertThat(take(text)).isEmpty();
        assertThat(refusals).hasSize(1);
        assertThat(refusals.get(0)).contains("Length (bench_length)");
    }

    @ParameterizedTest
    @ValueSource(strings = {"1,5", "1,234.5", "1.234,5", "1 234", "1'234", "1\u2019234"})
    void other_marks_are_refused_and_the_right_ones_named(String text) {
        assertThat(take(text)).isEmpty();
        assertThat(refusals)
                .containsExactly(
                        "found \"" + text + "\"" + EXPECTED + ", with a decimal point and no thousands separators");
    }

    @Test
    void a_unit_behind_a_number_converts_and_is_kept() {
        Given given = take("10 ft").orElseThrow();
        assertThat(given.number()).isEqualTo(10 * 0.3048);
        assertThat(given.typed()).isEqualTo(10);
        assertThat(given.typedIn()).isEqualTo(Unit.parse("ft"));
    }

    @Test
    void a_unit_of_another_dimension_and_one_that_is_none_are_refused() {
        assertThat(take("10 kg")).isEmpty();
        assertThat(take(new Typed("10", "EUR", METRE, false), NOT_NEGATIVE, Blank.REFUSED))
                .isEmpty();
        assertThat(refusals)
                .containsExactly(
                        "found \"kg\", expected a unit that converts to m for Length (bench_length)",
                        "found \"EUR\", expected a unit that converts to m for Length (bench_length)");
    }

    @Test
    void a_number_outside_its_bounds_is_refused_in_the_unit_it_was_typed_in() {
        assertThat(take("-5")).isEmpty();
        assertThat(take("-5 ft")).isEmpty();
        assertThat(take(Typed.of("0", METRE), new Bounds(0, false, Double.POSITIVE_INFINITY, false), Blank.REFUSED))
                .isEmpty();
        assertThat(take(Typed.of("2.5", METRE), new Bounds(1, true, 9, true), Blank.REFUSED))
                .isEmpty();
        assertThat(refusals)
                .containsExactly(
                        "found \"-5 m\"" + EXPECTED,
                        "found \"-5 ft\", expected a number from 0 to 1640 ft for Length (bench_length)",
                        "found \"0 m\", expected a number above 0 m for Length (bench_length)",
                        "found \"2.5 m\", expected a whole number from 1 to 9 m for Length (bench_length)");
    }

    @Test
    void a_number_too_large_to_hold_is_refused() {
        assertThat(take("1e999")).isEmpty();
        assertThat(refusals).containsExactly("found \"1e999\"" + EXPECTED + ", no larger than 1.7E308 in size");
    }

    @Test
    void a_blank_cell_is_refused_or_nothing_or_the_documented_default() {
        assertThat(take("  ")).isEmpty();
        assertThat(refusals).containsExactly("found nothing" + EXPECTED);
        assertThat(take(Typed.of("", METRE), NOT_NEGATIVE, Blank.NOTHING)
                        .orElseThrow()
                        .filled())
                .isFalse();
        assertThat(take(Typed.of("", METRE), NOT_NEGATIVE, Blank.DEFAULT)
                        .orElseThrow()
                        .number())
                .isEqualTo(7);
    }

    @Test
    void in_a_file_with_decimal_commas_a_point_is_refused() {
        assertThat(take(new Typed("1,5", "", METRE, true), NOT_NEGATIVE, Blank.REFUSED)
                        .orElseThrow()
                        .number())
                .isEqualTo(1.5);
        assertThat(take(new Typed("1.5", "", METRE, true), NOT_NEGATIVE, Blank.REFUSED))
                .isEmpty();
        assertThat(refusals)
                .containsExactly("found \"1.5\"" + EXPECTED + ", with a decimal comma and no thousands separators");
    }

    @Test
    void a_cell_of_a_million_digits_and_a_letter_is_refused_at_once() {
        assertThat(take("1".repeat(1_000_000) + "x")).isEmpty();
        assertThat(refusals).hasSize(1);
    }

    @Test
    void numbers_made_in_java_are_held_against_the_same_bounds() {
        NumberGate gate =
                new NumberGate(new Subject("Length", "bench_length", METRE, "EUR"), NOT_NEGATIVE, Blank.REFUSED);
        for (double bad : new double[] {Double.NaN, Double.POSITIVE_INFINITY, -5}) {
            assertThat(gate.refusal(Given.number(bad, METRE))).isPresent();
        }
        assertThat(gate.refusal(Given.text("five")).orElseThrow().words()).isEqualTo("found \"five\"" + EXPECTED);
        assertThat(gate.refusal(Given.number(5, METRE))).isEmpty();
    }
}
