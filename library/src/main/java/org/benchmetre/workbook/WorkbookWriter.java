package org.benchmetre.workbook;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.benchmetre.budget.run.Figures;
import org.benchmetre.files.SafeFile;

/**
 * Writes any budget as a live workbook. Every single value has a defined name equal to its line's identifier; every derived figure
 * is a formula with the engine's value cached in it. The same figures give the same bytes.
 */
public final class WorkbookWriter {

    private final Setup setup;

    /** A writer of workings alone. */
    public WorkbookWriter() {
        this(Setup.WORKINGS_ALONE);
    }

    /**
     * A writer of pages, their workings behind them.
     *
     * @param setup the pages, and how they are printed
     */
    public WorkbookWriter(Setup setup) {
        this.setup = setup;
    }

    /**
     * Writes a workbook. It is written beside the target and moved into place; when it fails nothing is left behind.
     *
     * @param figures a computed budget
     * @param target the file to write
     * @param overwrite whether an existing file is replaced
     * @throws IOException when the target exists and is not to be replaced, is no plain file, or cannot be written; see {@link SafeFile#write}
     * @throws IllegalStateException when a figure is not a finite number; the message says which and why
     * @throws IllegalArgumentException when a block does not fit its page, or an entry has two homes
     */
    public void write(Figures figures, Path target, boolean overwrite) throws IOException {
        SafeFile.check(target, overwrite);
        SafeFile.write(bytes(figures), target, overwrite);
    }

    /**
     * The workbook as it would be written.
     *
     * @param figures a computed budget
     * @return the bytes of an Office Open XML workbook
     * @throws IOException when the spreadsheet library fails to write
     * @throws IllegalStateException when a figure is not a finite number; the message says which and why
     */
    public byte[] bytes(Figures figures) throws IOException {
        List<String> troubles = figures.troubles();
        if (!troubles.isEmpty()) {
            throw new IllegalStateException(String.join("\n", troubles));
        }
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        XSSFWorkbook workbook = new XSSFWorkbook(new GridParts());
        try (ZipStamp zip = new ZipStamp(bytes)) {
            new Drawing(figures, setup, workbook).draw();
            workbook.write(zip);
        } finally {
            workbook.getPackage().revert(); // close() would pack every part once more, for nobody
        }
        return bytes.toByteArray();
    }
}
