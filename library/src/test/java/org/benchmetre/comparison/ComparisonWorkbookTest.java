package org.benchmetre.comparison;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.LongStream;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.benchmetre.budget.Budget;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.entry.Given;
import org.benchmetre.budget.run.Figures;
import org.benchmetre.workbook.Adjustments;
import org.benchmetre.workbook.LibreOfficeReferee;
import org.benchmetre.workbook.Paper;
import org.benchmetre.workbook.PoiReferee;
import org.benchmetre.workbook.Setup;
import org.benchmetre.workbook.WorkbookWriter;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** Two spreadsheet engines that are not ours recalculate every formula cell of a comparison, as written and after seeded adjustments. */
class ComparisonWorkbookTest {

    private static final int SEEDS = 12;

    /** As long as a formula may be and still be read. */
    private static final int LONGEST = 300;

    /** Sums and factors of adjusted amounts, some hundreds by the measure, differ by rounding alone; relative to the amounts together. */
    private static final double ROUNDING = 1e-9;

    private static Setup setup(Comparison comparison) {
        return new Setup(comparison.pages(), null, Paper.A4);
    }

    private static LongStream seeds() {
        return LongStream.rangeClosed(1, SEEDS);
    }

    @ParameterizedTest
    @EnumSource(Measure.class)
    void poi_agrees_by_every_measure(Measure per) throws IOException {
        Comparison three = Sampled.three(per);
        assertThat(new PoiReferee(three.figures().budget(), setup(three))
                        .add(Map.of())
                        .differences())
                .isEmpty();
    }

    @Test
    void poi_agrees_after_changes() throws IOException {
        Comparison two = Sampled.two(Measure.AREA);
        Budget budget = two.figures().budget();
        PoiReferee referee = new PoiReferee(budget, setup(two));
        seeds().forEach(seed -> referee.add(Adjustments.seeded(budget, seed)));
        assertThat(referee.differences()).isEmpty();
    }

    @Test
    void libreoffice_agrees_before_and_after_changes(@TempDir Path folder) throws IOException {
        LibreOfficeReferee.require();
        Comparison two = Sampled.two(Measure.METRE);
        Budget budget = two.figures().budget();
        Comparison three = Sampled.three(Measure.KG);
        LibreOfficeReferee referee = new LibreOfficeReferee(folder);
        LibreOfficeReferee.Book book = referee.book(budget, setup(two)).add(Map.of());
        seeds().forEach(seed -> book.add(Adjustments.seeded(budget, seed)));
        referee.book(three.figures().budget(), setup(three)).add(Map.of());
        assertThat(referee.differences()).isEmpty();
    }

    @Test
    void parts_add_up_after_changes() {
        Budget budget = Sampled.two(Measure.AREA).figures().budget();
        seeds().forEach(seed -> {
            Map<Line, Map<Integer, Given>> changes = Adjustments.seeded(budget, seed);
            Figures figures = Figures.of(budget.with(changes));
            double together = figures.number("amounts_together", "container_house")
                    + figures.number("amounts_together", "trough_house");

            assertThat(changes).isNotEmpty();
            assertThat(sum(figures, "section_difference"))
                    .isCloseTo(sum(figures, "cause_difference"), within(ROUNDING * together));
            assertThat(sum(figures, "receipts_step"))
                    .isCloseTo(
                            figures.number("section_difference", "receipts", "container_house"),
                            within(ROUNDING * together));
        });
    }

    private static double sum(Figures figures, String id) {
        return figures.budget().line(id).axes().get(0).keys().stream()
                .mapToDouble(row -> figures.number(id, row, "container_house"))
                .sum();
    }

    @Test
    void no_formula_is_too_long_to_be_read() throws IOException {
        Comparison three = Sampled.three(Measure.KG);
        byte[] written = new WorkbookWriter(setup(three)).bytes(three.figures());
        List<String> formulas = new ArrayList<>();
        try (XSSFWorkbook workbook = new XSSFWorkbook(new ByteArrayInputStream(written))) {
            for (Sheet sheet : workbook) {
                for (Row row : sheet) {
                    for (Cell cell : row) {
                        if (cell.getCellType() == CellType.FORMULA) {
                            formulas.add(cell.getCellFormula());
                        }
                    }
                }
            }
        }
        assertThat(formulas)
                .hasSizeGreaterThan(500)
                .allSatisfy(formula -> assertThat(formula.length()).as(formula).isLessThanOrEqualTo(LONGEST));
    }
}
