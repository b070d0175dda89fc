package org.benchmetre.workbook;

import org.benchmetre.budget.Axis;
import org.benchmetre.budget.Kind;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.Schedule;

/** Writes one schedule: heading, note, headers and cells, by its layout. */
final class BoxWriter {

    private static final double READING_WIDTH = 110;

    private final WorkbookPlan plan;
    private final SheetPlan sheet;
    private final ValueCells cells;
    private final Pen pen;

    BoxWriter(WorkbookPlan plan, SheetPlan sheet, ValueCells cells, Pen pen) {
        this.sheet = sheet;
        this.cells = cells;
        this.pen = pen;
        this.plan = plan;
    }

    void write(Box box) {
        Schedule schedule = box.schedule();
        pen.words(box.top(), 0, schedule.title(), Look.Role.HEADING);
        plan.pageOf(schedule).ifPresent(page -> pen.link(box.top(), 0, new Spot(page, 0, 0)));
        pen.height(box.top(), 20);
        if (!schedule.note().isEmpty()) {
            pen.across(box.top() + 1, 0, sheet.lastColumnWithin(READING_WIDTH), schedule.note(), Look.Role.NOTE);
        }
        switch (Layout.of(schedule)) {
            case LIST -> new ListWriter(plan, sheet, cells, pen).write(box);
            case TABLE -> table(box);
            case PERIODS -> periods(box);
            case BLOCKS -> blocks(box);
        }
    }

    private void table(Box box) {
        Schedule schedule = box.schedule();
        Axis axis = schedule.axes().get(0);
        int head = box.table();
        int column = 0;
        if (sheet.hasNameColumn(schedule)) {
            pen.words(head, column, axis.title(), Look.Role.HEAD);
            pen.words(head + 1, column, "", Look.Role.HEAD_UNIT);
            for (int row = 0; row < axis.size(); row++) {
                cells.name(pen, head + 2 + row, column, axis, row, Look.Role.WORDS);
            }
            column++;
        }
        for (Line line : schedule.lines()) {
            pen.words(head, column, cells.label(line), headRole(line));
            if (!plan.budget().isRepeated(line)) {
                pen.words(head + 1, column, cells.unit(line), Look.Role.HEAD_UNIT);
            }
            cells.write(pen, line);
            column++;
        }
    }

    private static Look.Role headRole(Line line) {
        return line.kind() == Kind.TEXT ? Look.Role.HEAD : Look.Role.HEAD_NUMBER;
    }

    private void periods(Box box) {
        Axis axis = box.schedule().axes().get(0);
        headAcross(box.table(), axis, axis.title(), "Unit");
        int row = box.table() + 1;
        for (Line line : box.schedule().lines()) {
            pen.words(row, 0, cells.label(line), Look.Role.WORDS);
            pen.words(row, 1, cells.unit(line), Look.Role.WORDS);
            cells.write(pen, line);
            row++;
        }
    }

    private void blocks(Box box) {
        int top = box.table();
        for (Line line : box.schedule().lines()) {
            block(top, line);
            top += SheetPlan.blockHeight(line);
        }
    }

    /** The rows of what is repeated for a case have no names: they are those of the line that is repeated. */
    private void block(int top, Line line) {
        Axis down = SheetPlan.down(line);
        String unit = cells.unit(line);
        boolean repeated = plan.budget().isRepeated(line);
        pen.words(top, 0, cells.label(line) + (unit.isEmpty() ? "" : ", " + unit), Look.Role.BLOCK);
        headAcross(top + 1, SheetPlan.across(line), down.title(), "");
        for (int row = 0; !repeated && row < down.size(); row++) {
            cells.name(pen, top + 2 + row, 0, down, row, Look.Role.WORDS);
        }
        cells.write(pen, line);
    }

    private void headAcross(int row, Axis axis, String first, String second) {
        pen.words(row, 0, first, Look.Role.HEAD);
        pen.words(row, 1, second, Look.Role.HEAD);
        for (int i = 0; i < axis.size(); i++) {
            cells.name(pen, row, ColumnWidths.PERIOD_FIRST + i, axis, i, Look.Role.HEAD_NUMBER);
        }
    }
}
