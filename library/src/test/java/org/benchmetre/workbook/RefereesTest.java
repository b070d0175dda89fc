package org.benchmetre.workbook;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.benchmetre.budget.Budget;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.entry.Given;
import org.benchmetre.budget.run.Figures;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class RefereesTest {

    private static final int FIRST_SPARE = 3;
    private static final int SEEDS = 8;

    private final Budget budget = SampleBudget.make();

    @Test
    void poi_agrees_before_and_after_changes() throws IOException {
        PoiReferee referee = new PoiReferee(budget).add(Map.of()).add(filledAndFlipped());
        for (long seed = 1; seed <= SEEDS; seed++) {
            Map<Line, Map<Integer, Given>> changes = Adjustments.seeded(budget, seed);
            assertThat(changes).isNotEmpty();
            referee.add(changes);
        }
        assertThat(referee.differences()).isEmpty();
    }

    @Test
    void libreoffice_agrees_before_and_after_changes(@TempDir Path folder) throws IOException {
        LibreOfficeReferee.require();
        LibreOfficeReferee referee = new LibreOfficeReferee(folder);
        LibreOfficeReferee.Book book = referee.book(budget).add(Map.of()).add(filledAndFlipped());
        for (long seed = 1; seed <= SEEDS; seed++) {
            book.add(Adjustments.seeded(budget, seed));
        }
        assertThat(referee.differences()).isEmpty();
    }

    @Test
    void a_spare_row_counts_and_the_choice_is_told_in_words() {
        Figures after = Figures.of(budget.with(filledAndFlipped()));
        assertThat(after.number("parts_cost")).isGreaterThan(Figures.of(budget).number("parts_cost") + 100);
        assertThat(after.text("way_in_words")).isEqualTo("Glued, no screws");
    }

    @Test
    void cached_figures_of_other_entries_are_found() throws IOException {
        Budget other = budget.with(dearerWork());
        try (XSSFWorkbook workbook = open(written())) {
            assertThat(Agreement.of(workbook, Written.bare(budget).plan())
                            .differences(Agreement.cached(workbook), Figures.of(other)))
                    .anyMatch(line -> line.startsWith("fixing_cost should be"));
        }
    }

    @Test
    void both_referees_find_a_formula_that_is_not_the_lines(@TempDir Path folder) throws IOException {
        LibreOfficeReferee.require();
        byte[] wrong = tampered(cell -> cell.setCellFormula(cell.getCellFormula() + "+0.001"));
        assertThat(new PoiReferee(budget, wrong).add(Map.of()).add(dearerWork()).differences())
                .filteredOn(told -> told.contains("total_cost should be"))
                .hasSize(2);
        LibreOfficeReferee referee = new LibreOfficeReferee(folder);
        referee.book(budget, wrong).add(Map.of()).add(dearerWork());
        assertThat(referee.differences())
                .filteredOn(told -> told.contains("total_cost should be"))
                .hasSize(2);
    }

    @Test
    void a_formula_that_was_not_written_and_one_of_no_line_are_found() throws IOException {
        byte[] number = tampered(Cell::removeFormula);
        byte[] stray = tampered(
                cell -> cell.getRow().createCell(cell.getColumnIndex() + 50).setCellFormula("1+1"));
        assertThat(new PoiReferee(budget, number).add(Map.of()).differences())
                .singleElement()
                .asString()
                .endsWith("total_cost has a formula, but none was written.");
        assertThat(new PoiReferee(budget, stray).add(Map.of()).differences())
                .singleElement()
                .asString()
                .endsWith("shows no cell of a line: 1+1.");
    }

    @Test
    void libreoffice_really_recalculates(@TempDir Path folder) throws IOException {
        LibreOfficeReferee.require();
        byte[] stale = tampered(cell -> cell.setCellValue(-1));
        Figures figures = Figures.of(budget);
        try (XSSFWorkbook workbook = open(stale)) {
            assertThat(Agreement.of(workbook, Written.bare(budget).plan())
                            .differences(Agreement.cached(workbook), figures))
                    .singleElement()
                    .asString()
                    .startsWith("total_cost should be");
        }
        LibreOfficeReferee referee = new LibreOfficeReferee(folder);
        referee.book(budget, stale).add(Map.of());
        assertThat(referee.differences()).isEmpty();
    }

    @Test
    void libreoffice_without_its_workbook_is_no_agreement(@TempDir Path folder) {
        LibreOfficeReferee.require();
        assertThatThrownBy(() -> LibreOffice.run(
                        folder, List.of("open\t" + folder.resolve("none.xlsx").toUri(), "save\tnowhere")))
                .isInstanceOf(IOException.class)
                .hasMessageStartingWith("LibreOffice did not end its job. Its macro said: ");
    }

    private byte[] written() throws IOException {
        return new WorkbookWriter().bytes(Figures.of(budget));
    }

    private static XSSFWorkbook open(byte[] bytes) throws IOException {
        return new XSSFWorkbook(new ByteArrayInputStream(bytes));
    }

    /** The workbook with something done to the cell of the total, not to be recalculated on opening. */
    private byte[] tampered(Consumer<Cell> what) throws IOException {
        Spot spot = Written.bare(budget).plan().spot(budget.line("total_cost"), 0);
        try (XSSFWorkbook workbook = open(written());
                ByteArrayOutputStream out = new ByteArrayOutputStream()) {
            workbook.setForceFormulaRecalculation(false);
            what.accept(workbook.getSheet(spot.sheet()).getRow(spot.row()).getCell(spot.column()));
            workbook.write(out);
            return out.toByteArray();
        }
    }

    private Map<Line, Map<Integer, Given>> dearerWork() {
        return Map.of(budget.line("hourly_wage"), Map.of(0, number("hourly_wage", 99)));
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
