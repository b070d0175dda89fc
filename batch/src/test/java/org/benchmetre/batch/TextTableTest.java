package org.benchmetre.batch;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

class TextTableTest {

    @Test
    void columns_line_up_and_numbers_are_flush_right() {
        TextTable table = new TextTable(List.of("Part", "Cost"), 1).right(1);
        table.row(List.of("Pump", "340.00")).row(List.of("Clip", "9.00")).total(List.of("Total", "349.00"));

        assertThat(table)
                .hasToString(
                        "Part     Cost\n-------------\nPump   340.00\nClip     9.00\n-------------\nTotal  349.00\n");
    }

    @Test
    void what_follows_a_total_stands_under_its_rule_too() {
        TextTable table = new TextTable(List.of(), 1);
        table.row(List.of("Pump")).total(List.of("Sum")).row(List.of("Left"));

        assertThat(table).hasToString("Pump\n----\nSum\nLeft\n");
    }

    @Test
    void names_with_hyphens_are_broken_behind_one() {
        TextTable table = new TextTable(List.of("container-house"), 0).right(0);
        table.row(List.of("1"));

        assertThat(table.toString().lines().toList()).startsWith("    container-", "         house");
    }

    @Test
    void long_cells_go_on_in_the_next_line_whole() {
        TextTable table = new TextTable(List.of("Part", "Note"), 1);
        table.row(List.of("Pump", "one two three four five six seven eight nine ten"));

        assertThat(table.toString().lines())
                .containsExactly(
                        "Part  Note",
                        "-".repeat(46),
                        "Pump  one two three four five six seven eight",
                        "      nine ten");
    }

    @Test
    void words_longer_than_a_line_are_broken_not_cut() {
        assertThat(TextTable.wrapped("x".repeat(250)))
                .isEqualTo("x".repeat(100) + "\n" + "x".repeat(100) + "\n" + "x".repeat(50) + "\n");
    }

    @Test
    void no_cell_or_sentence_holds_what_a_console_obeys() {
        TextTable table = new TextTable(List.of("Na\u001bme", "Value"), 1).row(List.of("Ta\u0085pe", "\u202e1"));

        assertThat(table.toString() + TextTable.wrapped("Ta\u001bpe"))
                .doesNotContain("\u001b", "\u0085", "\u202e")
                .contains("Na\\u001Bme", "Ta\\u0085pe", "\\u202E1", "Ta\\u001Bpe");
    }
}
