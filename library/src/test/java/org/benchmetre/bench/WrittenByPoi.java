package org.benchmetre.bench;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import org.apache.poi.ss.usermodel.BorderStyle;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.xssf.usermodel.XSSFCellStyle;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;

/**
 * The yardstick for writing: as many formulas, numbers, texts and empty cells as a workbook has, with as many styles, written by the
 * spreadsheet library's own calls. It has no names, rules, merged cells or charts, and its formulas are shorter than most of ours.
 *
 * @param formulas cells with a formula and the number it has
 * @param numbers cells with a number
 * @param texts cells with a text, each different from the others
 * @param blanks cells with a style alone
 * @param styles different styles, taken in turn
 */
public record WrittenByPoi(int formulas, int numbers, int texts, int blanks, int styles) {

    private static final String FORMULA = "IF($A$1>0,B2*C3+D4,0)";
    private static final int COLUMNS = 16;

    /**
     * Counts what a workbook has.
     *
     * @param workbook bytes of an Office Open XML workbook
     * @return its counts
     * @throws IOException when it cannot be read
     */
    public static WrittenByPoi asManyAs(byte[] workbook) throws IOException {
        int[] counts = new int[4];
        try (XSSFWorkbook read = new XSSFWorkbook(new ByteArrayInputStream(workbook))) {
            for (Sheet sheet : read) {
                for (Row row : sheet) {
                    for (Cell cell : row) {
                        counts[kind(cell)]++;
                    }
                }
            }
            int styles = read.getNumCellStyles() - 1; // every workbook has one that nobody asked for
            return new WrittenByPoi(counts[0], counts[1], counts[2], counts[3], styles);
        }
    }

    private static int kind(Cell cell) {
        return switch (cell.getCellType()) {
            case FORMULA -> 0;
            case NUMERIC -> 1;
            case STRING -> 2;
            default -> 3;
        };
    }

    /**
     * Writes as many cells, in a process of their own.
     *
     * @param arguments formulas, numbers, texts, blanks, styles
     * @throws IOException when the library fails
     */
    public static void main(String[] arguments) throws IOException {
        int[] counts = new int[arguments.length];
        for (int i = 0; i < counts.length; i++) {
            counts[i] = Integer.parseInt(arguments[i]);
        }
        byte[] written = new WrittenByPoi(counts[0], counts[1], counts[2], counts[3], counts[4]).write();
        System.out.println(written.length + " bytes");
    }

    int cells() {
        return formulas + numbers + texts + blanks;
    }

    byte[] write() throws IOException {
        try (XSSFWorkbook workbook = new XSSFWorkbook();
                ByteArrayOutputStream out = new ByteArrayOutputStream()) {
            XSSFCellStyle[] made = new XSSFCellStyle[styles];
            for (int i = 0; i < styles; i++) {
                made[i] = workbook.createCellStyle();
                made[i].setBorderBottom(BorderStyle.HAIR);
                made[i].setIndention((short) (i % 15));
                made[i].setDataFormat((short) (i % 40));
            }
            Sheet sheet = workbook.createSheet("Cells");
            Row row = null;
            for (int i = 0; i < cells(); i++) {
                row = i % COLUMNS == 0 ? sheet.createRow(i / COLUMNS) : row;
                Cell cell = row.createCell(i % COLUMNS);
                cell.setCellStyle(made[i % styles]);
                fill(cell, i);
            }
            workbook.write(out);
            return out.toByteArray();
        }
    }

    private void fill(Cell cell, int order) {
        if (order < formulas) {
            cell.setCellFormula(FORMULA);
            cell.setCellValue(order / 7.0);
        } else if (order < formulas + numbers) {
            cell.setCellValue(order / 7.0);
        } else if (order < formulas + numbers + texts) {
            cell.setCellValue("Text of a cell, number " + order);
        }
    }
}
