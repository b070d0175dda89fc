package org.benchmetre.workbook;

import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.Date;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.IntStream;
import org.apache.poi.ooxml.POIXMLProperties;
import org.apache.poi.xssf.usermodel.XSSFName;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.benchmetre.budget.Budget;
import org.benchmetre.budget.CellRef;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.run.Figures;
import org.benchmetre.page.Page;

/** Draws one budget into an empty workbook: pages, workings, names, validations, charts, protection. Used once. */
final class Drawing {

    /** Letters that the longest name of a page takes. */
    private static final int ROOM_OF_A_NAME = 22;

    private static final String MAKER = "Benchmetre";
    private static final String WORKINGS =
            "Workings: how each figure was made. A heading leads back to the page that uses it.";

    private final Setup setup;
    private final WorkbookPlan plan;
    private final Budget budget;
    private final XSSFWorkbook workbook;
    private final ValueCells cells;
    private final Styles styles;
    private final ChartDrawer charts;
    private final SheetFinish finish;

    Drawing(Figures figures, Setup setup, XSSFWorkbook workbook) {
        this.setup = setup;
        this.budget = figures.budget();
        this.plan = WorkbookPlan.of(figures, setup.pages());
        this.workbook = workbook;
        this.cells = new ValueCells(plan, figures);
        this.styles = new Styles(workbook);
        this.charts = new ChartDrawer(plan, figures, workbook);
        this.finish = new SheetFinish(setup.paper(), budget.title());
    }

    void draw() {
        plan.pages().forEach(this::page);
        plan.sheets().forEach(this::sheet);
        names();
        Validations validations = new Validations(plan, workbook);
        budget.lines().forEach(validations::add);
        plan.lists().write(workbook);
        workbook.setForceFormulaRecalculation(true);
        properties();
    }

    private void page(PagePlan page) {
        GridSheet sheet = (GridSheet) workbook.createSheet(page.name());
        boolean entries = page.page().kind() == Page.Kind.ENTRIES;
        Pen pen = entries ? new Pen(sheet, styles, Pen.LOW_ROW_POINTS) : new Pen(sheet, styles);
        new PageWriter(plan, page, cells, pen).write();
        head(page, pen);
        boolean first = page == plan.pages().get(0);
        int end = first ? contents(page, pen) : page.seenEnd();
        pen.finish();
        charts.draw(page);
        double[] points = IntStream.range(0, end).mapToDouble(pen::pointsOf).toArray();
        finish.page(sheet, page, points);
    }

    /** Name and question of the page at the left, title of the plan and year of its prices at the right. */
    private void head(PagePlan page, Pen pen) {
        int last = page.lastColumn();
        int middle = page.middle();
        pen.words(0, 0, page.name(), Look.Role.TITLE);
        pen.across(0, middle, last, budget.title(), Look.Role.ASIDE);
        pen.atLeast(0, 22);
        String opened = page.foldedColumns().isEmpty() ? "" : " + above opens columns that are empty.";
        pen.across(1, 0, middle - 1, page.page().question() + opened, Look.Role.NOTE);
        Line heading = setup.heading();
        if (heading == null) {
            return;
        }
        Spot spot = new Spot(page.name(), 1, middle);
        pen.overColumns(() -> cells.shown(pen, spot, new CellRef(heading, 0), Look.Role.ASIDE, Look.GENERAL));
        pen.spread(1, middle, last, cells.text(heading), Look.Role.ASIDE);
    }

    /** Where to look, below all else: every other page by name, answers first, then the first workings. Answers the row below. */
    private int contents(PagePlan first, Pen pen) {
        List<Page> others = setup.pages().subList(1, setup.pages().size());
        int row = first.end();
        if (others.isEmpty()) {
            return row;
        }
        pen.words(row++, 0, "Where to look", Look.Role.HEADING);
        List<Slot> slots = slots(first);
        List<String> answers = names(others, page -> page.kind() != Page.Kind.ENTRIES);
        List<String> rest = new ArrayList<>(names(others, page -> page.kind() == Page.Kind.ENTRIES));
        plan.sheets().stream().findFirst().ifPresent(workings -> rest.add(workings.name()));
        return links(pen, links(pen, row, slots, answers), slots, rest);
    }

    private static List<String> names(List<Page> pages, Predicate<Page> wanted) {
        return pages.stream().filter(wanted).map(Page::name).toList();
    }

    private static int links(Pen pen, int row, List<Slot> slots, List<String> names) {
        for (int i = 0; i < names.size(); i++) {
            link(pen, row + i / slots.size(), slots.get(i % slots.size()), names.get(i));
        }
        return row + (names.size() + slots.size() - 1) / slots.size();
    }

    private static void link(Pen pen, int row, Slot slot, String name) {
        pen.across(row, slot.first(), slot.last(), name, Look.Role.LINK);
        pen.link(row, slot.first(), new Spot(name, 0, 0));
    }

    /** Columns that together have room for a name. */
    private record Slot(int first, int last) {}

    private static List<Slot> slots(PagePlan page) {
        List<Slot> slots = new ArrayList<>();
        int start = 0;
        int room = 0;
        for (int column = 0; column <= page.lastColumn(); column++) {
            room += page.widths().get(column);
            if (room >= ROOM_OF_A_NAME) {
                slots.add(new Slot(start, column));
                start = column + 1;
                room = 0;
            }
        }
        return slots.isEmpty() ? List.of(new Slot(0, page.lastColumn())) : slots;
    }

    private void sheet(SheetPlan sheet) {
        GridSheet made = (GridSheet) workbook.createSheet(sheet.name());
        Pen pen = new Pen(made, styles);
        pen.words(0, 0, sheet.name(), Look.Role.TITLE);
        pen.height(0, 26);
        pen.words(1, 0, setup.pages().isEmpty() ? budget.title() : WORKINGS, Look.Role.ASIDE_LEFT);
        sheet.settleWidths();
        for (int column = 0; column < sheet.widths().size(); column++) {
            pen.width(column, sheet.widths().get(column));
        }
        BoxWriter boxes = new BoxWriter(plan, sheet, cells, pen);
        sheet.boxes().forEach(boxes::write);
        pen.finish();
        finish.workings(made);
    }

    private void names() {
        for (Line line : budget.lines()) {
            if (line.axes().isEmpty() && !budget.isRepeated(line)) {
                name(line.id(), plan.spot(line, 0));
                if (plan.homes().isApart(line)) {
                    name(TypedCells.name(line), plan.typedSpot(line, 0));
                }
            }
        }
    }

    private void name(String name, Spot spot) {
        XSSFName made = workbook.createName();
        made.setNameName(name);
        made.setRefersToFormula(spot.quoted());
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
