package org.benchmetre.workbook;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.util.Map;
import org.benchmetre.FarmWorkbook;
import org.benchmetre.budget.Budget;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.entry.Given;
import org.benchmetre.budget.run.Figures;
import org.benchmetre.farm.Sample;
import org.junit.jupiter.api.Test;

/** Typed over in a written workbook: a life past a year moves film from one family of cost to the other; a reason waives a block. */
class UsedUpInAWorkbookTest {

    @Test
    void a_longer_life_a_share_of_resale_and_a_waiver_are_recalculated_as_the_engine_says() throws IOException {
        Budget budget = Sample.troughHouse();
        Line life = budget.line("material_life");
        Line resale = budget.line("material_resale");
        Map<Line, Map<Integer, Given>> changes = Map.of(
                life,
                Map.of(life.axes().get(0).indexOf("mulch_film"), Given.number(2, life.unit())),
                resale,
                Map.of(resale.axes().get(0).indexOf("trough"), Given.number(0.5, resale.unit())),
                budget.line("waived_house"),
                Map.of(0, Given.text("rented with the site")));
        PoiReferee referee =
                new PoiReferee(budget, FarmWorkbook.setup(budget)).add(Map.of()).add(changes);
        assertThat(referee.differences()).isEmpty();

        Figures before = Figures.of(budget);
        Figures after = before.typedOver(changes);
        assertThat(before.number("budget_value", "used_up_mulch")).isPositive();
        assertThat(after.number("budget_value", "used_up_mulch")).isZero();
        assertThat(before.number("budget_value", "own_mulch")).isZero();
        assertThat(after.number("budget_value", "own_mulch")).isPositive();
        assertThat(after.number("operating_interest")).isLessThan(before.number("operating_interest"));
        assertThat(after.number("residual_value")).isGreaterThan(before.number("residual_value") + 100);
        assertThat(after.text("left_out_sentence"))
                .startsWith("Not counted: heating plant, ")
                .contains(" Waived: house (rented with the site). ");
    }
}
