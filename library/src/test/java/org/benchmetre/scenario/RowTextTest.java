package org.benchmetre.scenario;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class RowTextTest {

    private static final String PLACE = "parts.csv, row 2, column cell: found ";
    private static final String KEY = "a letter a to z, then letters, digits and underscores.";

    @TempDir
    Path folder;

    private Input input;

    @BeforeEach
    void newInput() {
        input = new Input(folder);
    }

    @Test
    void a_key_is_trimmed_and_folded_to_lower_case() {
        assertThat(input.cell(" \u00a0Drip_Tape2 ").key("cell", input.faults())).isEqualTo("drip_tape2");
        assertThat(input.messages()).isEmpty();
    }

    @ParameterizedTest
    @ValueSource(strings = {"2tape", "_tape", "drip tape", "drip-tape", "r\u00f6hre", "tape*", "\u0131tem"})
    void a_key_of_another_form_is_a_fault(String text) {
        assertThat(input.cell(text).key("cell", input.faults())).isEmpty();
        assertThat(input.messages()).containsExactly(PLACE + "\"" + text + "\", expected a key: " + KEY);
    }

    @Test
    void a_blank_key_is_a_fault() {
        assertThat(input.cell("").key("cell", input.faults())).isEmpty();
        assertThat(input.messages()).containsExactly(PLACE + "nothing, expected a key: " + KEY);
    }

    @Test
    void several_keys_stand_apart_by_spaces_and_count_once() {
        assertThat(input.cell(" Tape  emitter\u00a0tape").keys("cell", input.faults()))
                .containsExactly("tape", "emitter");
        assertThat(input.cell("").keys("cell", input.faults())).isEmpty();
        assertThat(input.messages()).isEmpty();
    }

    @Test
    void bad_keys_among_several_are_one_fault_of_the_cell() {
        assertThat(input.cell("tape 2 a|b dripline").keys("cell", input.faults()))
                .containsExactly("tape", "dripline");
        assertThat(input.messages())
                .containsExactly(PLACE + "\"tape 2 a|b dripline\", expected keys separated by spaces, each " + KEY);
    }

    @Test
    void a_choice_is_read_whatever_its_case() {
        assertThat(input.cell(" CROP ").choice("cell", List.of("a", "crop"), input.faults()))
                .isEqualTo("crop");
        assertThat(input.cell("").choice("cell", List.of("a", "crop"), "a", input.faults()))
                .isEqualTo("a");
        assertThat(input.messages()).isEmpty();
    }

    @Test
    void another_word_is_a_fault_with_the_words_allowed_and_the_nearest() {
        assertThat(input.cell("corp").choice("cell", List.of("a", "crop"), "a", input.faults()))
                .isEmpty();
        input.cell("").choice("cell", List.of("one", "bench_metres", "outlets"), input.faults());
        input.cell("x").choice("cell", List.of(), input.faults());
        input.cell("prise").choice("cell", namesAnd("price"), input.faults());

        assertThat(input.messages())
                .containsExactly(
                        PLACE + "\"corp\", expected \"a\" or \"crop\" (did you mean crop?).",
                        PLACE + "nothing, expected \"one\", \"bench_metres\" or \"outlets\".",
                        PLACE + "\"x\", expected a blank cell, as there is nothing to choose from.",
                        PLACE + "\"prise\", expected one of 31 known words (did you mean price?).");
    }

    private static List<String> namesAnd(String name) {
        List<String> names = new ArrayList<>(Collections.nCopies(30, "some_other_name"));
        names.add(name);
        return names;
    }

    @Test
    void free_text_keeps_its_signs_and_line_breaks() {
        assertThat(input.cell("=1+1 \"quoted\"\r\n<50 %>").label("cell", false, input.faults()))
                .isEqualTo("=1+1 \"quoted\"\n<50 %>");
        assertThat(input.cell("").label("cell", "Tape", false, input.faults())).isEqualTo("Tape");
        assertThat(input.cell("").label("cell", "", true, input.faults())).isEmpty();
        assertThat(input.messages()).isEmpty();
    }

    @ParameterizedTest
    @ValueSource(strings = {"a\u0007b", "a\u001bb", "a\u0085b", "a\uffffb"})
    void no_text_may_hold_control_characters(String text) {
        assertThat(input.cell(text).label("cell", false, input.faults())).isEmpty();
        assertThat(input.cell(text).label("cell", "x", true, input.faults())).isEmpty();
        assertThat(input.messages()).hasSize(2);
        assertThat(input.messages().get(0))
                .endsWith("expected text of at most 32767 characters without control characters.");
    }

    @ParameterizedTest
    @ValueSource(strings = {"a*", "a?", "~a", "<a", "a>", "=a", "12\" pot", "two\nlines", "tab\tbed"})
    void text_that_formulas_look_up_is_free_of_what_they_take_for_patterns(String text) {
        assertThat(input.cell(text).label("cell", false, input.faults())).isEqualTo(text);
        assertThat(input.messages()).isEmpty();
        assertThat(input.cell(text).label("cell", true, input.faults())).isEmpty();
        assertThat(input.messages())
                .containsExactly(PLACE + Fault.quoted(text) + ", expected text of at most 255 characters on one line,"
                        + " without any of * ? ~ < > = \".");
    }

    @Test
    void text_must_fit_into_a_spreadsheet_cell_or_a_lookup() {
        assertThat(input.cell("x".repeat(255)).label("cell", true, input.faults()))
                .hasSize(255);
        assertThat(input.cell("x".repeat(32_767)).label("cell", false, input.faults()))
                .hasSize(32_767);
        assertThat(input.messages()).isEmpty();
        assertThat(input.cell("x".repeat(256)).label("cell", true, input.faults()))
                .isEmpty();
        assertThat(input.cell("x".repeat(32_768)).label("cell", false, input.faults()))
                .isEmpty();
        assertThat(input.messages()).hasSize(2);
    }

    @Test
    void text_that_must_be_given_may_not_be_blank() {
        assertThat(input.cell("").label("cell", false, input.faults())).isEmpty();
        assertThat(input.messages())
                .containsExactly(
                        PLACE + "nothing, expected text of at most 32767 characters without control characters.");
    }
}
