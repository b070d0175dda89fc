package org.benchmetre.workbook;

import java.util.Map;
import java.util.TreeMap;
import org.apache.poi.ss.usermodel.IndexedColors;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.xssf.usermodel.XSSFCell;
import org.apache.poi.xssf.usermodel.XSSFConditionalFormattingRule;
import org.apache.poi.xssf.usermodel.XSSFRow;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFSheetConditionalFormatting;
import org.benchmetre.budget.entry.Numbers;
import org.openxmlformats.schemas.spreadsheetml.x2006.main.CTCell;
import org.openxmlformats.schemas.spreadsheetml.x2006.main.STCellType;

/** Writes cells of one sheet, and makes rows tall enough for the texts that wrap in them. */
final class Pen {

    private static final double LINE_POINTS = 13.2;
    private static final double LETTERS_PER_WIDTH = 1.25;

    private final XSSFSheet sheet;
    private final Styles styles;
    private final Map<Integer, Integer> linesOfRow = new TreeMap<>();

    Pen(XSSFSheet sheet, Styles styles) {
        this.sheet = sheet;
        this.styles = styles;
    }

    XSSFSheet sheet() {
        return sheet;
    }

    void width(int column, double characters) {
        sheet.setColumnWidth(column, (int) (characters * 256));
    }

    void words(int row, int column, String text, Look.Role role) {
        XSSFCell cell = cell(row, column, Look.text(role, text));
        if (!text.isEmpty()) {
            cell.setCellValue(text);
            reserve(row, text, width(column));
        }
    }

    /** A text over several columns. */
    void across(int row, int first, int last, String text, Look.Role role) {
        double total = 0;
        for (int column = first; column <= last; column++) {
            cell(row, column, Look.text(role, text));
            total += width(column);
        }
        words(row, first, text, role);
        linesOfRow.remove(row);
        reserve(row, text, total);
        if (last > first) {
            sheet.addMergedRegion(new CellRangeAddress(row, row, first, last));
        }
    }

    /** Spreads a cell that is written over further columns. */
    void spread(int row, int first, int last, String text, Look.Role role) {
        double total = 0;
        for (int column = first; column <= last; column++) {
            cell(row, column, Look.text(role, text));
            total += width(column);
        }
        linesOfRow.remove(row);
        reserve(row, text, total);
        sheet.addMergedRegion(new CellRangeAddress(row, row, first, last));
    }

    void number(int row, int column, double number, Look look) {
        cell(row, column, look).setCellValue(number + 0.0);
    }

    void blank(int row, int column, Look look) {
        cell(row, column, look);
    }

    /** A formula as raw text, which the tests parse, with the number it has. */
    void formula(int row, int column, String formula, double number, Look look) {
        cache(cell(row, column, look), formula, STCellType.N, Numbers.plain(number));
    }

    /** A formula with the text it has. */
    void formula(int row, int column, String formula, String text, Look look) {
        cache(cell(row, column, look), formula, STCellType.STR, text);
        reserve(row, text, width(column));
    }

    /** Hides what a cell shows while a condition holds. */
    void hideWhen(int row, int column, String condition) {
        XSSFSheetConditionalFormatting rules = sheet.getSheetConditionalFormatting();
        XSSFConditionalFormattingRule rule = rules.createConditionalFormattingRule(condition);
        rule.createFontFormatting().setFontColorIndex(IndexedColors.WHITE.getIndex());
        CellRangeAddress[] cells = {new CellRangeAddress(row, row, column, column)};
        rules.addConditionalFormatting(cells, rule);
    }

    private static void cache(XSSFCell cell, String formula, STCellType.Enum type, String value) {
        CTCell raw = cell.getCTCell();
        raw.addNewF().setStringValue(formula);
        raw.setT(type);
        raw.setV(value);
    }

    private XSSFCell cell(int row, int column, Look look) {
        XSSFRow line = sheet.getRow(row) == null ? sheet.createRow(row) : sheet.getRow(row);
        XSSFCell cell = line.getCell(column, Row.MissingCellPolicy.CREATE_NULL_AS_BLANK);
        cell.setCellStyle(styles.of(look));
        return cell;
    }

    private double width(int column) {
        return sheet.getColumnWidth(column) / 256.0;
    }

    private void reserve(int row, String text, double width) {
        linesOfRow.merge(row, lines(text, (int) Math.max(1, width * LETTERS_PER_WIDTH - 2)), Math::max);
    }

    /** How many lines a text takes when words are kept whole. */
    static int lines(String text, int letters) {
        int lines = 1;
        int used = 0;
        for (String word : text.split("\\s+")) {
            int needed = used == 0 ? word.length() : used + 1 + word.length();
            if (used > 0 && needed > letters) {
                lines++;
                needed = word.length();
            }
            lines += Math.max(0, (needed - 1) / letters);
            used = needed > letters ? needed % letters : needed;
        }
        return lines;
    }

    void height(int row, double points) {
        sheet.getRow(row).setHeightInPoints((float) points);
        linesOfRow.remove(row);
    }

    /** Sets the heights of the rows that need more than one line. */
    void finish() {
        linesOfRow.forEach((row, lines) -> {
            if (lines > 1) {
                sheet.getRow(row).setHeightInPoints((float) Math.min(400, lines * LINE_POINTS + 2));
            }
        });
    }
}
