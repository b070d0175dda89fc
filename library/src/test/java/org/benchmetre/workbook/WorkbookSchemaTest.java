package org.benchmetre.workbook;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.xssf.usermodel.XSSFChart;
import org.apache.poi.xssf.usermodel.XSSFDrawing;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.apache.xmlbeans.XmlError;
import org.apache.xmlbeans.XmlObject;
import org.apache.xmlbeans.XmlOptions;
import org.benchmetre.Benchmetre;
import org.benchmetre.FarmWorkbook;
import org.benchmetre.Plan;
import org.benchmetre.ScenarioException;
import org.benchmetre.budget.Budget;
import org.benchmetre.budget.run.Figures;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The parts of a written workbook against the schemas of ECMA-376. */
@Tag("schema")
class WorkbookSchemaTest {

    @Test
    void every_part_follows_its_schema() throws IOException {
        Budget budget = SampleBudget.make();
        assertThat(errors(new WorkbookWriter(SamplePages.setup(budget)).bytes(Figures.of(budget))))
                .isEmpty();
    }

    @ParameterizedTest
    @ValueSource(strings = {"trough-house", "container-house"})
    void every_part_of_a_sample_follows_its_schema(String sample) throws IOException, ScenarioException {
        Plan plan = Benchmetre.read(Path.of("..", "samples", sample));
        byte[] bytes = new WorkbookWriter(FarmWorkbook.setup(plan.budget())).bytes(plan.figures());
        assertThat(errors(bytes)).isEmpty();
    }

    private static List<XmlError> errors(byte[] bytes) throws IOException {
        List<XmlError> errors = new ArrayList<>();
        try (XSSFWorkbook workbook = new XSSFWorkbook(new ByteArrayInputStream(bytes))) {
            validate(workbook.getCTWorkbook(), errors);
            validate(workbook.getStylesSource().getCTStylesheet(), errors);
            int charts = 0;
            for (Sheet sheet : workbook) {
                validate(((XSSFSheet) sheet).getCTWorksheet(), errors);
                XSSFDrawing drawing = ((XSSFSheet) sheet).getDrawingPatriarch();
                for (XSSFChart chart : drawing == null ? List.<XSSFChart>of() : drawing.getCharts()) {
                    validate(chart.getCTChartSpace(), errors);
                    validate(drawing.getCTDrawing(), errors);
                    charts++;
                }
            }
            assertThat(charts).isPositive();
        }
        return errors;
    }

    private static void validate(XmlObject part, List<XmlError> errors) {
        part.validate(new XmlOptions().setErrorListener(errors));
    }
}
