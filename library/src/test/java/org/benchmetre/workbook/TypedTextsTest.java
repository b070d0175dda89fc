package org.benchmetre.workbook;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.apache.poi.xssf.usermodel.XSSFCell;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.benchmetre.budget.Budget;
import org.benchmetre.budget.BudgetBuilder;
import org.benchmetre.budget.Formulas;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.entry.Given;
import org.benchmetre.budget.run.Figures;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Texts that a reader of workbooks could take for something else: ECMA-376 part 1, 22.9.2.19, and formulas. */
class TypedTextsTest {

    private static final String TYPED = "Board _x003D_ 2 _x0_ _xZZZZ_";

    @TempDir
    Path folder;

    /** The example of the standard is {@code _x0008_}, written {@code _x005F_x0008_}. */
    @ParameterizedTest
    @CsvSource({
        "_x0008_,_x005F_x0008_",
        "a_x003d_b,a_x005F_x003d_b",
        "_x005F_x0008_,_x005F_x005F_x005F_x0008_",
        "_x0_,_x005F_x0_",
        "_xGGGG_,_xGGGG_",
        "bench_x,bench_x"
    })
    void what_would_be_read_as_an_escape_is_escaped(String typed, String spelled) {
        StringBuilder out = new StringBuilder();
        Markup.text(out, typed);
        assertThat(out).hasToString(spelled);
    }

    private static Budget budget(String label) {
        BudgetBuilder b = new BudgetBuilder("Shelves", "EUR");
        var schedule = b.schedule("Shelves", "Texts");
        Line entry = schedule.textEntry("board_label", "Board").given(Given.text(label));
        schedule.textLine("board_again", "Again", entry);
        schedule.textLine("board_constant", "Constant", Formulas.text(label));
        return b.build();
    }

    private static byte[] bytes(Budget budget) throws IOException {
        return new WorkbookWriter().bytes(Figures.of(budget));
    }

    private static XSSFCell cell(XSSFWorkbook workbook, Budget budget, String id) {
        Spot spot = Written.bare(budget).plan().spot(budget.line(id), 0);
        return workbook.getSheet(spot.sheet()).getRow(spot.row()).getCell(spot.column());
    }

    @Test
    void another_reader_finds_what_was_typed() throws IOException {
        Budget budget = budget(TYPED);
        try (XSSFWorkbook workbook = new XSSFWorkbook(new ByteArrayInputStream(bytes(budget)))) {
            for (String id : List.of("board_label", "board_again", "board_constant")) {
                assertThat(cell(workbook, budget, id).getStringCellValue())
                        .as(id)
                        .isEqualTo(TYPED);
            }
            assertThat(cell(workbook, budget, "board_constant").getCellFormula())
                    .doesNotContain("_x003D_");
        }
    }

    @Test
    void the_office_program_shows_what_was_typed_also_when_it_recalculates() throws IOException {
        LibreOfficeReferee.require();
        Budget budget = budget(TYPED);
        LibreOfficeReferee office = new LibreOfficeReferee(folder);
        LibreOfficeReferee.Book book = office.book(budget).add(Map.of());

        office.recalculate();

        for (String id : List.of("board_label", "board_again", "board_constant")) {
            assertThat(book.shown(0, id, 0)).as(id).isEqualTo(TYPED);
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"=1+1", "+1", "-1", "@x", "'x", "\uFF1D1"})
    void a_text_that_begins_as_a_formula_does_is_marked_as_text(String text) throws IOException {
        Budget budget = budget(text);
        try (XSSFWorkbook workbook = new XSSFWorkbook(new ByteArrayInputStream(bytes(budget)))) {
            XSSFCell cell = cell(workbook, budget, "board_label");
            assertThat(cell.getCellStyle().getQuotePrefixed()).isTrue();
            assertThat(cell.getStringCellValue()).isEqualTo(text);
        }
    }
}
