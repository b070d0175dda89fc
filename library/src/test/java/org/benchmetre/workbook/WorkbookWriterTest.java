package org.benchmetre.workbook;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.TimeZone;
import java.util.function.Consumer;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.apache.poi.ss.formula.FormulaParser;
import org.apache.poi.ss.formula.FormulaType;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.DataValidationConstraint;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.ss.util.CellReference;
import org.apache.poi.xssf.usermodel.XSSFDataValidation;
import org.apache.poi.xssf.usermodel.XSSFEvaluationWorkbook;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.benchmetre.budget.Budget;
import org.benchmetre.budget.BudgetBuilder;
import org.benchmetre.budget.Formulas;
import org.benchmetre.budget.Kind;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.entry.Given;
import org.benchmetre.budget.run.Figures;
import org.benchmetre.budget.unit.Unit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class WorkbookWriterTest {

    private final Budget budget = SampleBudget.make();
    private final Figures figures = Figures.of(budget);
    private final Setup setup = SamplePages.setup(budget);
    private final WorkbookPlan plan = Written.of(budget, setup).plan();

    private XSSFWorkbook written() throws IOException {
        return open(new WorkbookWriter(setup).bytes(figures));
    }

    private static XSSFWorkbook open(byte[] bytes) throws IOException {
        return new XSSFWorkbook(new ByteArrayInputStream(bytes));
    }

    private static Cell cell(XSSFWorkbook workbook, Spot spot) {
        return workbook.getSheet(spot.sheet()).getRow(spot.row()).getCell(spot.column());
    }

    @Test
    void pages_come_first_and_workings_follow_in_order_of_first_use() throws IOException {
        try (XSSFWorkbook workbook = written()) {
            List<String> names = new ArrayList<>();
            workbook.sheetIterator().forEachRemaining(sheet -> names.add(sheet.getSheetName()));
            assertThat(names)
                    .containsExactly("Shelf", "Values", "Things", "Entries", "Parts", "Years", "Summary", "Lists");
            assertThat(workbook.isSheetHidden(7)).isTrue();
            assertThat(workbook.isSheetHidden(6)).isFalse();
        }
    }

    @Test
    void every_single_value_has_its_name() throws IOException {
        try (XSSFWorkbook workbook = written()) {
            for (Line line : budget.lines()) {
                if (line.axes().isEmpty()) {
                    assertThat(workbook.getName(line.id()).getRefersToFormula())
                            .as(line.id())
                            .isEqualTo(plan.spot(line, 0).quoted());
                }
            }
        }
    }

    @Test
    void an_entry_in_another_unit_is_typed_beside_its_value() throws IOException {
        try (XSSFWorkbook workbook = written()) {
            CellReference typed =
                    new CellReference(workbook.getName("shelf_length_entry").getRefersToFormula());
            Cell cell = workbook.getSheet("Shelf").getRow(typed.getRow()).getCell(typed.getCol());
            assertThat(cell.getNumericCellValue()).isEqualTo(20);
            assertThat(cell.getCellStyle().getLocked()).isFalse();
            Cell value = cell(workbook, plan.spot(budget.line("shelf_length"), 0));
            assertThat(value.getCellFormula()).isEqualTo("shelf_length_entry*0.3048");
            assertThat(value.getNumericCellValue()).isEqualTo(6.096);
            assertThat(value.getCellStyle().getLocked()).isTrue();
            assertThat(cell(workbook, plan.spot(budget.line("glue_temperature"), 0))
                            .getCellFormula())
                    .isEqualTo("(glue_temperature_entry-32)/1.8");
            assertThat(workbook.getName("hourly_wage_entry")).isNull();
        }
    }

    @Test
    void every_formula_is_understood_and_caches_the_engines_value() throws IOException {
        try (XSSFWorkbook workbook = written()) {
            XSSFEvaluationWorkbook known = XSSFEvaluationWorkbook.create(workbook);
            forEachCell(workbook, cell -> {
                if (cell.getCellType() == CellType.FORMULA) {
                    int sheet = workbook.getSheetIndex(cell.getSheet());
                    assertThat(FormulaParser.parse(cell.getCellFormula(), known, FormulaType.CELL, sheet))
                            .isNotEmpty();
                }
            });
            assertThat(Agreement.of(workbook, plan).differences(Agreement.cached(workbook), figures))
                    .isEmpty();
        }
    }

    @Test
    void entries_are_open_and_all_else_is_locked() throws IOException {
        try (XSSFWorkbook workbook = written()) {
            List<Cell> open = new ArrayList<>();
            forEachCell(workbook, cell -> {
                if (!cell.getCellStyle().getLocked()) {
                    open.add(cell);
                }
            });
            assertThat(open).noneMatch(cell -> cell.getCellType() == CellType.FORMULA);
            int entryCells = budget.lines().stream()
                    .filter(line -> budget.entry(line).isPresent())
                    .mapToInt(Line::size)
                    .sum();
            assertThat(open).hasSize(entryCells);
        }
    }

    @Test
    void sheets_are_protected_without_a_password() throws IOException {
        try (XSSFWorkbook workbook = written()) {
            for (Sheet sheet : workbook) {
                assertThat(sheet.getProtect()).as(sheet.getSheetName()).isTrue();
                var protection = ((XSSFSheet) sheet).getCTWorksheet().getSheetProtection();
                assertThat(protection.isSetPassword()).isFalse();
                assertThat(protection.isSetHashValue()).isFalse();
            }
        }
    }

    @Test
    void entries_have_validations_over_all_their_rows() throws IOException {
        try (XSSFWorkbook workbook = written()) {
            assertThat(rule(workbook, "hourly_wage", 0)
                            .getValidationConstraint()
                            .getFormula2())
                    .isEqualTo("1000");
            assertThat(rule(workbook, "part_group", 5).getValidationConstraint().getFormula1())
                    .startsWith("Lists!$");
            assertThat(rule(workbook, "way_choice", 0).getValidationConstraint().getFormula1())
                    .isEqualTo(plan.spot(budget.line("way_key"), 0).to(plan.spot(budget.line("way_key"), 1)));
            DataValidationConstraint pack = rule(workbook, "part_pack", 5).getValidationConstraint();
            assertThat(pack.getValidationType()).isEqualTo(DataValidationConstraint.ValidationType.FORMULA);
            assertThat(pack.getFormula1()).contains(">0").contains("<=10000");
            for (Line line : budget.lines()) {
                boolean number = budget.entry(line).isPresent() && line.kind() == Kind.NUMBER;
                for (int i = 0; number && i < line.size(); i++) {
                    assertThat(rule(workbook, line.id(), i)).isNotNull();
                }
            }
        }
    }

    private XSSFDataValidation rule(XSSFWorkbook workbook, String id, int cell) {
        Spot spot = plan.typedSpot(budget.line(id), cell);
        List<XSSFDataValidation> rules = workbook.getSheet(spot.sheet()).getDataValidations().stream()
                .filter(rule -> Stream.of(rule.getRegions().getCellRangeAddresses())
                        .anyMatch(range -> range.isInRange(spot.row(), spot.column())))
                .toList();
        assertThat(rules).as(id).hasSize(1);
        return rules.get(0);
    }

    @Test
    void text_that_looks_like_a_formula_stays_text() throws IOException {
        for (String text : List.of("=1+1", "+1", "-1", "@SUM(A1)")) {
            Budget injected = SampleBudget.withName(text);
            try (XSSFWorkbook workbook = open(new WorkbookWriter().bytes(Figures.of(injected)))) {
                Cell cell = cell(workbook, Written.bare(injected).plan().spot(injected.line("part_name"), 0));
                assertThat(cell.getCellType()).isEqualTo(CellType.STRING);
                assertThat(cell.getStringCellValue()).isEqualTo(text);
                assertThat(cell.getCellStyle().getQuotePrefixed()).isTrue();
            }
        }
    }

    @Test
    void the_same_figures_give_the_same_bytes_whatever_the_locale_and_time_zone() throws IOException {
        byte[] first = new WorkbookWriter(setup).bytes(figures);
        Locale locale = Locale.getDefault();
        TimeZone zone = TimeZone.getDefault();
        try {
            Locale.setDefault(new Locale("ar", "EG"));
            TimeZone.setDefault(TimeZone.getTimeZone("America/St_Johns"));
            assertThat(Arrays.equals(new WorkbookWriter(setup).bytes(Figures.of(budget)), first))
                    .isTrue();
        } finally {
            Locale.setDefault(locale);
            TimeZone.setDefault(zone);
        }
    }

    @Test
    void an_existing_file_is_left_alone_unless_told_otherwise(@TempDir Path folder) throws IOException {
        Path target = folder.resolve("budget.xlsx");
        Files.writeString(target, "kept", StandardCharsets.UTF_8);
        assertThatThrownBy(() -> new WorkbookWriter().write(figures, target, false))
                .isInstanceOf(FileAlreadyExistsException.class)
                .hasMessageContaining("budget.xlsx: it exists already");
        assertThat(target).hasContent("kept");
        new WorkbookWriter().write(figures, target, true);
        assertThat(Files.readAllBytes(target)).isEqualTo(new WorkbookWriter().bytes(figures));
        try (Stream<Path> files = Files.list(folder)) {
            assertThat(files).containsExactly(target);
        }
    }

    @Test
    void nothing_is_left_behind_when_writing_fails(@TempDir Path folder) throws IOException {
        Path target = Files.createDirectories(folder.resolve("budget.xlsx").resolve("inside"))
                .getParent();
        assertThatThrownBy(() -> new WorkbookWriter().write(figures, target, true))
                .isInstanceOf(IOException.class);
        try (Stream<Path> files = Files.list(folder)) {
            assertThat(files).containsExactly(target);
        }
    }

    @Test
    void figures_that_are_not_finite_are_refused() {
        BudgetBuilder builder = new BudgetBuilder("Broken", "EUR");
        Line zero = builder.schedule("Entries", "Entries")
                .entry("zero_entry_value", "Nothing", Unit.ONE)
                .given(Given.number(0, Unit.ONE));
        builder.schedule("Entries", "Result")
                .line("bad_ratio", "Ratio", Unit.ONE, Formulas.one().over(zero));
        Figures broken = Figures.of(builder.build());
        assertThatThrownBy(() -> new WorkbookWriter().bytes(broken))
                .isInstanceOf(IllegalStateException.class)
                .hasMessageContaining("bad_ratio");
    }

    @Test
    void charts_show_the_engines_values() throws IOException {
        try (XSSFWorkbook workbook = written()) {
            var charts = workbook.getSheet("Shelf").getDrawingPatriarch().getCharts();
            var series = charts.get(0).getChartSeries().get(0).getSeries(0);
            assertThat(series.getValuesData().getPointCount()).isEqualTo(3);
            assertThat(series.getCategoryData().getPointAt(0)).isEqualTo(largest());
            assertThat(series.getValuesData().getDataRangeReference()).startsWith("Shelf!");
            assertThat(charts.get(2).getChartSeries().get(0).getSeriesCount()).isEqualTo(3);
        }
    }

    private String largest() {
        Line cost = budget.line("part_cost");
        int row = IntStream.range(0, 3)
                .boxed()
                .max(Comparator.comparingDouble(i -> figures.number(cost, i)))
                .orElseThrow();
        return figures.text(budget.line("part_name"), row);
    }

    private static void forEachCell(XSSFWorkbook workbook, Consumer<Cell> action) {
        for (Sheet sheet : workbook) {
            for (Row row : sheet) {
                row.forEach(action);
            }
        }
    }
}
