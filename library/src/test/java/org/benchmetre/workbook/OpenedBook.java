package org.benchmetre.workbook;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.Stream;
import java.util.stream.StreamSupport;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellStyle;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.DataFormatter;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.benchmetre.Benchmetre;
import org.benchmetre.FarmWorkbook;
import org.benchmetre.ScenarioException;
import org.benchmetre.budget.Budget;
import org.benchmetre.farm.Sample;

/**
 * The workbook of a scenario as it was written, opened again, and the plan it was drawn from. Made once and only read.
 *
 * @param name of the scenario
 * @param written figures and plan
 * @param workbook opened from its bytes
 */
record OpenedBook(String name, Written written, XSSFWorkbook workbook) {

    private static final Map<String, OpenedBook> OPENED = new ConcurrentHashMap<>();

    /** The samples and the starter on A4. */
    static List<OpenedBook> all() throws IOException, ScenarioException {
        List<OpenedBook> all = new ArrayList<>();
        for (Path scenario : Sample.GIVEN) {
            all.add(of(scenario, Paper.A4));
        }
        return all;
    }

    static OpenedBook of(Path scenario, Paper paper) throws IOException, ScenarioException {
        String name = scenario + ", " + paper;
        OpenedBook known = OPENED.get(name);
        if (known == null) {
            Budget budget = Benchmetre.read(scenario).budget();
            Setup setup = FarmWorkbook.setup(budget);
            Written written = Written.of(budget, new Setup(setup.pages(), setup.heading(), paper));
            known = new OpenedBook(name, written, new XSSFWorkbook(new ByteArrayInputStream(written.bytes())));
            OPENED.put(name, known);
        }
        return known;
    }

    @Override
    public String toString() {
        return name;
    }

    /** The workbook opened once more, to be typed over. */
    XSSFWorkbook again() throws IOException {
        return new XSSFWorkbook(new ByteArrayInputStream(written.bytes()));
    }

    WorkbookPlan plan() {
        return written.plan();
    }

    XSSFSheet sheet(PagePlan page) {
        return workbook.getSheet(page.name());
    }

    /** Every cell of a sheet. */
    static Stream<Cell> cells(Sheet sheet) {
        return StreamSupport.stream(sheet.spliterator(), false).flatMap(OpenedBook::cells);
    }

    /** Every cell of a row. */
    static Stream<Cell> cells(Row row) {
        return StreamSupport.stream(row.spliterator(), false);
    }

    /** The cell of a place; null where none was written. */
    Cell cell(Spot spot) {
        Row row = workbook.getSheet(spot.sheet()).getRow(spot.row());
        return row == null ? null : row.getCell(spot.column());
    }

    /** The type of what a cell shows. */
    static CellType type(Cell cell) {
        return cell.getCellType() == CellType.FORMULA ? cell.getCachedFormulaResultType() : cell.getCellType();
    }

    /** What a reader sees in a cell, written in English, before anything is recalculated. */
    static String shown(Cell cell) {
        return switch (cell == null ? CellType.BLANK : type(cell)) {
            case NUMERIC -> number(cell);
            case STRING -> cell.getStringCellValue();
            case BOOLEAN -> Boolean.toString(cell.getBooleanCellValue()).toUpperCase(Locale.ROOT);
            case ERROR -> "error " + cell.getErrorCellValue();
            default -> "";
        };
    }

    private static String number(Cell cell) {
        CellStyle style = cell.getCellStyle();
        return new DataFormatter(Locale.ROOT)
                .formatRawCellContents(cell.getNumericCellValue(), style.getDataFormat(), style.getDataFormatString());
    }

    /** Whether a row is folded away. */
    static boolean isFolded(Cell cell) {
        return cell.getRow().getZeroHeight();
    }
}
