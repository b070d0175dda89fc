package org.benchmetre.workbook;

import java.lang.reflect.Proxy;
import java.util.IdentityHashMap;
import java.util.Map;
import org.apache.poi.ss.formula.EvaluationCell;
import org.apache.poi.ss.formula.EvaluationWorkbook;
import org.apache.poi.ss.formula.IStabilityClassifier;
import org.apache.poi.ss.formula.WorkbookEvaluator;
import org.apache.poi.ss.formula.eval.BoolEval;
import org.apache.poi.ss.formula.eval.NumericValueEval;
import org.apache.poi.ss.formula.eval.StringValueEval;
import org.apache.poi.ss.formula.eval.ValueEval;
import org.apache.poi.ss.formula.ptg.Ptg;
import org.apache.poi.xssf.usermodel.XSSFEvaluationWorkbook;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;

/**
 * The spreadsheet library's evaluator over one open workbook. Each formula is read once and kept; every value is forgotten when
 * recalculation starts again, so that the evaluator need not note what depends on what.
 */
final class Recalculation {

    private final EvaluationWorkbook cells;
    private final WorkbookEvaluator evaluator;
    private final Map<Object, Ptg[]> formulas = new IdentityHashMap<>();

    Recalculation(XSSFWorkbook workbook) {
        cells = XSSFEvaluationWorkbook.create(workbook);
        evaluator = new WorkbookEvaluator(readingOnce(), IStabilityClassifier.TOTALLY_IMMUTABLE, null);
    }

    /** The workbook as the evaluator sees it, but for reading a formula again and for forgetting where cells are. */
    private EvaluationWorkbook readingOnce() {
        return (EvaluationWorkbook) Proxy.newProxyInstance(
                Recalculation.class.getClassLoader(),
                new Class<?>[] {EvaluationWorkbook.class},
                (proxy, method, arguments) -> switch (method.getName()) {
                    case "getFormulaTokens" -> formula((EvaluationCell) arguments[0]);
                    case "clearAllCachedResultValues" -> null;
                    default -> method.invoke(cells, arguments);
                });
    }

    private Ptg[] formula(EvaluationCell cell) {
        return formulas.computeIfAbsent(cell.getIdentityKey(), any -> cells.getFormulaTokens(cell));
    }

    /** Forgets every value. */
    void startAgain() {
        evaluator.clearAllCachedResultValues();
    }

    /** The value of a formula cell: a Double or a String, errors as their text. */
    Object value(Spot spot) {
        EvaluationCell cell = cells.getSheet(cells.getSheetIndex(spot.sheet())).getCell(spot.row(), spot.column());
        ValueEval value = evaluator.evaluate(cell);
        if (value instanceof NumericValueEval number && !(value instanceof BoolEval)) {
            return number.getNumberValue();
        }
        return value instanceof StringValueEval text ? text.getStringValue() : value.toString();
    }
}
