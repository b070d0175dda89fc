package org.benchmetre.workbook;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;

/** Lists of words that drop-downs and formulas point at, one a column of a hidden sheet. */
final class WordLists {

    static final String NAME = "Lists";
    private static final int LIST_WIDTH = 20 * 256;

    private final Map<List<String>, Integer> columns = new LinkedHashMap<>();

    /** The range of a list, which is kept once. */
    String range(List<String> words) {
        int column = columns.computeIfAbsent(List.copyOf(words), fresh -> columns.size());
        return new Spot(NAME, 0, column).to(new Spot(NAME, words.size() - 1, column));
    }

    /** Writes the sheet, if there is a list. */
    void write(XSSFWorkbook workbook) {
        if (columns.isEmpty()) {
            return;
        }
        GridSheet sheet = (GridSheet) workbook.createSheet(NAME);
        columns.forEach((words, column) -> {
            sheet.setColumnWidth(column, LIST_WIDTH);
            for (int i = 0; i < words.size(); i++) {
                sheet.grid().text(i, column, words.get(i));
            }
        });
        sheet.enableLocking();
        workbook.setSheetHidden(workbook.getSheetIndex(NAME), true);
    }
}
