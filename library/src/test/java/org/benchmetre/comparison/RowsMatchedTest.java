package org.benchmetre.comparison;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.benchmetre.budget.BudgetBuilder;
import org.benchmetre.budget.CellRef;
import org.benchmetre.budget.Formulas;
import org.benchmetre.budget.Line;
import org.junit.jupiter.api.Test;

class RowsMatchedTest {

    private final Line anywhere =
            new BudgetBuilder("Any", "USD").schedule("Any", "Any").textLine("any_text", "Any", Formulas.text(""));

    private PageRow row(String key, String label) {
        return new PageRow(key, label, BudgetSection.OPERATING, new CellRef(anywhere, 0));
    }

    private static List<String> matched(List<PageRow> first, List<PageRow> second) {
        return RowsMatched.of(List.of(first, second)).stream()
                .map(row -> row.key() + " " + row.cells().keySet())
                .toList();
    }

    @Test
    void rows_of_one_label_are_the_same_whatever_their_key() {
        assertThat(matched(List.of(row("task_a", "Water")), List.of(row("task_b", " water"))))
                .containsExactly("task_a [0, 1]");
    }

    @Test
    void rows_of_one_label_in_two_sections_are_not_the_same() {
        PageRow owned = new PageRow("water", "Water", BudgetSection.OWNERSHIP, new CellRef(anywhere, 0));

        assertThat(matched(List.of(row("water", "Water")), List.of(owned)))
                .containsExactlyInAnyOrder("water [0]", "water_2 [1]");
    }

    @Test
    void what_only_the_second_has_stands_where_it_stands_there() {
        assertThat(matched(
                        List.of(row("a", "A"), row("c", "C"), row("d", "D")),
                        List.of(row("a", "A"), row("b", "B"), row("d", "D"))))
                .containsExactly("a [0, 1]", "b [1]", "c [0]", "d [0, 1]");
    }

    @Test
    void a_label_that_a_budget_has_twice_is_told_apart_by_key() {
        assertThat(matched(List.of(row("work_water", "Water"), row("water", "Water")), List.of(row("water", "Water"))))
                .containsExactly("work_water [0]", "water [0, 1]");
    }

    @Test
    void keys_are_made_of_names() {
        UniqueKeys keys = new UniqueKeys();

        assertThat(keys.ofName("Trough house (2)")).isEqualTo("trough_house_2");
        assertThat(keys.ofName("trough-house-2")).isEqualTo("trough_house_2_2");
        assertThat(keys.ofName("[]")).isEqualTo("scenario");
    }
}
