package org.benchmetre.farm.ownership;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.assertj.core.data.Offset;
import org.benchmetre.budget.Budget;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.run.Figures;
import org.benchmetre.farm.Sample;
import org.benchmetre.farm.input.FarmTables;
import org.benchmetre.scenario.ScenarioWriter;
import org.junit.jupiter.api.Test;

/** Figures of one's own beside ours: totals by part, and the difference where one was given. */
class OwnFiguresTest {

    private static final Offset<Double> NEAR = within(1e-9);

    private static final Budget FILLED = Sample.with(
            Sample.troughHouse(),
            "budget_own[first_grade]=12000 money/a",
            "budget_own[packs]=500 money/a",
            "budget_own[heating]=1700 money/a",
            "budget_own[own_charges]=90 money/a");

    private static final Figures F = Figures.of(FILLED);

    private static double of(Figures figures, String id, String key) {
        Line line = figures.budget().line(id);
        return figures.number(line, line.axes().get(0).indexOf(key));
    }

    private static double apart(String key, double own) {
        return own - of(F, "budget_value", key);
    }

    @Test
    void they_are_blank_at_first_and_differ_from_nothing() {
        Figures blank = Figures.of(Sample.troughHouse());
        for (String id : List.of("budget_own", "budget_difference", "budget_total_own", "budget_total_difference")) {
            Line line = blank.budget().line(id);
            for (int row = 0; row < line.size(); row++) {
                assertThat(blank.number(line, row)).isZero();
            }
        }
        assertThat(Sample.troughHouse().given(Sample.troughHouse().line("budget_own")))
                .noneMatch(given -> given.filled());
    }

    @Test
    void the_difference_stands_where_one_was_given() {
        assertThat(of(F, "budget_difference", "packs")).isCloseTo(apart("packs", 500), NEAR);
        assertThat(of(F, "budget_difference", "heating")).isCloseTo(apart("heating", 1700), NEAR);
        assertThat(of(F, "budget_difference", "second_grade")).isZero();
        assertThat(of(F, "budget_difference", "own_substrate")).isZero();
    }

    @Test
    void they_total_by_part() {
        assertThat(of(F, "budget_total_own", "receipts")).isEqualTo(12000);
        assertThat(of(F, "budget_total_own", "operating")).isEqualTo(2200);
        assertThat(of(F, "budget_total_own", "above_operating")).isEqualTo(9800);
        assertThat(of(F, "budget_total_own", "ownership")).isEqualTo(90);
        assertThat(of(F, "budget_total_own", "overhead")).isZero();
        assertThat(of(F, "budget_total_own", "costs")).isEqualTo(2290);
        assertThat(of(F, "budget_total_own", "above_costs")).isEqualTo(9710);
    }

    @Test
    void differences_total_alike_over_what_was_given() {
        double receipts = apart("first_grade", 12000);
        double operating = apart("packs", 500) + apart("heating", 1700);
        double ownership = apart("own_charges", 90);
        assertThat(of(F, "budget_total_difference", "receipts")).isCloseTo(receipts, NEAR);
        assertThat(of(F, "budget_total_difference", "operating")).isCloseTo(operating, NEAR);
        assertThat(of(F, "budget_total_difference", "above_costs")).isCloseTo(receipts - operating - ownership, NEAR);
    }

    @Test
    void they_move_none_of_our_figures() {
        assertThat(F.number("returns_above_total"))
                .isEqualTo(Figures.of(Sample.troughHouse()).number("returns_above_total"));
    }

    @Test
    void a_written_scenario_keeps_them_among_the_single_values() {
        assertThat(new ScenarioWriter(FarmTables.FORMS).files(FILLED).get("farm.csv"))
                .contains("budget_own[heating],1700")
                .doesNotContain("budget_own[second_grade]");
    }
}
