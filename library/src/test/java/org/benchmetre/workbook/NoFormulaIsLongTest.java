package org.benchmetre.workbook;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.benchmetre.Benchmetre;
import org.benchmetre.FarmWorkbook;
import org.benchmetre.ScenarioException;
import org.benchmetre.Starter;
import org.benchmetre.budget.Budget;
import org.benchmetre.budget.Formula;
import org.benchmetre.budget.FormulaText;
import org.benchmetre.budget.Line;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A formula that a reader meets in a cell can be read: every cell of every line, as the workbook writes it. */
class NoFormulaIsLongTest {

    /** What a reader takes in without losing the thread: some four lines of a formula bar. A choice of this project. */
    private static final int LONGEST = 300;

    /** A farm has more cells with a formula than this, or hardly any was looked at. */
    private static final int MOST_OF_A_FARM = 10_000;

    @ParameterizedTest
    @ValueSource(strings = {"trough-house", "container-house"})
    void no_formula_of_a_sample_is_long(String sample) throws ScenarioException {
        assertThat(tooLong(read(Path.of("..", "samples", sample)))).isEmpty();
    }

    @Test
    void no_formula_of_the_starter_is_long(@TempDir Path folder) throws IOException, ScenarioException {
        Path house = folder.resolve("house");
        Starter.copyTo(house);
        assertThat(tooLong(read(house))).isEmpty();
    }

    private static Budget read(Path folder) throws ScenarioException {
        return Benchmetre.read(folder).budget();
    }

    /** The lines with a longer one, each with the longest of its cells. */
    private static List<String> tooLong(Budget budget) {
        WorkbookPlan plan = Written.of(budget, FarmWorkbook.setup(budget)).plan();
        List<String> found = new ArrayList<>();
        int seen = 0;
        for (Line line : budget.lines()) {
            Formula formula = budget.formula(line).orElse(null);
            if (formula == null) {
                continue;
            }
            CellPlaces places = new CellPlaces(plan, plan.place(line).sheet());
            String longest = "";
            for (int cell = 0; cell < line.size(); cell++) {
                String text = FormulaText.of(line, formula, cell, places);
                seen++;
                longest = text.length() > longest.length() ? text : longest;
            }
            if (longest.length() > LONGEST) {
                found.add(line + ", " + longest.length() + " characters: " + longest);
            }
        }
        assertThat(seen).as("cells with a formula").isGreaterThan(MOST_OF_A_FARM);
        return found;
    }
}
