package org.benchmetre.workbook;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import org.apache.poi.xssf.usermodel.XSSFSheet;

/** A sheet whose cells are a {@link Grid}; all else of it (columns, merged cells, rules, charts) is the spreadsheet library's. */
final class GridSheet extends XSSFSheet {

    private static final String NO_CELLS = "<sheetData/>";

    private final Grid grid;

    GridSheet(SharedTexts texts) {
        this.grid = new Grid(texts);
    }

    Grid grid() {
        return grid;
    }

    /** Writes what the library has, with the cells in their place. */
    @Override
    protected void write(OutputStream out) throws IOException {
        getCTWorksheet().getDimension().setRef(grid.area());
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        super.write(bytes);
        String frame = bytes.toString(StandardCharsets.UTF_8);
        int at = frame.indexOf(NO_CELLS);
        if (at < 0) {
            throw new IllegalStateException("Sheet " + getSheetName() + " has cells that are not in its grid.");
        }
        StringBuilder markup = new StringBuilder(frame.substring(0, at));
        grid.write(markup);
        markup.append(frame, at + NO_CELLS.length(), frame.length());
        out.write(markup.toString().getBytes(StandardCharsets.UTF_8));
    }
}
