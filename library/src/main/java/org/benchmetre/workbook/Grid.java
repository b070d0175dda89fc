package org.benchmetre.workbook;

import java.util.ArrayList;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;
import org.apache.poi.ss.util.CellReference;
import org.benchmetre.budget.entry.Numbers;

/** The cells of one sheet, held as plain values until they are written as its {@code sheetData}. Rows and columns count from 0. */
final class Grid {

    private static final String NUMBER = "n";
    private static final String SHARED_TEXT = "s";
    private static final String FORMULA_TEXT = "str";

    private final SharedTexts texts;
    private final SortedMap<Integer, GridRow> rows = new TreeMap<>();
    private final List<String> letters = new ArrayList<>();

    /** What one row holds. */
    private static final class GridRow {
        private final List<GridCell> cells = new ArrayList<>();
        private double points = Double.NaN;
        private boolean grouped;
        private boolean folded;
    }

    /** What one cell holds; without a type it is blank. */
    private static final class GridCell {
        private int style;
        private String type;
        private String formula;
        private String value;
    }

    Grid(SharedTexts texts) {
        this.texts = texts;
    }

    void style(int row, int column, int style) {
        cell(row, column).style = style;
    }

    void number(int row, int column, double number) {
        set(row, column, NUMBER, null, Numbers.plain(number));
    }

    void text(int row, int column, String text) {
        set(row, column, SHARED_TEXT, null, Integer.toString(texts.numberOf(text)));
    }

    /** A formula and the number it has. */
    void formula(int row, int column, String formula, double number) {
        set(row, column, NUMBER, formula, Numbers.plain(number));
    }

    /** A formula and the text it has. */
    void formula(int row, int column, String formula, String text) {
        set(row, column, FORMULA_TEXT, formula, text);
    }

    void height(int row, double points) {
        row(row).points = points;
    }

    /** Puts a row into a group that opens and closes at the margin. */
    void group(int row, boolean folded) {
        row(row).grouped = true;
        row(row).folded = folded;
    }

    /** The height of a row; none for one that is as rows are, 0 for one that is folded away. */
    double height(int row) {
        GridRow known = rows.get(row);
        if (known == null) {
            return Double.NaN;
        }
        return known.folded ? 0 : known.points;
    }

    private void set(int row, int column, String type, String formula, String value) {
        GridCell cell = cell(row, column);
        cell.type = type;
        cell.formula = formula;
        cell.value = value;
    }

    private GridRow row(int row) {
        return rows.computeIfAbsent(row, number -> new GridRow());
    }

    private GridCell cell(int row, int column) {
        List<GridCell> cells = row(row).cells;
        while (cells.size() <= column) {
            cells.add(null);
        }
        if (cells.get(column) == null) {
            cells.set(column, new GridCell());
        }
        return cells.get(column);
    }

    /** The rectangle of all cells; of an empty sheet its first cell. */
    String area() {
        int first = Integer.MAX_VALUE;
        int last = 0;
        for (GridRow row : rows.values()) {
            for (int column = 0; column < row.cells.size(); column++) {
                if (row.cells.get(column) != null) {
                    first = Math.min(first, column);
                    last = Math.max(last, column);
                }
            }
        }
        return first > last
                ? "A1"
                : letters(first) + (rows.firstKey() + 1) + ":" + letters(last) + (rows.lastKey() + 1);
    }

    /** Writes the markup of all rows. */
    void write(StringBuilder out) {
        out.append("<sheetData>");
        rows.forEach((number, row) -> {
            out.append("<row r=\"").append(number + 1);
            if (!Double.isNaN(row.points)) {
                out.append("\" ht=\"").append((float) row.points).append("\" customHeight=\"1");
            }
            if (row.grouped) {
                out.append("\" outlineLevel=\"1").append(row.folded ? "\" hidden=\"1" : "");
            }
            out.append("\">");
            for (int column = 0; column < row.cells.size(); column++) {
                if (row.cells.get(column) != null) {
                    write(out, number, column, row.cells.get(column));
                }
            }
            out.append("</row>");
        });
        out.append("</sheetData>");
    }

    private void write(StringBuilder out, int row, int column, GridCell cell) {
        out.append("<c r=\"").append(letters(column)).append(row + 1);
        out.append("\" s=\"").append(cell.style);
        if (cell.type == null) {
            out.append("\"/>");
            return;
        }
        out.append("\" t=\"").append(cell.type).append("\">");
        if (cell.formula != null) {
            out.append("<f>");
            Markup.formula(out, cell.formula);
            out.append("</f>");
        }
        out.append("<v>");
        Markup.text(out, cell.value);
        out.append("</v></c>");
    }

    private String letters(int column) {
        while (letters.size() <= column) {
            letters.add(CellReference.convertNumToColString(letters.size()));
        }
        return letters.get(column);
    }
}
