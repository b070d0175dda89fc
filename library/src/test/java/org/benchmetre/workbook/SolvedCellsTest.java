package org.benchmetre.workbook;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.benchmetre.budget.Budget;
import org.benchmetre.budget.entry.Given;
import org.benchmetre.budget.run.Figures;
import org.benchmetre.budget.unit.Unit;
import org.junit.jupiter.api.Test;

/** What a search found stands in a workbook as it is, and says so. */
class SolvedCellsTest {

    private final Budget budget = SampleBudget.make();
    private final WorkbookPlan plan = Written.bare(budget).plan();

    private static XSSFWorkbook written(Budget budget) throws IOException {
        return written(Figures.of(budget));
    }

    private static XSSFWorkbook written(Figures figures) throws IOException {
        return new XSSFWorkbook(new ByteArrayInputStream(new WorkbookWriter().bytes(figures)));
    }

    private Cell cell(XSSFWorkbook workbook, String id, int cell) {
        return at(workbook, plan.spot(budget.line(id), cell));
    }

    private static Cell at(XSSFWorkbook workbook, Spot spot) {
        return workbook.getSheet(spot.sheet()).getRow(spot.row()).getCell(spot.column());
    }

    @Test
    void a_solved_cell_is_a_plain_number_or_words_and_locked() throws IOException {
        try (XSSFWorkbook workbook = written(budget)) {
            Cell number = cell(workbook, "worth_wage", 0);
            assertThat(number.getCellType()).isEqualTo(CellType.NUMERIC);
            assertThat(number.getNumericCellValue()).isEqualTo(31.25);
            assertThat(number.getCellStyle().getLocked()).isTrue();
            assertThat(number.getCellStyle().getDataFormatString()).isEqualTo("#,##0.00");
            Cell words = cell(workbook, "worth_length", 0);
            assertThat(words.getCellType()).isEqualTo(CellType.STRING);
            assertThat(words.getStringCellValue()).isEqualTo("none in range");
            assertThat(words.getCellStyle().getLocked()).isTrue();
            assertThat(workbook.getName("worth_wage").getRefersToFormula())
                    .isEqualTo(plan.spot(budget.line("worth_wage"), 0).quoted());
            Cell entry = cell(workbook, "hourly_wage", 0);
            assertThat(number.getCellStyle().getIndex())
                    .isNotEqualTo(entry.getCellStyle().getIndex());
            assertThat(workbook.getFontAt(number.getCellStyle().getFontIndex()).getItalic())
                    .isTrue();
        }
    }

    @Test
    void a_list_says_beside_it_on_which_entries_it_was_filled() throws IOException {
        Spot spot = plan.spot(budget.line("worth_wage"), 0);
        Spot notes = new Spot(spot.sheet(), spot.row(), ColumnWidths.LIST_ENTRY);
        try (XSSFWorkbook workbook = written(budget)) {
            assertThat(at(workbook, notes).getStringCellValue())
                    .isEqualTo("As filled on these entries. Invented; nothing was searched.");
        }
        Figures changed = Figures.of(budget)
                .typedOver(Map.of(
                        budget.line("hourly_wage"), Map.of(0, Given.number(20, Unit.MONEY.over(Unit.parse("h"))))));
        try (XSSFWorkbook workbook = written(changed)) {
            assertThat(at(workbook, notes).getStringCellValue()).startsWith("As filled on other entries.");
        }
    }

    @Test
    void a_table_says_so_in_the_header_and_hides_spare_rows() throws IOException {
        Spot first = plan.spot(budget.line("part_worth"), 0);
        try (XSSFWorkbook workbook = written(budget)) {
            Cell head = at(workbook, new Spot(first.sheet(), first.row() - 2, first.column()));
            assertThat(head.getStringCellValue()).isEqualTo("Worth its price up to, as filled on these entries");
            assertThat(cell(workbook, "part_worth", 1).getNumericCellValue()).isEqualTo(12.5);
            assertThat(cell(workbook, "part_worth", 5).getStringCellValue()).isEqualTo("not searched");
            String spare = plan.spot(budget.line("part_worth"), 5).relative();
            var rules = workbook.getSheet(first.sheet()).getSheetConditionalFormatting();
            List<String> ranges = new ArrayList<>();
            for (int i = 0; i < rules.getNumConditionalFormattings(); i++) {
                ranges.add(rules.getConditionalFormattingAt(i)
                        .getFormattingRanges()[0]
                        .formatAsString());
            }
            assertThat(ranges).contains(spare);
        }
    }
}
