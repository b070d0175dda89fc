package org.benchmetre.scenario;

import static org.assertj.core.api.Assertions.assertThat;

import org.benchmetre.budget.Budget;
import org.benchmetre.budget.BudgetBuilder;
import org.benchmetre.budget.KnownAnswers;
import org.benchmetre.budget.Solved;
import org.benchmetre.budget.unit.Unit;
import org.junit.jupiter.api.Test;

/** What a search fills is not set by hand. */
class SettingOfASolvedLineTest {

    @Test
    void it_is_refused_like_a_formula() {
        BudgetBuilder b = new BudgetBuilder("Test", "EUR");
        b.schedule("Sheet", "Table")
                .solved(
                        "flip_price",
                        "Price where both cost the same",
                        Unit.MONEY,
                        "",
                        KnownAnswers.of(Solved.number(2)));
        Budget budget = b.build();
        Faults faults = new Faults();
        assertThat(Setting.parse("flip_price=3").cell(budget, faults)).isEmpty();
        assertThat(faults.faults())
                .singleElement()
                .asString()
                .contains("an entry; Price where both cost the same is found by a search");
    }
}
