package org.benchmetre.workbook;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.util.Map;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.CellValue;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.benchmetre.budget.Budget;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.entry.Given;
import org.benchmetre.budget.run.Figures;
import org.benchmetre.farm.Sample;
import org.junit.jupiter.api.Test;

/**
 * Flip values of prices, wages and the price level are live in a workbook: an entry typed over moves them at once, to what a search on
 * the new entries would find. Those of lives stay as filled.
 */
class LiveFlipValuesTest {

    private static final double RELATIVE = 1e-9;

    private final Budget budget = Sample.with(Sample.troughHouse(), "pulse_per_plant=1000 mL/plant");
    private final Figures figures = Figures.of(budget);
    private final Figures after = Figures.of(Sample.with(budget, "install_wage=25 money/h"));

    private static int row(Budget budget, String key) {
        return budget.line("flip_value").axes().get(0).indexOf(key);
    }

    private double value(XSSFWorkbook workbook, String key) {
        Spot spot = Written.bare(budget).plan().spot(budget.line("flip_value"), row(budget, key));
        Cell cell = workbook.getSheet(spot.sheet()).getRow(spot.row()).getCell(spot.column());
        assertThat(cell.getCellType()).isEqualTo(CellType.FORMULA);
        CellValue value = workbook.getCreationHelper().createFormulaEvaluator().evaluate(cell);
        assertThat(value.getCellType()).as(key).isEqualTo(CellType.NUMERIC);
        return value.getNumberValue();
    }

    private double engine(Figures f, String key) {
        return f.number("flip_value", key);
    }

    @Test
    void a_wage_typed_over_moves_the_flip_values_that_are_formulas_and_no_other() throws IOException {
        Line wage = budget.line("install_wage");
        Map<Line, Map<Integer, Given>> change = Map.of(wage, Map.of(0, Given.number(25, wage.unit())));
        byte[] written = new WorkbookWriter().bytes(figures);
        try (XSSFWorkbook workbook = new XSSFWorkbook(new ByteArrayInputStream(written))) {
            Typing.of(Written.bare(budget).plan(), change).forEach(typing -> typing.into(workbook));
            for (String key : new String[] {"material_price_tape", "material_price_dripline", "price_level"}) {
                double expected = engine(after, key);
                assertThat(expected).as(key).isNotCloseTo(engine(figures, key), within(1e-3 * expected));
                assertThat(value(workbook, key)).as(key).isCloseTo(expected, within(RELATIVE * expected));
            }
            double life = engine(figures, "material_life_tape");
            assertThat(engine(after, "material_life_tape")).isNotCloseTo(life, within(1e-3 * life));
            assertThat(value(workbook, "material_life_tape")).isEqualTo(life);
        }
    }
}
