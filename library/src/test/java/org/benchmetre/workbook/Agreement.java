package org.benchmetre.workbook;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.ss.usermodel.Workbook;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.benchmetre.budget.Budget;
import org.benchmetre.budget.CellRef;
import org.benchmetre.budget.Dependencies;
import org.benchmetre.budget.Formula;
import org.benchmetre.budget.Kind;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.entry.Given;
import org.benchmetre.budget.run.Figures;

/**
 * Compares a recalculated workbook with the engine's figures, cell by cell. Numbers agree to a billionth of the largest operand of
 * the cell's formula, or to a billionth for figures near zero, as spreadsheet programs round to 15 digits; texts are equal.
 */
public final class Agreement {

    private static final double TOLERANCE = 1e-9;

    private final Figures figures;
    private final Plan plan;
    private final Map<Spot, CellRef> refs = new HashMap<>();

    private Agreement(Figures figures) {
        this.figures = figures;
        this.plan = Plan.of(figures.budget());
        for (Line line : figures.budget().lines()) {
            for (int cell = 0; cell < line.size(); cell++) {
                refs.put(plan.spot(line, cell), new CellRef(line, cell));
            }
        }
    }

    /**
     * A workbook written from a budget and read again, with changes typed into its entry cells.
     *
     * @param written the bytes of the workbook
     * @param budget the budget before
     * @param changes for each entry line the new value by cell
     * @return the workbook, to be closed
     * @throws IOException when it cannot be read
     */
    static XSSFWorkbook typed(byte[] written, Budget budget, Map<Line, Map<Integer, Given>> changes)
            throws IOException {
        XSSFWorkbook workbook = new XSSFWorkbook(new ByteArrayInputStream(written));
        type(workbook, budget, changes);
        return workbook;
    }

    /**
     * Types changes into the entry cells of a workbook.
     *
     * @param workbook written from the budget
     * @param budget the budget before
     * @param changes for each entry line the new value by cell
     */
    static void type(Workbook workbook, Budget budget, Map<Line, Map<Integer, Given>> changes) {
        Plan plan = Plan.of(budget);
        changes.forEach((line, cells) -> cells.forEach((cell, given) -> {
            Spot spot = plan.typedSpot(line, cell);
            Cell typed = workbook.getSheet(spot.sheet()).getRow(spot.row()).getCell(spot.column());
            if (!given.filled()) {
                typed.setBlank();
            } else if (line.kind() == Kind.TEXT) {
                typed.setCellValue(given.text());
            } else {
                typed.setCellValue(
                        plan.isConverted(line) ? typed(given, budget.given(line).get(cell)) : given.number());
            }
        }));
    }

    /** The number to type where the unit beside it is the one that was typed before. */
    private static double typed(Given given, Given before) {
        return given.typedIn().equals(before.typedIn())
                ? given.typed()
                : given.typedIn().convertLevel(given.typed(), before.typedIn());
    }

    /**
     * The differences between every formula cell and the engine.
     *
     * @param workbook a workbook whose formula cells have been recalculated
     * @param value how to read a formula cell: a Double or a String
     * @param figures the engine's figures for the same entries
     * @return one sentence each; empty when all agree
     * @throws IOException when the expected workbook cannot be made
     */
    static List<String> differences(Workbook workbook, Function<Cell, Object> value, Figures figures)
            throws IOException {
        Agreement agreement = new Agreement(figures);
        List<String> found = new ArrayList<>(figures.troubles());
        int compared = 0;
        try (XSSFWorkbook expected = drawn(figures)) {
            for (Sheet sheet : expected) {
                for (Row row : sheet) {
                    for (Cell cell : row) {
                        if (cell.getCellType() == CellType.FORMULA) {
                            compared++;
                            Row other = workbook.getSheet(sheet.getSheetName()).getRow(row.getRowNum());
                            Cell again = other == null ? null : other.getCell(cell.getColumnIndex());
                            agreement.compare(cell, again == null ? "" : value.apply(again), found);
                        }
                    }
                }
            }
        }
        if (compared == 0) {
            found.add("There was no formula cell to compare.");
        }
        return found;
    }

    /** The workbook as it should be, read as any reader would. */
    private static XSSFWorkbook drawn(Figures figures) throws IOException {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (XSSFWorkbook workbook = new XSSFWorkbook(new GridParts())) {
            new Drawing(figures, List.of(), workbook).draw();
            workbook.write(bytes);
        }
        return new XSSFWorkbook(new ByteArrayInputStream(bytes.toByteArray()));
    }

    private void compare(Cell expected, Object found, List<String> differences) {
        Spot spot = new Spot(expected.getSheet().getSheetName(), expected.getRowIndex(), expected.getColumnIndex());
        CellRef ref = refs.get(spot);
        Object wanted = ref == null ? cached(expected) : engine(ref);
        boolean same = wanted instanceof Double number && found instanceof Double other
                ? isClose(ref, number, other)
                : wanted.equals(found);
        if (!same) {
            differences.add((ref == null ? spot.reference() : ref) + " should be " + wanted + ", but found " + found
                    + " in " + expected.getCellFormula() + ".");
        }
    }

    /** The operands are looked at only where the figure itself does not settle it. */
    private boolean isClose(CellRef ref, double wanted, double found) {
        double difference = Math.abs(wanted - found);
        return difference <= TOLERANCE * Math.max(1, Math.abs(wanted))
                || difference <= TOLERANCE * largestOperand(ref, wanted);
    }

    private Object engine(CellRef ref) {
        boolean text = ref.line().kind() == Kind.TEXT || figures.hasReason(ref.line(), ref.cell());
        return text ? (Object) figures.text(ref.line(), ref.cell()) : (Object) figures.number(ref.line(), ref.cell());
    }

    private double largestOperand(CellRef ref, double value) {
        double largest = Math.abs(value);
        Formula formula =
                ref == null ? null : figures.budget().formula(ref.line()).orElse(null);
        if (formula == null) {
            return largest;
        }
        for (CellRef read : Dependencies.of(ref.line(), formula, ref.cell())) {
            if (engine(read) instanceof Double number) {
                largest = Math.max(largest, Math.abs(number));
            }
        }
        return largest;
    }

    /** The value cached in a formula cell, errors as their text. */
    static Object cached(Cell cell) {
        return switch (cell.getCellType() == CellType.FORMULA
                ? cell.getCachedFormulaResultType()
                : cell.getCellType()) {
            case NUMERIC -> cell.getNumericCellValue();
            case STRING -> cell.getStringCellValue();
            case BLANK -> "";
            default -> cell.toString();
        };
    }
}
