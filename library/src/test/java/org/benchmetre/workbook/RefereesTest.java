package org.benchmetre.workbook;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.benchmetre.budget.Budget;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.entry.Given;
import org.benchmetre.budget.run.Figures;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class RefereesTest {

    private static final int FIRST_SPARE = 3;

    private final Budget budget = SampleBudget.make();

    @Test
    void poi_agrees_with_the_workbook_as_written() throws IOException {
        assertThat(new PoiReferee(budget).differences(Map.of())).isEmpty();
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8})
    void poi_agrees_after_changes(long seed) throws IOException {
        Map<Line, Map<Integer, Given>> changes = Adjustments.seeded(budget, seed);
        assertThat(changes).isNotEmpty();
        assertThat(new PoiReferee(budget).differences(changes)).isEmpty();
    }

    @Test
    void poi_agrees_when_a_spare_row_is_filled_and_the_choice_flipped() throws IOException {
        Figures after = Figures.of(budget.with(filledAndFlipped()));
        assertThat(after.number("parts_cost")).isGreaterThan(Figures.of(budget).number("parts_cost") + 100);
        assertThat(after.text("way_in_words")).isEqualTo("Glued, no screws");
        assertThat(new PoiReferee(budget).differences(filledAndFlipped())).isEmpty();
    }

    @Test
    void a_difference_is_found() throws IOException {
        Budget other = budget.with(Map.of(
                budget.line("hourly_wage"),
                Map.of(0, Given.number(99, budget.line("hourly_wage").unit()))));
        try (XSSFWorkbook workbook =
                new XSSFWorkbook(new ByteArrayInputStream(new WorkbookWriter().bytes(Figures.of(budget))))) {
            List<String> found = Agreement.differences(workbook, Agreement::cached, Figures.of(other));
            assertThat(found).anyMatch(line -> line.startsWith("fixing_cost should be"));
        }
    }

    @Test
    void libreoffice_agrees_before_and_after_changes(@TempDir Path folder) throws IOException {
        LibreOfficeReferee.require();
        LibreOfficeReferee referee =
                new LibreOfficeReferee(folder, budget).add(Map.of()).add(filledAndFlipped());
        for (long seed = 1; seed <= 4; seed++) {
            referee.add(Adjustments.seeded(budget, seed));
        }
        assertThat(referee.differences()).isEmpty();
    }

    @Test
    void libreoffice_really_recalculates(@TempDir Path folder) throws IOException {
        LibreOfficeReferee.require();
        Path file = folder.resolve("wrong.xlsx");
        Figures figures = Figures.of(budget);
        Spot spot = Plan.of(budget).spot(budget.line("total_cost"), 0);
        Files.write(file, new WorkbookWriter().bytes(figures));
        try (XSSFWorkbook workbook = LibreOfficeReferee.open(file);
                OutputStream out = Files.newOutputStream(file)) {
            workbook.setForceFormulaRecalculation(false);
            workbook.getSheet(spot.sheet())
                    .getRow(spot.row())
                    .getCell(spot.column())
                    .setCellValue(-1);
            assertThat(Agreement.differences(workbook, Agreement::cached, figures))
                    .singleElement()
                    .asString()
                    .startsWith("total_cost should be");
            workbook.write(out);
        }
        LibreOfficeReferee referee = new LibreOfficeReferee(folder, budget);
        referee.recalculate(List.of(file));
        try (XSSFWorkbook workbook = LibreOfficeReferee.open(referee.recalculated(file))) {
            assertThat(Agreement.differences(workbook, Agreement::cached, figures))
                    .isEmpty();
        }
    }

    private Map<Line, Map<Integer, Given>> filledAndFlipped() {
        Map<Line, Map<Integer, Given>> changes = new LinkedHashMap<>();
        type(changes, "way_choice", 0, Given.text("glued"));
        type(changes, "part_name", FIRST_SPARE, Given.text("Rail"));
        type(changes, "part_group", FIRST_SPARE, Given.text("metal"));
        type(changes, "part_rate", FIRST_SPARE, number("part_rate", 1));
        type(changes, "part_pack", FIRST_SPARE, number("part_pack", 2));
        type(changes, "part_price", FIRST_SPARE, number("part_price", 40));
        type(changes, "part_life", FIRST_SPARE, number("part_life", 2));
        return changes;
    }

    private Given number(String id, double value) {
        return Given.number(value, budget.line(id).unit());
    }

    private void type(Map<Line, Map<Integer, Given>> changes, String id, int cell, Given given) {
        changes.put(budget.line(id), Map.of(cell, given));
    }
}
