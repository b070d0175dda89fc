package org.benchmetre.workbook;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.benchmetre.budget.unit.Unit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ConversionTest {

    @ParameterizedTest
    @CsvSource({
        "ft, m",
        "in, mm",
        "gal, L",
        "psi, kPa",
        "lb, kg",
        "%, 1",
        "Btu, kWh",
        "ft2, m2",
        "1/ft, 1/m",
        "gal/h, L/h",
        "acre, ha",
        "degF, degC",
        "degC, degF",
        "K, degC",
        "degC, K",
        "degF, K",
        "mm, m",
        "mo, a",
        "hp, kW"
    })
    void the_formula_gives_what_the_engine_takes(String from, String to) throws IOException {
        Unit typedIn = Unit.parse(from);
        Unit target = Unit.parse(to);
        try (XSSFWorkbook workbook = new XSSFWorkbook()) {
            var row = workbook.createSheet("Test").createRow(0);
            Cell typed = row.createCell(0);
            Cell value = row.createCell(1);
            value.setCellFormula(Conversion.of("A1", typedIn, target));
            for (double number : new double[] {-40, 0, 0.1, 1, 20.5, 68, 98765.4321}) {
                typed.setCellValue(number);
                double found = workbook.getCreationHelper()
                        .createFormulaEvaluator()
                        .evaluate(value)
                        .getNumberValue();
                double wanted = typedIn.convertLevel(number, target);
                double size = Math.max(300, Math.abs(wanted));
                assertThat(found).as("%s %s in %s", number, from, to).isCloseTo(wanted, within(1e-12 * size));
            }
        }
    }

    @Test
    void the_formula_reads_as_people_would_write_it() {
        assertThat(Conversion.of("x_entry", Unit.parse("ft"), Unit.METRE)).isEqualTo("x_entry*0.3048");
        assertThat(Conversion.of("x_entry", Unit.parse("mm"), Unit.METRE)).isEqualTo("x_entry/1000");
        assertThat(Conversion.of("x_entry", Unit.parse("degF"), Unit.parse("degC")))
                .isEqualTo("(x_entry-32)/1.8");
        assertThat(Conversion.of("x_entry", Unit.parse("degC"), Unit.parse("K")))
                .isEqualTo("(x_entry+273.15)");
    }
}
