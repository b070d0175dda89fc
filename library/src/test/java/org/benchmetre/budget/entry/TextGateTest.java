package org.benchmetre.budget.entry;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.benchmetre.budget.unit.Unit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class TextGateTest {

    private static final String NAME = " for Choice (some_choice)";
    private static final String KEY =
            "expected a key: a letter a to z, then letters, digits and underscores, at most 60 together" + NAME;

    private final List<String> refusals = new ArrayList<>();

    private String take(String text, TextForm form, Blank blank) {
        return new TextGate(new Subject("Choice", "some_choice", Unit.ONE, "EUR"), form, blank)
                .accept(Typed.of(text, Unit.ONE), Given.text("usual"))
                .orElse(no -> refusals.add(no.words()))
                .map(Given::text)
                .orElse(null);
    }

    private String take(String text, TextForm form) {
        return take(text, form, Blank.REFUSED);
    }

    @Test
    void a_choice_is_read_by_its_label_and_kept_as_its_word() {
        TextForm form =
                TextForm.oneOf(List.of("straight_line", "a", "yes")).labelled(Map.of("a", "years", "b", "none"));
        assertThat(form.words().stream().map(form::label)).containsExactly("Straight line", "years", "yes");
        assertThat(take("STRAIGHT LINE", form)).isEqualTo("straight_line");
        assertThat(take("Years", form)).isEqualTo("a");
        assertThat(take("straight_line", form)).isEqualTo("straight_line");
        assertThat(form.label("other")).isEqualTo("other");
    }

    @Test
    void a_key_is_trimmed_and_folded_to_lower_case() {
        assertThat(take(" Drip_Tape2 ", TextForm.OWN_KEY)).isEqualTo("drip_tape2");
        assertThat(refusals).isEmpty();
    }

    @ParameterizedTest
    @ValueSource(strings = {"2tape", "_tape", "drip tape", "drip-tape", "r\u00f6hre", "tape*", "\u0131tem"})
    void a_key_of_another_form_is_refused(String text) {
        assertThat(take(text, TextForm.OWN_KEY)).isNull();
        assertThat(refusals).containsExactly("found \"" + text + "\", " + KEY);
    }

    @Test
    void a_key_is_no_longer_than_names_of_lines_allow() {
        assertThat(take("k".repeat(60), TextForm.OWN_KEY)).hasSize(60);
        assertThat(take("k".repeat(61), TextForm.OWN_KEY)).isNull();
        assertThat(refusals).hasSize(1);
    }

    @Test
    void several_keys_stand_apart_by_spaces_and_count_once() {
        assertThat(take(" Tape  emitter\u00a0tape", TextForm.keysOf("way_key"))).isEqualTo("tape emitter");
        assertThat(refusals).isEmpty();
    }

    @Test
    void bad_keys_among_several_are_one_refusal_of_the_cell() {
        assertThat(take("tape 2 a|b", TextForm.keysOf("way_key"))).isNull();
        assertThat(refusals).hasSize(1);
        assertThat(refusals.get(0))
                .startsWith("found \"tape 2 a|b\", expected keys separated by spaces, each a letter");
    }

    @Test
    void a_word_is_taken_whatever_its_case() {
        assertThat(take(" CROP ", TextForm.oneOf(List.of("a", "crop")))).isEqualTo("crop");
        assertThat(refusals).isEmpty();
    }

    @Test
    void another_word_is_refused_with_the_words_allowed_and_the_nearest() {
        assertThat(take("corp", TextForm.oneOf(List.of("a", "crop")))).isNull();
        assertThat(refusals).containsExactly("found \"corp\", expected one of a, crop" + NAME + "; did you mean crop?");
    }

    @Test
    void a_name_stands_for_its_word_however_it_is_spelt() {
        TextForm form = TextForm.oneOf(List.of("root_zone", "fixings"), List.of("Root zone", "Fixings"));
        assertThat(take("root ZONE", form)).isEqualTo("root_zone");
        assertThat(take("\ufb01xings", form)).isEqualTo("fixings");
        assertThat(take("fixings", form)).isEqualTo("fixings");
        assertThat(take("Plants", form)).isNull();
        assertThat(refusals).containsExactly("found \"Plants\", expected one of Root zone, Fixings" + NAME);
    }

    @Test
    void a_blank_cell_is_refused_or_nothing_or_the_documented_default() {
        assertThat(take(" ", TextForm.FREE, Blank.NOTHING)).isEmpty();
        assertThat(take("", TextForm.NAME, Blank.DEFAULT)).isEqualTo("usual");
        assertThat(take("", TextForm.OWN_KEY)).isNull();
        assertThat(refusals).containsExactly("found nothing, " + KEY);
    }

    @Test
    void free_text_keeps_its_signs_and_line_breaks() {
        assertThat(take("=1+1 \"quoted\"\r\n<50 %>", TextForm.FREE)).isEqualTo("=1+1 \"quoted\"\n<50 %>");
        assertThat(refusals).isEmpty();
    }

    @ParameterizedTest
    @ValueSource(strings = {"a\u0007b", "a\u001bb", "a\u0085b", "a\uffffb", "a\ud800b"})
    void no_text_may_hold_control_characters(String text) {
        for (TextForm form : List.of(TextForm.FREE, TextForm.NAME, TextForm.GROUP)) {
            assertThat(take(text, form)).isNull();
        }
        assertThat(refusals).hasSize(3);
        assertThat(refusals.get(0))
                .endsWith("expected text of at most 2000 characters without control characters" + NAME);
    }

    @ParameterizedTest
    @ValueSource(strings = {"a*", "a?", "~a", "<a", "a>", "=a", "12\" pot", "two\nlines", "tab\tbed"})
    void text_that_formulas_look_up_is_free_of_what_they_take_for_patterns(String text) {
        assertThat(take(text, TextForm.FREE)).isEqualTo(text);
        assertThat(take(text, TextForm.GROUP)).isNull();
        assertThat(refusals).hasSize(1);
        assertThat(refusals.get(0))
                .endsWith("expected text of at most 255 characters on one line, without any of * ? ~ < > = \"" + NAME);
    }

    @Test
    void text_must_fit_into_a_spreadsheet_cell_a_column_or_a_lookup() {
        assertThat(take("x".repeat(255), TextForm.GROUP)).hasSize(255);
        assertThat(take("x".repeat(250), TextForm.NAME)).hasSize(250);
        assertThat(take("x".repeat(2000), TextForm.FREE)).hasSize(2000);
        assertThat(take("x".repeat(256), TextForm.GROUP)).isNull();
        assertThat(take("x".repeat(251), TextForm.NAME)).isNull();
        assertThat(take("x".repeat(2001), TextForm.FREE)).isNull();
        assertThat(refusals).hasSize(3);
    }

    @Test
    void a_number_is_no_text() {
        TextGate gate =
                new TextGate(new Subject("Choice", "some_choice", Unit.ONE, "EUR"), TextForm.FREE, Blank.NOTHING);
        assertThat(gate.refusal(Given.number(5, Unit.ONE))).isPresent();
    }

    private static final TextForm UNITS = TextForm.unitOrCount(List.of("m", "ft", "ft2", "L", "kg"));

    @ParameterizedTest
    @ValueSource(strings = {"m", "Metres", "meter", " M. "})
    void a_unit_is_kept_as_the_list_has_it(String text) {
        boolean known = !text.equals(" M. ");
        assertThat(take(text, UNITS)).isEqualTo(known ? "m" : "M.");
    }

    @ParameterizedTest
    @ValueSource(strings = {"each", "ea.", "roll", "5 gal pot", "tray 72", "Säcke", "liner", "winch", "plant"})
    void a_word_of_ones_own_counts(String text) {
        assertThat(take(text, UNITS)).isEqualTo(text);
    }

    @ParameterizedTest
    @ValueSource(strings = {"metr", "meterr", "litr", "kilogramm", "4 ft", "kPa", "gal", "EUR", "roll*", "%"})
    void what_is_misspelt_or_measures_otherwise_is_refused(String text) {
        assertThat(take(text, UNITS)).isNull();
        assertThat(take(text, TextForm.unitOf(List.of("m")))).isNull();
        assertThat(refusals.get(1)).startsWith("found \"" + text + "\", expected one of m" + NAME);
    }

    @ParameterizedTest
    @ValueSource(strings = {"2026-03-31", " 2024-02-29 ", "1990-01-01", "2100-12-31"})
    void a_date_is_a_day_of_the_calendar(String text) {
        assertThat(take(text, TextForm.DATE)).isEqualTo(text.strip());
        assertThat(refusals).isEmpty();
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "31.3.2026",
                "3/31/2026",
                "2026-3-31",
                "20260331",
                "2026-02-29",
                "2026-13-01",
                "1989-12-31",
                "2101-01-01",
                "46112",
                "+2026-03-31",
                "soon",
                "\u0662\u0660\u0662\u0666-03-31"
            })
    void what_is_no_date_is_refused_with_the_form_asked_for(String text) {
        assertThat(take(text, TextForm.DATE)).isNull();
        assertThat(refusals)
                .containsExactly(
                        "found \"" + text + "\", expected a date written year-month-day, such as 2026-03-31, of"
                                + " the years 1990 to 2100," + NAME);
    }
}
