package org.benchmetre.workbook;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.util.List;
import java.util.Map;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.CellValue;
import org.apache.poi.ss.usermodel.FormulaEvaluator;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.benchmetre.budget.Budget;
import org.benchmetre.budget.Given;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.run.Figures;

/** The spreadsheet library's own evaluator as a referee: changes are typed into the written file and every formula recalculated. */
public final class PoiReferee {

    private PoiReferee() {}

    /**
     * Compares the workbook of a budget, with changes typed in, with the engine's figures for the same changes.
     *
     * @param budget the budget that is written
     * @param changes what is typed in; may be empty
     * @return differences, empty when all agree
     * @throws IOException when the workbook cannot be made
     */
    public static List<String> differences(Budget budget, Map<Line, Map<Integer, Given>> changes) throws IOException {
        byte[] bytes = new WorkbookWriter().bytes(Figures.of(budget));
        try (XSSFWorkbook workbook = new XSSFWorkbook(new ByteArrayInputStream(bytes))) {
            Agreement.type(workbook, budget, changes);
            FormulaEvaluator evaluator = workbook.getCreationHelper().createFormulaEvaluator();
            return Agreement.differences(workbook, cell -> value(evaluator, cell), Figures.of(budget.with(changes)));
        }
    }

    private static Object value(FormulaEvaluator evaluator, Cell cell) {
        if (cell.getCellType() != CellType.FORMULA) {
            return "no formula: " + cell;
        }
        CellValue value = evaluator.evaluate(cell);
        return switch (value.getCellType()) {
            case NUMERIC -> value.getNumberValue();
            case STRING -> value.getStringValue();
            default -> value.formatAsString();
        };
    }
}
