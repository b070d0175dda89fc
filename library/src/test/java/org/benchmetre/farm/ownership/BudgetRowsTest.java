package org.benchmetre.farm.ownership;

import static org.assertj.core.api.Assertions.assertThat;
import static org.benchmetre.budget.Formulas.one;
import static org.benchmetre.budget.Formulas.text;

import java.util.List;
import org.junit.jupiter.api.Test;

/** Keys of the rows of the enterprise budget: a grower's own keys meet ours. */
class BudgetRowsTest {

    private static List<String> keys(String... wanted) {
        BudgetRows rows = new BudgetRows();
        for (String key : wanted) {
            rows.add(BudgetPart.OWNERSHIP, BudgetRow.lump(key, text("Label"), one()));
        }
        return rows.keys();
    }

    @Test
    void a_key_that_is_free_is_kept() {
        assertThat(keys("own_benches", "own_installing")).containsExactly("own_benches", "own_installing");
    }

    @Test
    void a_key_that_is_taken_gets_the_number_of_its_row() {
        assertThat(keys("own_installing", "own_benches", "own_installing"))
                .containsExactly("own_installing", "own_benches", "own_installing_2");
    }
}
