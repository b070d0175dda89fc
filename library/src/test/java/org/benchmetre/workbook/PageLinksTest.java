package org.benchmetre.workbook;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.apache.poi.ss.util.CellReference;
import org.apache.poi.xssf.usermodel.XSSFChart;
import org.apache.poi.xssf.usermodel.XSSFDrawing;
import org.apache.poi.xssf.usermodel.XSSFGraphicFrame;
import org.apache.poi.xssf.usermodel.XSSFHyperlink;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.benchmetre.ScenarioException;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Ways through the workbooks of both samples and the starter: links lead to cells that say something, charts speak. */
class PageLinksTest {

    static List<OpenedBook> books() throws IOException, ScenarioException {
        return OpenedBook.all();
    }

    @ParameterizedTest
    @MethodSource("books")
    void the_first_page_leads_to_every_other_one_and_to_the_workings(OpenedBook book) {
        List<PagePlan> pages = book.plan().pages();
        Set<String> linked = book.sheet(pages.get(0)).getHyperlinkList().stream()
                .map(link -> target(link).getSheetName())
                .collect(Collectors.toSet());
        assertThat(pages).hasSizeGreaterThan(10);
        assertThat(linked)
                .containsAll(pages.stream().skip(1).map(PagePlan::name).toList())
                .contains(book.plan().sheets().iterator().next().name());
    }

    @ParameterizedTest
    @MethodSource("books")
    void every_heading_of_the_workings_leads_back_to_a_page(OpenedBook book) {
        Set<String> pages = book.plan().pages().stream().map(PagePlan::name).collect(Collectors.toSet());
        List<String> lost = new ArrayList<>();
        int headings = 0;
        for (SheetPlan sheet : book.plan().sheets()) {
            for (Box box : sheet.boxes()) {
                XSSFHyperlink link = book.workbook().getSheet(sheet.name()).getHyperlink(box.top(), 0);
                if (link == null || !pages.contains(target(link).getSheetName())) {
                    lost.add(sheet.name() + ": " + box.schedule().title());
                }
                headings++;
            }
        }
        assertThat(headings).isGreaterThan(50);
        assertThat(lost).isEmpty();
    }

    @ParameterizedTest
    @MethodSource("books")
    void every_link_leads_to_a_cell_that_was_written(OpenedBook book) {
        List<String> dead = new ArrayList<>();
        for (int i = 0; i < book.workbook().getNumberOfSheets(); i++) {
            for (XSSFHyperlink link : book.workbook().getSheetAt(i).getHyperlinkList()) {
                CellReference target = target(link);
                boolean known = book.workbook().getSheet(target.getSheetName()) != null
                        && book.cell(new Spot(target.getSheetName(), target.getRow(), target.getCol())) != null;
                if (!known) {
                    dead.add(book.workbook().getSheetName(i) + "!" + link.getCellRef() + " to " + link.getAddress());
                }
            }
        }
        assertThat(dead).isEmpty();
    }

    private static CellReference target(XSSFHyperlink link) {
        return new CellReference(link.getLocation() == null ? link.getAddress() : link.getLocation());
    }

    @ParameterizedTest
    @MethodSource("books")
    void every_chart_is_told_in_words_and_its_title_is_a_cell(OpenedBook book) {
        int charts = 0;
        for (PagePlan page : book.plan().pages()) {
            XSSFSheet sheet = book.sheet(page);
            XSSFDrawing drawing = sheet.getDrawingPatriarch();
            if (drawing == null) {
                continue;
            }
            assertThat(drawing.getShapes().stream()
                            .map(shape -> ((XSSFGraphicFrame) shape)
                                    .getCTGraphicalObjectFrame()
                                    .getNvGraphicFramePr()
                                    .getCNvPr()
                                    .getDescr()))
                    .as(page.name())
                    .allMatch(words -> words != null && words.length() > 20);
            for (XSSFChart chart : drawing.getCharts()) {
                CellReference title = new CellReference(chart.getTitleFormula());
                assertThat(OpenedBook.shown(book.cell(new Spot(title.getSheetName(), title.getRow(), title.getCol()))))
                        .as("title of a chart of %s", page.name())
                        .isNotEmpty()
                        .isEqualTo(chart.getCTChart()
                                .getTitle()
                                .getTx()
                                .getStrRef()
                                .getStrCache()
                                .getPtArray(0)
                                .getV());
                charts++;
            }
        }
        assertThat(charts).isGreaterThanOrEqualTo(4);
    }
}
