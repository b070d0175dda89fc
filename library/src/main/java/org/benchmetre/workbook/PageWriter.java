package org.benchmetre.workbook;

import org.apache.poi.ss.usermodel.BorderStyle;
import org.apache.poi.ss.usermodel.IndexedColors;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.xssf.usermodel.XSSFConditionalFormattingRule;
import org.apache.poi.xssf.usermodel.XSSFFontFormatting;
import org.benchmetre.budget.CellRef;
import org.benchmetre.budget.Kind;

/** Writes the cells of one page. */
final class PageWriter {

    private final WorkbookPlan plan;
    private final PagePlan page;
    private final ValueCells cells;
    private final Pen pen;

    PageWriter(WorkbookPlan plan, PagePlan page, ValueCells cells, Pen pen) {
        this.plan = plan;
        this.page = page;
        this.cells = cells;
        this.pen = pen;
    }

    void write() {
        for (int column = 0; column < page.widths().size(); column++) {
            pen.width(column, page.widths().get(column));
        }
        page.cells().forEach(this::cell);
        page.folded().forEach(row -> pen.group(row, row, true));
        page.foldedColumns().forEach(pen::foldColumn);
        page.boxed().forEach(this::boxed);
        page.watched().forEach(this::watched);
    }

    private void cell(PageCell cell) {
        Spot spot = new Spot(page.name(), cell.row(), cell.column());
        if (cell.last() == cell.column()) {
            content(cell, spot);
        } else {
            pen.overColumns(() -> content(cell, spot));
            pen.spread(cell.row(), cell.column(), cell.last(), words(cell), cell.role());
        }
        if (cell.link() != null) {
            Spot home = plan.spot(cell.link(), 0);
            if (!home.sheet().equals(page.name())) {
                pen.link(cell.row(), cell.column(), home);
            }
        }
    }

    private void content(PageCell cell, Spot spot) {
        PageCell.Content content = cell.content();
        if (content instanceof PageCell.Plain plain) {
            pen.words(spot.row(), spot.column(), plain.text(), cell.role());
        } else if (content instanceof PageCell.Shown shown) {
            shown(cell, spot, shown.ref());
        } else if (content instanceof PageCell.Repeated repeated) {
            cells.repeated(pen, spot, repeated.ref(), cell.role());
        } else if (content instanceof PageCell.Typed typed) {
            cells.typed(pen, typed.ref());
        } else if (content instanceof PageCell.Named named) {
            cells.name(pen, spot.row(), spot.column(), named.axis(), named.index(), cell.role());
        } else if (content instanceof PageCell.Bound bound) {
            pen.number(spot.row(), spot.column(), bound.number(), Look.number(cell.role(), cell.format()));
        }
    }

    /** A figure by reference; a choice as it is typed, by its label. */
    private void shown(PageCell cell, Spot spot, CellRef ref) {
        if (ref.line().kind() == Kind.TEXT && plan.homes().has(ref.line())) {
            cells.repeated(pen, spot, ref, cell.role());
        } else {
            cells.shown(pen, spot, ref, cell.role(), cell.format());
        }
    }

    private String words(PageCell cell) {
        PageCell.Content content = cell.content();
        if (content instanceof PageCell.Plain plain) {
            return plain.text();
        }
        if (content instanceof PageCell.Typed typed) {
            return cells.typedText(typed.ref());
        }
        return content instanceof PageCell.Shown shown ? cells.text(shown.ref()) : "";
    }

    /** The plan as entered is boxed, a loss is another colour beside its minus. */
    private void boxed(PagePlan.Boxed table) {
        int rows = table.block().down().size();
        CellRangeAddress area = new CellRangeAddress(table.row(), table.row() + rows - 1, table.column(), table.last());
        Spot first = new Spot(page.name(), table.row(), table.column());
        Spot down = new Spot(page.name(), table.row(), table.column() - 1);
        Spot across = new Spot(page.name(), table.row() - 1, table.column());
        String base =
                "AND(ROUND($" + down.relative() + "-" + table.block().nowDown().id() + ",6)=0,ROUND("
                        + across.relative().replaceFirst("(\\d+)$", "\\$$1") + "-"
                        + table.block().nowAcross().id() + ",6)=0)";
        pen.mark(area, base, PageWriter::box);
        pen.mark(area, first.relative() + "<0", PageWriter::alert);
    }

    private static void box(XSSFConditionalFormattingRule rule) {
        rule.createFontFormatting().setFontStyle(false, true);
        var borders = rule.createBorderFormatting();
        borders.setBorderBottom(BorderStyle.THIN);
        borders.setBorderTop(BorderStyle.THIN);
        borders.setBorderLeft(BorderStyle.THIN);
        borders.setBorderRight(BorderStyle.THIN);
    }

    /** A first colour is written with three bytes, which the schema forbids; one that takes the place of another with its four. */
    private static void alert(XSSFConditionalFormattingRule rule) {
        XSSFFontFormatting letters = rule.createFontFormatting();
        letters.setFontColorIndex(IndexedColors.AUTOMATIC.getIndex());
        letters.setFontColor(Styles.colour(Styles.ALERT_INK));
    }

    /** A value outside its usual range stands in bold slanted figures. */
    private void watched(PagePlan.Watched entry) {
        String value = "$" + new Spot("", entry.row(), entry.value()).relative();
        String below = entry.low() < 0 ? "" : value + "<$" + new Spot("", entry.row(), entry.low()).relative();
        String above = entry.high() < 0 ? "" : value + ">$" + new Spot("", entry.row(), entry.high()).relative();
        String outside = below.isEmpty() || above.isEmpty() ? below + above : "OR(" + below + "," + above + ")";
        pen.mark(
                new CellRangeAddress(entry.row(), entry.row(), entry.value(), entry.value()),
                outside,
                rule -> rule.createFontFormatting().setFontStyle(true, true));
    }
}
