package org.benchmetre.workbook;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.Map;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.CellValue;
import org.apache.poi.ss.usermodel.FormulaEvaluator;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.benchmetre.budget.Budget;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.entry.Given;
import org.benchmetre.budget.run.Figures;

/**
 * The spreadsheet library's own evaluator as a referee: changes are typed into the written file and every formula recalculated. The
 * file is written once for any number of changes.
 */
public final class PoiReferee {

    private final Figures figures;
    private final byte[] written;

    /**
     * Writes the workbook of a budget.
     *
     * @param budget the budget
     * @throws IOException when the workbook cannot be made
     */
    public PoiReferee(Budget budget) throws IOException {
        this.figures = Figures.of(budget);
        this.written = new WorkbookWriter().bytes(figures);
    }

    /**
     * Compares the workbook, with changes typed in, with the engine's figures for the same changes; what searches found stays. May run
     * in several threads.
     *
     * @param changes what is typed in; may be empty
     * @return differences, empty when all agree
     */
    public List<String> differences(Map<Line, Map<Integer, Given>> changes) {
        try (XSSFWorkbook workbook = Agreement.typed(written, figures.budget(), changes)) {
            FormulaEvaluator evaluator = workbook.getCreationHelper().createFormulaEvaluator();
            return Agreement.differences(workbook, cell -> value(evaluator, cell), figures.typedOver(changes));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
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
