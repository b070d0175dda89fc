package org.benchmetre.workbook;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.benchmetre.budget.Budget;
import org.benchmetre.budget.FormulaText;
import org.benchmetre.budget.Line;
import org.benchmetre.farm.Sample;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Formulas of the comparison of ways can be read: none is longer than three hundred characters. */
class ComparisonFormulasTest {

    private static final int LONGEST = 300;

    private static final List<String> COMPARISON = List.of(
            "flip",
            "no_flip",
            "balance",
            "cause",
            "partial",
            "side",
            "rival",
            "irrigation_re",
            "irrigation_choice_",
            "irrigation_doubt",
            "ownership_",
            "upkeep_",
            "clogging_",
            "irrigation_drained",
            "recommended",
            "next_",
            "ways_",
            "left_out",
            "target_f",
            "way_line_",
            "way_rank",
            "way_other",
            "way_first",
            "way_place",
            "way_is_rival",
            "way_dearer",
            "way_cost_per",
            "way_labour_per",
            "way_new_outlets_priced",
            "way_part",
            "way_same",
            "material_of_way",
            "material_delivered",
            "material_yearly_per",
            "material_labour_per",
            "material_recovery_of",
            "fruit_worth");

    static Stream<Budget> samples() {
        return Stream.of(Sample.troughHouse(), Sample.containerHouse());
    }

    @ParameterizedTest
    @MethodSource("samples")
    void none_is_longer_than_three_hundred_characters(Budget budget) {
        WorkbookPlan plan = Written.bare(budget).plan();
        List<String> longer = new ArrayList<>();
        int seen = 0;
        for (Line line : budget.lines()) {
            boolean isOfComparison = COMPARISON.stream().anyMatch(line.id()::startsWith);
            for (int cell = 0;
                    isOfComparison && cell < line.size() && budget.formula(line).isPresent();
                    cell++) {
                String text = FormulaText.of(
                        line,
                        budget.formula(line).get(),
                        cell,
                        new CellPlaces(plan, plan.place(line).sheet()));
                if (text.length() > LONGEST) {
                    longer.add(line.address(cell) + " has " + text.length() + " characters: " + text);
                }
                seen++;
            }
        }
        assertThat(longer).isEmpty();
        assertThat(seen).isGreaterThan(1000);
    }
}
