package org.benchmetre.workbook;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.benchmetre.budget.Axis;
import org.benchmetre.budget.Kind;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.Schedule;

/** The boxes of one sheet, one below the other, and how wide its columns are. */
final class SheetPlan {

    private static final int FIRST_ROW = 3;

    private final String name;
    private final WorkbookPlan plan;
    private final List<Box> boxes = new ArrayList<>();
    private final Map<Line, Box> boxOf = new HashMap<>();
    private final List<Double> widths = new ArrayList<>();
    private int next = FIRST_ROW;

    SheetPlan(String name, WorkbookPlan plan) {
        this.name = name;
        this.plan = plan;
    }

    String name() {
        return name;
    }

    List<Box> boxes() {
        return boxes;
    }

    /** The box whose schedule has a line. */
    Box box(Line line) {
        Box box = boxOf.get(line);
        if (box == null) {
            throw new IllegalArgumentException("Line " + line + " is not on sheet " + name + ".");
        }
        return box;
    }

    /** Widths of the columns in characters. */
    List<Double> widths() {
        return widths;
    }

    /** The last of the columns over which the source of a single value runs: one wide one where no table needs it, else several. */
    int lastSourceColumn(Schedule schedule) {
        int last = firstSourceColumn(schedule);
        if (widths.size() <= last + 1) {
            widen(last, ColumnWidths.LIST_SOURCE_ALONE);
        }
        for (double total = widths.get(last); total < ColumnWidths.SOURCE; total += widths.get(last)) {
            widen(++last, ColumnWidths.NUMBER);
        }
        return last;
    }

    /** The last of the columns that together are as wide as wanted, counted from the first. */
    int lastColumnWithin(double wanted) {
        double total = 0;
        for (int column = 0; column < widths.size(); column++) {
            total += widths.get(column);
            if (total >= wanted) {
                return column;
            }
        }
        return widths.size() - 1;
    }

    /** Sets the widths that depend on all schedules together. */
    void settleWidths() {
        boxes.stream()
                .map(Box::schedule)
                .filter(schedule -> Layout.of(schedule) == Layout.LIST)
                .forEach(this::lastSourceColumn);
    }

    /** First row under all tables. */
    int bottom() {
        return next;
    }

    void add(Schedule schedule) {
        int table = next + (schedule.note().isEmpty() ? 1 : 2);
        Box box = new Box(schedule, next, table, table + height(schedule));
        boxes.add(box);
        schedule.lines().forEach(line -> boxOf.put(line, box));
        next = box.end() + 1;
        widen(schedule);
    }

    private static int height(Schedule schedule) {
        int lines = schedule.lines().size();
        return switch (Layout.of(schedule)) {
            case LIST, PERIODS -> 1 + lines;
            case TABLE -> 2 + schedule.axes().get(0).size();
            case BLOCKS -> lines * blockHeight(schedule.lines().get(0)) - 1;
        };
    }

    /** Heading, header row, rows and a gap. */
    static int blockHeight(Line line) {
        return down(line).size() + 3;
    }

    static Axis down(Line line) {
        return Layout.down(line.axes());
    }

    static Axis across(Line line) {
        return Layout.across(line.axes());
    }

    /** Whether a table shows the names of its rows in a column of ours, as none of its lines does. */
    boolean hasNameColumn(Schedule schedule) {
        Line first = schedule.lines().get(0);
        return plan.budget()
                .rowName(schedule.axes().get(0))
                .map(names -> !schedule.lines().contains(names))
                .orElse(first.kind() != Kind.TEXT);
    }

    private void widen(Schedule schedule) {
        switch (Layout.of(schedule)) {
            case LIST -> widenList(schedule);
            case TABLE -> widenTable(schedule);
            case PERIODS -> widenAcross(schedule.axes().get(0));
            case BLOCKS -> widenAcross(across(schedule.lines().get(0)));
        }
    }

    private void widenList(Schedule schedule) {
        int last = firstSourceColumn(schedule);
        ColumnWidths.LIST_WIDTHS.forEach((column, width) -> {
            if (column <= last) {
                widen(column, width);
            }
        });
    }

    /** Where the sources of single values begin: a list without entries leaves out what only entries have. */
    int firstSourceColumn(Schedule schedule) {
        boolean hasEntries = schedule.lines().stream().anyMatch(plan::isTypedInWorkings);
        return hasEntries ? ColumnWidths.LIST_SOURCE : ColumnWidths.LIST_ENTRY;
    }

    private void widenAcross(Axis axis) {
        widen(0, ColumnWidths.LABEL);
        widen(1, ColumnWidths.UNIT);
        for (int i = 0; i < axis.size(); i++) {
            widen(ColumnWidths.PERIOD_FIRST + i, axis.isSpare(i) ? ColumnWidths.SPARE : ColumnWidths.NUMBER);
        }
    }

    private void widenTable(Schedule schedule) {
        int column = 0;
        if (hasNameColumn(schedule)) {
            widen(column++, ColumnWidths.LABEL);
        }
        for (Line line : schedule.lines()) {
            widen(column, column == 0 ? ColumnWidths.LABEL : ColumnWidths.width(line));
            column++;
        }
    }

    private void widen(int column, double width) {
        while (widths.size() <= column) {
            widths.add(0.0);
        }
        widths.set(column, Math.max(width, widths.get(column)));
    }
}
