package org.benchmetre.workbook;

import java.time.ZoneOffset;
import java.util.Date;
import java.util.List;
import java.util.Optional;
import org.apache.poi.ooxml.POIXMLProperties;
import org.apache.poi.ss.usermodel.PrintSetup;
import org.apache.poi.xssf.usermodel.XSSFName;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.benchmetre.budget.Budget;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.run.Figures;

/** Draws one budget into an empty workbook: sheets, cells, names, validations, charts, protection. Used once. */
final class Drawing {

    private static final String MAKER = "Benchmetre";

    private final WorkbookPlan plan;
    private final Budget budget;
    private final Figures figures;
    /** Parts of a character in which POI gives widths. */
    private static final double POI_WIDTH = 256;
    /** Characters across a page that can still be read in print. */
    private static final double LEGIBLE = 270;
    /** Characters across the printed part of a sheet whose copies of lines are left out. */
    private static final double PRINTED = 150;

    private final List<Chart> charts;
    private final XSSFWorkbook workbook;
    private final ValueCells cells;
    private final Styles styles;

    Drawing(Figures figures, List<Chart> charts, XSSFWorkbook workbook) {
        this.figures = figures;
        this.budget = figures.budget();
        this.plan = WorkbookPlan.of(budget);
        this.charts = charts;
        this.workbook = workbook;
        this.cells = new ValueCells(plan, figures);
        this.styles = new Styles(workbook);
    }

    void draw() {
        plan.sheets().forEach(this::sheet);
        Pen last = pen(SourcesSheet.NAME);
        new SourcesSheet(budget, cells, last).write();
        last.finish();
        ChartDrawer drawer = new ChartDrawer(plan, figures, workbook);
        charts.forEach(drawer::draw);
        names();
        validations();
        workbook.sheetIterator().forEachRemaining(sheet -> finish((XSSFSheet) sheet));
        plan.sheets().forEach(this::printArea);
        workbook.setForceFormulaRecalculation(true);
        properties();
    }

    private void sheet(SheetPlan sheet) {
        Pen pen = pen(sheet.name());
        sheet.settleWidths();
        for (int column = 0; column < sheet.widths().size(); column++) {
            pen.width(column, sheet.widths().get(column));
        }
        BoxWriter boxes = new BoxWriter(plan, sheet, cells, pen);
        sheet.boxes().forEach(boxes::write);
        pen.finish();
    }

    private Pen pen(String name) {
        Pen pen = new Pen((GridSheet) workbook.createSheet(name), styles);
        pen.words(0, 0, budget.title(), Look.Role.TITLE);
        pen.height(0, 26);
        pen.words(1, 0, name, Look.Role.NOTE);
        pen.height(1, 15);
        return pen;
    }

    private void names() {
        for (Line line : budget.lines()) {
            if (line.axes().isEmpty() && !budget.isRepeated(line)) {
                name(line.id(), plan.spot(line, 0));
                if (plan.isConverted(line)) {
                    name(ValueCells.typedName(line), plan.typedSpot(line, 0));
                }
            }
        }
    }

    private void name(String name, Spot spot) {
        XSSFName made = workbook.createName();
        made.setNameName(name);
        made.setRefersToFormula(spot.quoted());
    }

    private void validations() {
        Validations validations = new Validations(plan, workbook);
        budget.lines().forEach(validations::add);
        int lists = workbook.getSheetIndex(Validations.LISTS);
        if (lists >= 0) {
            workbook.setSheetHidden(lists, true);
        }
    }

    /** Copies of lines for a what-if table are not printed: the page ends before the first of them. */
    private void printArea(SheetPlan sheet) {
        sheet.boxes().stream()
                .filter(box -> box.schedule().lines().stream().anyMatch(budget::isRepeated))
                .findFirst()
                .ifPresent(box -> workbook.setPrintArea(
                        workbook.getSheetIndex(sheet.name()), 0, sheet.lastColumnWithin(PRINTED), 0, box.top() - 1));
    }

    private void finish(XSSFSheet sheet) {
        sheet.setDisplayGridlines(false);
        PrintSetup print = sheet.getPrintSetup();
        print.setLandscape(true);
        print.setPaperSize(PrintSetup.A4_PAPERSIZE);
        sheet.setFitToPage(true);
        print.setFitWidth(pagesAcross(sheet));
        print.setFitHeight((short) 0);
        sheet.getFooter().setLeft("&A");
        sheet.getFooter().setRight("&P / &N");
        sheet.enableLocking();
        sheet.lockFormatColumns(false);
        sheet.lockFormatRows(false);
    }

    /** One page across, more where the print would be too small to read. */
    private static short pagesAcross(XSSFSheet sheet) {
        int used = sheet.getCTWorksheet().getColsList().stream()
                .flatMap(columns -> columns.getColList().stream())
                .mapToInt(column -> (int) column.getMax())
                .max()
                .orElse(0);
        double total = 0;
        for (int column = 0; column < used; column++) {
            total += sheet.getColumnWidth(column) / POI_WIDTH;
        }
        return (short) Math.max(1, Math.round(total / LEGIBLE));
    }

    /** Fixed times and no user: the same figures give the same bytes. */
    private void properties() {
        Optional<Date> time = Optional.of(Date.from(ZipStamp.TIME.toInstant(ZoneOffset.UTC)));
        POIXMLProperties properties = workbook.getProperties();
        properties.getCoreProperties().setCreator(MAKER);
        properties.getCoreProperties().setTitle(budget.title());
        properties.getCoreProperties().setCreated(time);
        properties.getCoreProperties().setModified(time);
        properties.getExtendedProperties().setApplication(MAKER);
    }
}
