package org.benchmetre.workbook;

import org.apache.poi.ss.usermodel.PageMargin;
import org.apache.poi.ss.usermodel.PrintSetup;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.benchmetre.page.Page;

/** What a sheet is given when its cells are written: print, footer, tab, frozen headings, protection. */
final class SheetFinish {

    private static final int ANSWER_TAB = 0x33515C;
    private static final int ENTRIES_TAB = 0xC08A3E;
    private static final int WORKINGS_TAB = 0xB8C2C4;
    private static final double FOOTER_INCHES = 0.25;
    private static final int LONGEST_FOOTER = 60;
    /** Rows up to which headings are near enough to the top to stay in sight. */
    private static final int NEAR_TOP = 16;

    private final Paper paper;
    private final String title;

    SheetFinish(Paper paper, String title) {
        this.paper = paper;
        this.title = title.length() <= LONGEST_FOOTER ? title : title.substring(0, LONGEST_FOOTER - 3) + "...";
    }

    void page(XSSFSheet sheet, PagePlan page, double[] points) {
        boolean entries = page.page().kind() == Page.Kind.ENTRIES;
        sheet.setTabColor(Styles.colour(entries ? ENTRIES_TAB : ANSWER_TAB));
        int head = page.firstHeadRow();
        if (entries && head >= 0 && head <= NEAR_TOP) {
            sheet.createFreezePane(page.isWide() ? 1 : 0, head + 1);
            sheet.setRepeatingRows(new CellRangeAddress(head, head, -1, -1));
            if (page.isWide()) {
                sheet.setRepeatingColumns(new CellRangeAddress(-1, -1, 0, 0));
            }
        }
        print(sheet);
        PrintPlan plan = PrintPlan.of(page.extent(points), paper);
        sheet.getPrintSetup().setScale((short) plan.scale());
        plan.rowBreaks().forEach(sheet::setRowBreak);
        plan.columnBreaks().forEach(sheet::setColumnBreak);
        protect(sheet);
    }

    void workings(XSSFSheet sheet) {
        sheet.setTabColor(Styles.colour(WORKINGS_TAB));
        sheet.setRowSumsBelow(false);
        print(sheet);
        sheet.setFitToPage(true);
        sheet.getPrintSetup().setFitWidth((short) 1);
        sheet.getPrintSetup().setFitHeight((short) 0);
        protect(sheet);
    }

    private void print(XSSFSheet sheet) {
        sheet.setDisplayGridlines(false);
        PrintSetup print = sheet.getPrintSetup();
        print.setLandscape(true);
        print.setPaperSize(paper.code());
        print.setFooterMargin(FOOTER_INCHES);
        sheet.setMargin(PageMargin.LEFT, Paper.SIDE_INCHES);
        sheet.setMargin(PageMargin.RIGHT, Paper.SIDE_INCHES);
        sheet.setMargin(PageMargin.TOP, Paper.SIDE_INCHES);
        sheet.setMargin(PageMargin.BOTTOM, Paper.FOOT_INCHES);
        sheet.getFooter().setLeft(title.replace("&", "&&"));
        sheet.getFooter().setCenter("&A");
        sheet.getFooter().setRight("&P / &N");
    }

    private static void protect(XSSFSheet sheet) {
        sheet.enableLocking();
        sheet.lockFormatColumns(false);
        sheet.lockFormatRows(false);
    }
}
