package org.benchmetre.workbook;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.xssf.usermodel.XSSFCellStyle;
import org.apache.poi.xssf.usermodel.XSSFChart;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.benchmetre.ScenarioException;
import org.benchmetre.farm.Sample;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What a printer makes of the pages: letters of eight points at the least, few sheets of paper, none with next to nothing. */
class PrintedPagesTest {

    /** Answers and entries of the plain trough house without its sources. */
    private static final Map<Paper, Integer> MOST_SHEETS = Map.of(Paper.A4, 28, Paper.LETTER, 28);

    private static final List<Path> PLAIN = List.of(Sample.TROUGH_HOUSE, Sample.CONTAINER_HOUSE);
    private static final String SOURCES = "Sources and safety";
    private static final double LEAST_POINTS = 8;
    private static final int FEWEST_ROWS = 5;
    private static final double FULL = 100;
    private static final int HUNDREDTHS = 100;

    static List<OpenedBook> books() throws IOException, ScenarioException {
        List<Path> scenarios = new ArrayList<>(PLAIN);
        scenarios.addAll(Sample.SAMPLES);
        return books(scenarios);
    }

    /** Houses with a list of parts that is not long. */
    static List<OpenedBook> plainBooks() throws IOException, ScenarioException {
        return books(PLAIN);
    }

    private static List<OpenedBook> books(List<Path> scenarios) throws IOException, ScenarioException {
        List<OpenedBook> books = new ArrayList<>();
        for (Path scenario : scenarios) {
            for (Paper paper : Paper.values()) {
                books.add(OpenedBook.of(scenario, paper));
            }
        }
        return books;
    }

    @ParameterizedTest
    @MethodSource("books")
    void no_letter_prints_smaller_than_eight_points(OpenedBook book) {
        List<String> found = new ArrayList<>();
        for (PagePlan page : book.plan().pages()) {
            XSSFSheet sheet = book.sheet(page);
            double scale = sheet.getPrintSetup().getScale() / FULL;
            assertThat(sheet.getFitToPage()).as(page.name()).isFalse();
            assertThat(sheet.getPrintSetup().getPaperSize())
                    .isEqualTo(book.written().setup().paper().code());
            OpenedBook.cells(sheet)
                    .filter(cell -> points(cell) * scale < LEAST_POINTS
                            || cell.getCellStyle().getShrinkToFit())
                    .forEach(cell -> found.add(Agreement.spot(cell) + " at " + scale));
            letters(sheet)
                    .filter(points -> points * scale < LEAST_POINTS)
                    .forEach(points -> found.add("chart of " + page.name() + ": " + points + " at " + scale));
        }
        assertThat(found).isEmpty();
    }

    private static double points(Cell cell) {
        return ((XSSFCellStyle) cell.getCellStyle()).getFont().getFontHeightInPoints();
    }

    /** Sizes of letters that the charts of a sheet set. */
    private static Stream<Double> letters(XSSFSheet sheet) {
        return charts(sheet)
                .flatMap(chart -> Arrays.stream(chart.getCTChartSpace().selectPath("$this//@sz")))
                .map(size -> Double.parseDouble(size.newCursor().getTextValue()) / HUNDREDTHS);
    }

    private static Stream<XSSFChart> charts(XSSFSheet sheet) {
        return sheet.getDrawingPatriarch() == null ? Stream.empty() : sheet.getDrawingPatriarch().getCharts().stream();
    }

    @Test
    void answers_and_entries_of_the_trough_house_take_few_sheets_of_paper() throws IOException, ScenarioException {
        for (Paper paper : Paper.values()) {
            Map<String, Integer> sheets = new LinkedHashMap<>();
            OpenedBook book = OpenedBook.of(Sample.TROUGH_HOUSE, paper);
            for (PagePlan page : book.plan().pages()) {
                XSSFSheet sheet = book.sheet(page);
                sheets.put(page.name(), sheets(sheet));
            }
            sheets.remove(SOURCES);
            assertThat(sheets.values().stream().mapToInt(Integer::intValue).sum())
                    .as("%s: %s", paper, sheets)
                    .isLessThanOrEqualTo(MOST_SHEETS.get(paper));
        }
    }

    private static int sheets(XSSFSheet sheet) {
        return (sheet.getRowBreaks().length + 1) * (sheet.getColumnBreaks().length + 1);
    }

    @ParameterizedTest
    @MethodSource("plainBooks")
    void what_is_decided_at_a_glance_prints_on_one_sheet(OpenedBook book) {
        Set<String> names = Set.of("Answer", "Irrigation", "To buy", "Calendar", "What if");
        List<PagePlan> pages = book.plan().pages().stream()
                .filter(page -> names.contains(page.name()))
                .toList();
        assertThat(pages).hasSameSizeAs(names);
        pages.forEach(
                page -> assertThat(sheets(book.sheet(page))).as(page.name()).isEqualTo(1));
    }

    @ParameterizedTest
    @MethodSource("books")
    void no_sheet_of_paper_has_next_to_nothing(OpenedBook book) {
        List<String> found = new ArrayList<>();
        for (PagePlan page : book.plan().pages()) {
            XSSFSheet sheet = book.sheet(page);
            int first = 0;
            List<Integer> ends = new ArrayList<>(
                    IntStream.of(sheet.getRowBreaks()).sorted().boxed().toList());
            ends.add(Math.max(page.end(), sheet.getLastRowNum()));
            for (int end : ends) {
                long rows = IntStream.rangeClosed(first, end)
                        .filter(row -> isPrinted(page, sheet, row))
                        .count();
                if (rows < FEWEST_ROWS) {
                    found.add(page.name() + ", rows " + (first + 1) + " to " + (end + 1) + ": " + rows);
                }
                first = end + 1;
            }
        }
        assertThat(found).isEmpty();
    }

    /** Whether a row has something that is seen: a cell, or part of a chart. */
    private static boolean isPrinted(PagePlan page, XSSFSheet sheet, int row) {
        boolean folded = sheet.getRow(row) != null && sheet.getRow(row).getZeroHeight();
        boolean hasCell = sheet.getRow(row) != null
                && OpenedBook.cells(sheet.getRow(row))
                        .anyMatch(cell -> !OpenedBook.shown(cell).isEmpty());
        boolean hasChart = page.charts().stream().anyMatch(chart -> chart.row() <= row && row < chart.end());
        return !folded && (hasCell || hasChart);
    }
}
