package org.benchmetre.scenario;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.benchmetre.budget.entry.Quoted;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class FaultsTest {

    private final Faults faults = new Faults();

    @Test
    void a_place_names_file_row_and_column_and_leaves_out_what_is_whole() {
        assertThat(new Place("materials.csv", 7, "price")).hasToString("materials.csv, row 7, column price");
        assertThat(new Place("materials.csv", 7, "")).hasToString("materials.csv, row 7");
        assertThat(Place.wholeFile("materials.csv")).hasToString("materials.csv");
    }

    @Test
    void a_place_has_no_negative_row() {
        assertThatThrownBy(() -> new Place("materials.csv", -1, ""))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("A row is 1 or more, or 0 for the whole file; it was -1.");
    }

    @Test
    void a_fault_is_one_whole_sentence() {
        Fault fault = new Fault(
                new Place("materials.csv", 7, "price"), Quoted.text("abc"), "a number of at least 0 (EUR per pack)");

        assertThat(fault.message())
                .isEqualTo("materials.csv, row 7, column price: found \"abc\", expected a number of at least 0"
                        + " (EUR per pack).");
    }

    @Test
    void quoted_text_shows_what_cannot_be_seen_and_is_cut_when_long() {
        assertThat(Quoted.text("")).isEqualTo("nothing");
        assertThat(Quoted.text("two\nlines\ttab")).isEqualTo("\"two\\nlines\\ttab\"");
        assertThat(Quoted.text("1\u00a0000\u0007")).isEqualTo("\"1\\u00A0000\\u0007\"");
        assertThat(Quoted.text("x".repeat(61))).isEqualTo("\"" + "x".repeat(60) + "...\"");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "\u0000", "\u001B", "\u007F", "\u0085", "\u009B", "\u00AD", "\u200E", "\u202E", "\u2066", "\u2028",
                "\u2029", "\uFEFF", "\uD800"
            })
    void no_message_holds_what_a_console_obeys_or_does_not_show(String sign) {
        Place place = new Place("a" + sign + ".csv", 1, "b" + sign);
        String shown = String.format(java.util.Locale.ROOT, "\\u%04X", (int) sign.charAt(0));
        faults.warn(place, "label" + sign);

        assertThat(new Fault(place, sign, sign).message()).doesNotContain(sign).contains("a" + shown, "b" + shown);
        assertThat(faults.report()).doesNotContain(sign).contains("label" + shown);
        assertThat(Quoted.text(sign)).isEqualTo("\"" + shown + "\"");
        assertThat(Quoted.visible(sign)).isEqualTo(shown);
    }

    @Test
    void letters_of_any_script_and_their_joiners_stay() {
        String text = "Größe 5\u00a0% \u05d0\u05d1 \u0646\u200c\u0647 \ud83c\udf53";

        assertThat(Quoted.visible(text)).isSameAs(text);
    }

    @Test
    void the_same_fault_in_several_rows_of_a_column_is_told_once_with_its_rows() {
        for (int row : new int[] {3, 4, 5, 6, 9, 11, 12}) {
            faults.add(new Place("materials.csv", row, "option"), "\"tape\"", "a key");
        }
        faults.add(new Place("materials.csv", 7, "option"), "\"tap\"", "a key");

        assertThat(faults.size()).isEqualTo(8);
        assertThat(faults.sentences())
                .containsExactly(
                        "materials.csv, rows 3 to 6, 9, 11 and 12, column option: found \"tape\", expected a key.",
                        "materials.csv, row 7, column option: found \"tap\", expected a key.");
    }

    @Test
    void the_key_of_the_row_in_what_was_expected_makes_no_other_cause() {
        faults.add(new Place("materials.csv", 3, "price"), "nothing", "a number for Price (material_price[tape])");
        faults.add(new Place("materials.csv", 4, "price"), "nothing", "a number for Price (material_price[pump])");
        faults.add(new Place("materials.csv", 5, "pack"), "nothing", "a number for Pack (material_pack[pump])");

        assertThat(faults.sentences())
                .containsExactly(
                        "materials.csv, rows 3 and 4, column price: found nothing, expected a number for Price"
                                + " (material_price).",
                        "materials.csv, row 5, column pack: found nothing, expected a number for Pack"
                                + " (material_pack[pump]).");
    }

    @Test
    void many_scattered_rows_are_counted() {
        for (int row = 2; row <= 200; row += 2) {
            faults.add(new Place("materials.csv", row, ""), "x", "y");
        }

        assertThat(faults.sentences())
                .containsExactly(
                        "materials.csv, rows 2, 4, 6, 8, 10, 12, 14, 16, 18, 20, 22, 24 and 88 more: found x, expected y.");
        assertThat(faults.areMany()).isTrue();
    }

    @Test
    void faults_come_sorted_by_file_and_row_and_keep_their_order_within_a_row() {
        faults.add(new Place("tasks.csv", 2, "hours"), "nothing", "a number");
        faults.add(new Place("farm.csv", 10, "value"), "nothing", "a number");
        faults.add(new Place("farm.csv", 9, "value"), "nothing", "a number");
        faults.add(new Place("farm.csv", 9, "source"), "nothing", "text");
        faults.add(Place.wholeFile("farm.csv"), "a folder", "a file");

        assertThat(faults.faults())
                .extracting(fault -> fault.place().toString())
                .containsExactly(
                        "farm.csv",
                        "farm.csv, row 9, column value",
                        "farm.csv, row 9, column source",
                        "farm.csv, row 10, column value",
                        "tasks.csv, row 2, column hours");
    }

    @Test
    void identical_faults_count_once_and_different_ones_at_the_same_place_both_count() {
        Place place = new Place("farm.csv", 2, "value");
        faults.add(place, "nothing", "a number");
        faults.add(place, "nothing", "a number");
        faults.add(place, "nothing", "a word");

        assertThat(faults.size()).isEqualTo(2);
        assertThat(faults.faults()).extracting(Fault::expected).containsExactly("a number", "a word");
    }

    @Test
    void warnings_and_notes_are_no_faults() {
        faults.warn(Place.wholeFile("notes.csv"), "nothing reads this file");
        faults.note(Place.wholeFile("farm.csv"), "numbers have a decimal comma");

        assertThat(faults.isEmpty()).isTrue();
        faults.add(Place.wholeFile("farm.csv"), "a folder", "a file");
        assertThat(faults.isEmpty()).isFalse();
    }

    @Test
    void the_report_has_faults_then_warnings_then_notes_one_a_line() {
        faults.note(Place.wholeFile("a.csv"), "numbers have a decimal comma");
        faults.warn(Place.wholeFile("b.csv"), "nothing reads this file; did you mean c.csv?");
        faults.add(Place.wholeFile("d.csv"), "a folder", "a file");

        assertThat(faults.report())
                .isEqualTo("Fault: d.csv: found a folder, expected a file.\n"
                        + "Warning: b.csv: nothing reads this file; did you mean c.csv?\n"
                        + "Note: a.csv: numbers have a decimal comma.\n");
    }
}
