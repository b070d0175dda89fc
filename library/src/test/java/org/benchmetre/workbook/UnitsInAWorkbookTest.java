package org.benchmetre.workbook;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.util.LinkedHashMap;
import java.util.Map;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.FormulaEvaluator;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.benchmetre.Benchmetre;
import org.benchmetre.FarmWorkbook;
import org.benchmetre.ScenarioException;
import org.benchmetre.budget.Budget;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.entry.Given;
import org.benchmetre.budget.run.Figures;
import org.benchmetre.farm.Sample;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A unit, whole units and a capacity typed over in a workbook change what depends on them, as the engine says. */
class UnitsInAWorkbookTest {

    private static Given text(String text) {
        return Given.text(text);
    }

    private static String text(Figures figures, String id, String part) {
        Line line = figures.budget().line(id);
        return figures.text(line, line.axes().get(0).indexOf(part));
    }

    private static Map<Integer, Given> row(Line line, String part, Given given) {
        return Map.of(line.axes().get(0).indexOf(part), given);
    }

    @Test
    void units_chosen_on_the_page_of_parts_convert() throws IOException, ScenarioException {
        Budget budget = Benchmetre.read(Sample.TROUGH_HOUSE).budget();
        Line unit = budget.line("material_unit");
        Line rate = budget.line("material_rate");
        PoiReferee referee = new PoiReferee(budget, FarmWorkbook.setup(budget));
        referee.add(Map.of(unit, row(unit, "trough", text("ft"))));
        referee.add(Map.of(unit, row(unit, "trough", text("roll"))));
        referee.add(Map.of(unit, row(unit, "perlite", text("ft3"))));
        referee.add(Map.of(unit, row(unit, "perlite", text("sack"))));
        referee.add(
                Map.of(unit, row(unit, "liner", text("kg")), rate, row(rate, "liner", Given.number(0.2, rate.unit()))));
        assertThat(referee.differences()).isEmpty();
    }

    /** A foot is 0.3048 m, a yard three of them, a cubic foot 28.3 L; a mass and an unknown word count as they are, and are told. */
    @ParameterizedTest
    @CsvSource({
        "trough, ft, 3.280839895",
        "trough, feet, 3.280839895",
        "trough, Yards, 1.0936132983",
        "trough, INCHES, 39.3700787402",
        "perlite, cu ft, 0.0353146667",
        "perlite, gallons, 0.2641720524",
        "trough, kg, 1",
        "perlite, sack, 1"
    })
    void a_unit_typed_on_the_page_of_parts_converts_in_any_spelling(String part, String typed, double units)
            throws IOException, ScenarioException {
        OpenedBook book = OpenedBook.of(Sample.TROUGH_HOUSE, Paper.A4);
        Budget budget = book.written().figures().budget();
        try (XSSFWorkbook workbook = book.again()) {
            cell(workbook, book, "material_unit", part).setCellValue(typed);
            FormulaEvaluator evaluator = workbook.getCreationHelper().createFormulaEvaluator();
            double cost = evaluator
                    .evaluate(cell(workbook, book, "material_exact_cost", part))
                    .getNumberValue();
            double before = Figures.of(budget).number("material_exact_cost", part);
            assertThat(cost / before).isCloseTo(units, within(1e-9));
            String told = evaluator
                    .evaluate(cell(workbook, book, "material_unit_warning", part))
                    .getStringValue();
            assertThat(told.isEmpty()).isEqualTo(units != 1);
        }
    }

    private static Cell cell(XSSFWorkbook workbook, OpenedBook book, String id, String part) {
        Line line = book.written().figures().budget().line(id);
        int cell = line.axes().get(0).indexOf(part);
        boolean entry = book.written().figures().budget().entry(line).isPresent();
        Spot spot = entry ? book.plan().typedSpot(line, cell) : book.plan().spot(line, cell);
        return workbook.getSheet(spot.sheet()).getRow(spot.row()).getCell(spot.column());
    }

    @Test
    void whole_units_and_capacities_typed_on_the_page_count() throws IOException, ScenarioException {
        Budget budget = Benchmetre.read(Sample.TROUGH_HOUSE).budget();
        Line driver = budget.line("material_driver");
        Line rate = budget.line("material_rate");
        Line whole = budget.line("material_whole");
        Line serves = budget.line("material_serves");
        Line unit = budget.line("material_serves_unit");
        Map<Line, Map<Integer, Given>> changes = new LinkedHashMap<>();
        changes.put(driver, row(driver, "pump", text("design_flow")));
        changes.put(rate, row(rate, "pump", Given.number(0.001, rate.unit())));
        changes.put(whole, row(whole, "pump", text("yes")));
        changes.put(serves, row(serves, "pump", Given.number(1, serves.unit())));
        changes.put(unit, row(unit, "pump", text("gal/min")));
        PoiReferee referee = new PoiReferee(budget, FarmWorkbook.setup(budget));
        assertThat(referee.add(changes).differences()).isEmpty();
        Figures after = Figures.of(budget).typedOver(changes);
        double flow = after.number("driver_amount", "design_flow");
        assertThat(after.number("material_quantity", "pump")).isCloseTo(Math.ceil(flow / 1000), within(1e-9));
        assertThat(text(after, "material_capacity_warning", "pump")).contains("gal/min (Flow of the largest zone)");
    }
}
