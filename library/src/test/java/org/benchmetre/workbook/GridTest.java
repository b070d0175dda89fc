package org.benchmetre.workbook;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.xssf.usermodel.XSSFCell;
import org.apache.poi.xssf.usermodel.XSSFCellStyle;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What is written as plain markup is read back, unchanged, by the spreadsheet library's own reader. */
class GridTest {

    private final XSSFWorkbook workbook = new XSSFWorkbook(new GridParts());
    private final GridSheet sheet = (GridSheet) workbook.createSheet("Cells");

    private XSSFSheet read() throws IOException {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (ZipStamp zip = new ZipStamp(bytes)) {
            workbook.write(zip);
        }
        return new XSSFWorkbook(new ByteArrayInputStream(bytes.toByteArray())).getSheetAt(0);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "plain",
                " spaces at both ends ",
                "a < b & c > \"d\" 'e'",
                "_x003D_ is not an equals sign",
                "_x005F_",
                "_x00e9_",
                "_x12_ and _xGGGG_ are no escapes",
                "_x",
                "line\nfeed\ttab",
                "carriage\r\nreturn",
                "control \u0001 and \u0085",
                "half of a pair: \uD83C.",
                "other half: \uDF53.",
                "a whole pair: \uD83C\uDF53",
                "\uFFFE\uFFFF",
                "m² → °C"
            })
    void any_text_comes_back_as_it_was(String text) throws IOException {
        sheet.grid().text(2, 1, text);
        sheet.grid().formula(3, 1, "B3", text);

        XSSFSheet read = read();

        assertThat(read.getRow(2).getCell(1).getStringCellValue()).isEqualTo(text);
        assertThat(read.getRow(3).getCell(1).getStringCellValue()).isEqualTo(text);
    }

    @ParameterizedTest
    @ValueSource(
            doubles = {
                0,
                -0.0,
                1,
                -1,
                0.1,
                1.0 / 3,
                1e-300,
                1e300,
                Double.MIN_VALUE,
                Double.MAX_VALUE,
                4.800000000000001
            })
    void any_number_comes_back_as_the_same_double(double number) throws IOException {
        sheet.grid().number(0, 0, number);
        sheet.grid().formula(0, 1, "A1", number);

        XSSFSheet read = read();

        assertThat(read.getRow(0).getCell(0).getNumericCellValue()).isEqualTo(number + 0.0);
        assertThat(read.getRow(0).getCell(1).getNumericCellValue()).isEqualTo(number + 0.0);
    }

    @Test
    void a_formula_is_kept_to_the_letter() throws IOException {
        String formula = "IF(AND(A1<2,A1<>1),\"a & b > _x003D_\",\"\")";
        sheet.grid().formula(0, 1, formula, "");

        XSSFCell read = read().getRow(0).getCell(1);

        assertThat(read.getCellType()).isEqualTo(CellType.FORMULA);
        assertThat(read.getCellFormula()).isEqualTo(formula);
        assertThat(read.getCachedFormulaResultType()).isEqualTo(CellType.STRING);
    }

    @Test
    void a_cell_may_get_its_style_before_or_after_its_value_and_a_row_its_height() throws IOException {
        XSSFCellStyle style = workbook.createCellStyle();
        style.setLocked(false);
        sheet.grid().style(4, 0, style.getIndex());
        sheet.grid().number(4, 0, 7);
        sheet.grid().number(4, 1, 8);
        sheet.grid().style(4, 1, style.getIndex());
        sheet.grid().style(4, 3, style.getIndex());
        sheet.grid().height(4, 41.6);

        XSSFSheet read = read();

        for (int column : new int[] {0, 1, 3}) {
            assertThat(read.getRow(4).getCell(column).getCellStyle().getLocked())
                    .isFalse();
        }
        assertThat(read.getRow(4).getCell(1).getNumericCellValue()).isEqualTo(8);
        assertThat(read.getRow(4).getCell(2)).isNull();
        assertThat(read.getRow(4).getCell(3).getCellType()).isEqualTo(CellType.BLANK);
        assertThat(read.getRow(4).getHeightInPoints()).isEqualTo(41.6f);
        assertThat(read.getDimension().formatAsString()).isEqualTo("A5:D5");
    }

    @Test
    void equal_texts_are_kept_once_and_counted_each_time() throws IOException {
        sheet.grid().text(0, 0, "twice");
        sheet.grid().text(0, 1, "once");
        sheet.grid().text(0, 2, "twice");

        XSSFWorkbook read = read().getWorkbook();

        assertThat(read.getSharedStringSource().getUniqueCount()).isEqualTo(2);
        assertThat(read.getSharedStringSource().getCount()).isEqualTo(3);
    }

    @Test
    void an_empty_sheet_can_be_read() throws IOException {
        assertThat(read().getPhysicalNumberOfRows()).isZero();
    }
}
