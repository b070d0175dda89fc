package org.benchmetre.workbook;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.xssf.usermodel.XSSFChart;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.apache.xmlbeans.XmlError;
import org.apache.xmlbeans.XmlObject;
import org.apache.xmlbeans.XmlOptions;
import org.benchmetre.budget.Budget;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.run.Figures;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** The parts of a written workbook against the schemas of ECMA-376. */
@Tag("schema")
class WorkbookSchemaTest {

    @Test
    void every_part_follows_its_schema() throws IOException {
        Budget budget = SampleBudget.make();
        Line renewal = budget.line("part_renewal");
        List<BarChart> charts = List.of(
                new BarChart("Years", "Bought again", renewal, renewal.axes().get(1), true));
        byte[] bytes = new WorkbookWriter(charts).bytes(Figures.of(budget));
        try (XSSFWorkbook workbook = new XSSFWorkbook(new ByteArrayInputStream(bytes))) {
            List<XmlError> errors = new ArrayList<>();
            validate(workbook.getCTWorkbook(), errors);
            validate(workbook.getStylesSource().getCTStylesheet(), errors);
            for (Sheet sheet : workbook) {
                validate(((XSSFSheet) sheet).getCTWorksheet(), errors);
            }
            for (XSSFChart chart :
                    workbook.getSheet("Years").getDrawingPatriarch().getCharts()) {
                validate(chart.getCTChartSpace(), errors);
            }
            assertThat(errors).isEmpty();
        }
    }

    private static void validate(XmlObject part, List<XmlError> errors) {
        part.validate(new XmlOptions().setErrorListener(errors));
    }
}
