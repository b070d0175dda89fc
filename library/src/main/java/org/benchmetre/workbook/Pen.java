package org.benchmetre.workbook;

import java.util.HashMap;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Consumer;
import org.apache.poi.common.usermodel.HyperlinkType;
import org.apache.poi.ss.usermodel.IndexedColors;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.xssf.usermodel.XSSFConditionalFormattingRule;
import org.apache.poi.xssf.usermodel.XSSFHyperlink;
import org.apache.poi.xssf.usermodel.XSSFSheetConditionalFormatting;

/** Writes cells of one sheet, and makes rows tall enough for the texts that wrap in them. */
final class Pen {

    private static final double LINE_POINTS = 12;
    private static final double MOST_POINTS = 400;
    /** How tall a line of larger letters is. */
    private static final double LARGE_POINTS = 14.6;
    /** How tall a row of one line is. */
    private static final double ROW_POINTS = 12.3;
    /** The same on pages of entries, which are long. */
    static final double LOW_ROW_POINTS = 11.7;
    /** Letters that the edges of a cell take. */
    private static final double MARGIN = 2.0;
    /** Parts of a character in which widths are kept. */
    private static final double WIDTH_PARTS = 256;

    private final GridSheet sheet;
    private final Grid grid;
    private final Styles styles;
    private final double rowPoints;
    private final Map<Integer, Double> widths = new HashMap<>();
    private final Map<Integer, Integer> linesOfRow = new TreeMap<>();
    private boolean isSpread;
    private final Map<Integer, Double> points = new TreeMap<>();

    Pen(GridSheet sheet, Styles styles) {
        this(sheet, styles, ROW_POINTS);
    }

    /** A pen for rows of so many points. */
    Pen(GridSheet sheet, Styles styles, double rowPoints) {
        this.sheet = sheet;
        this.grid = sheet.grid();
        this.styles = styles;
        this.rowPoints = rowPoints;
        sheet.setDefaultRowHeightInPoints((float) rowPoints);
    }

    /** The name of its sheet. */
    String sheet() {
        return sheet.getSheetName();
    }

    void width(int column, double characters) {
        sheet.setColumnWidth(column, (int) (characters * WIDTH_PARTS));
        widths.remove(column);
    }

    /** A text; where there is none, a cell only where its fill is seen. */
    void words(int row, int column, String text, Look.Role role) {
        if (!text.isEmpty() || role.isFilled()) {
            cell(row, column, Look.text(role, text));
        }
        if (!text.isEmpty()) {
            grid.text(row, column, text);
            reserve(row, text, width(column), role);
        }
    }

    /** A text over several columns. */
    void across(int row, int first, int last, String text, Look.Role role) {
        overColumns(() -> words(row, first, text, role));
        reserve(row, text, width(first, last), role);
        if (last > first) {
            sheet.addMergedRegionUnsafe(new CellRangeAddress(row, row, first, last));
        }
    }

    /** Spreads a cell that is written over further columns. */
    void spread(int row, int first, int last, String text, Look.Role role) {
        reserve(row, text, width(first, last), role);
        if (last > first) {
            sheet.addMergedRegionUnsafe(new CellRangeAddress(row, row, first, last));
        }
    }

    void number(int row, int column, double number, Look look) {
        cell(row, column, look);
        grid.number(row, column, number);
    }

    void blank(int row, int column, Look look) {
        cell(row, column, look);
    }

    /** A formula as raw text, which the tests parse, with the number it has. */
    void formula(int row, int column, String formula, double number, Look look) {
        cell(row, column, look);
        grid.formula(row, column, formula, number);
    }

    /** A formula with the text it has. */
    void formula(int row, int column, String formula, String text, Look look) {
        cell(row, column, look);
        grid.formula(row, column, formula, text);
        reserve(row, text, width(column), look.role());
    }

    /** Makes a cell lead to another one. */
    void link(int row, int column, Spot target) {
        XSSFHyperlink link = sheet.getWorkbook().getCreationHelper().createHyperlink(HyperlinkType.DOCUMENT);
        link.setAddress(target.quotedRelative());
        link.setFirstRow(row);
        link.setLastRow(row);
        link.setFirstColumn(column);
        link.setLastColumn(column);
        sheet.addHyperlink(link);
    }

    /** Puts rows into a group that opens and closes at the margin. */
    void group(int first, int last, boolean folded) {
        for (int row = first; row <= last; row++) {
            grid.group(row, folded);
        }
    }

    /** Folds a column away; a reader opens it above. */
    void foldColumn(int column) {
        sheet.groupColumn(column, column);
        sheet.setColumnHidden(column, true);
    }

    /** Marks cells of a rectangle while a condition, written for its first cell, holds. */
    void mark(CellRangeAddress cells, String condition, Consumer<XSSFConditionalFormattingRule> dress) {
        XSSFSheetConditionalFormatting rules = sheet.getSheetConditionalFormatting();
        XSSFConditionalFormattingRule rule = rules.createConditionalFormattingRule(condition);
        dress.accept(rule);
        rules.addConditionalFormatting(new CellRangeAddress[] {cells}, rule);
    }

    /** Hides what a cell shows while a condition holds. */
    void hideWhen(int row, int column, String condition) {
        mark(
                new CellRangeAddress(row, row, column, column),
                condition,
                rule -> rule.createFontFormatting().setFontColorIndex(IndexedColors.WHITE.getIndex()));
    }

    private void cell(int row, int column, Look look) {
        grid.style(row, column, styles.of(look).getIndex());
    }

    private double width(int column) {
        return widths.computeIfAbsent(column, wanted -> sheet.getColumnWidth(wanted) / WIDTH_PARTS);
    }

    private double width(int first, int last) {
        double total = 0;
        for (int column = first; column <= last; column++) {
            total += width(column);
        }
        return total;
    }

    /** Writes a cell that runs over several columns and therefore needs no room in its first one. */
    void overColumns(Runnable cell) {
        isSpread = true;
        cell.run();
        isSpread = false;
    }

    private void reserve(int row, String text, double width, Look.Role role) {
        if (isSpread) {
            return;
        }
        int lines = Letters.lines(text, Math.max(1, (width - MARGIN) / role.letters()));
        if (role == Look.Role.LEAD || role == Look.Role.HEADING) {
            points.merge(row, lines * LARGE_POINTS, Math::max);
        } else if (lines > 1) {
            linesOfRow.merge(row, lines, Math::max);
        }
    }

    /** Makes a row at least so tall. */
    void atLeast(int row, double tall) {
        int lines = linesOfRow.getOrDefault(row, 1);
        height(row, Math.max(tall, lines * LINE_POINTS + 1));
    }

    void height(int row, double tall) {
        grid.height(row, tall);
        linesOfRow.remove(row);
        points.remove(row);
    }

    /** How tall a row is. */
    double pointsOf(int row) {
        double set = grid.height(row);
        return Double.isNaN(set) ? rowPoints : set;
    }

    /** Sets the heights of the rows that need more than one line, and makes sure that no cell was merged twice. */
    void finish() {
        linesOfRow.forEach((row, lines) -> points.merge(row, lines * LINE_POINTS + 1, Math::max));
        points.forEach((row, tall) -> grid.height(row, Math.min(MOST_POINTS, tall)));
        sheet.validateMergedRegions();
    }
}
