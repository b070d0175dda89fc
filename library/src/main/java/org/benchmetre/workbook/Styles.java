package org.benchmetre.workbook;

import java.util.HashMap;
import java.util.Map;
import org.apache.poi.ss.usermodel.BorderStyle;
import org.apache.poi.ss.usermodel.FillPatternType;
import org.apache.poi.ss.usermodel.HorizontalAlignment;
import org.apache.poi.ss.usermodel.VerticalAlignment;
import org.apache.poi.xssf.usermodel.DefaultIndexedColorMap;
import org.apache.poi.xssf.usermodel.XSSFCellStyle;
import org.apache.poi.xssf.usermodel.XSSFColor;
import org.apache.poi.xssf.usermodel.XSSFFont;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;

/** The styles of a workbook, each made once. */
final class Styles {

    private static final int INK = 0x1F2A30;
    private static final int SLATE = 0x33515C;
    private static final int FADED = 0x66757C;
    private static final int ENTRY_FILL = 0xFBF5E3;
    private static final int ENTRY_EDGE = 0xCDBB8A;
    private static final int HEAD_FILL = 0xE6ECEC;
    private static final int HAIRLINE = 0xD8DEDF;
    private static final int PANEL_FILL = 0xEEF3F2;
    static final int ALERT_INK = 0x9A3412;
    private static final int LINK_INK = 0x245A8D;
    private static final String FACE = "Arial";

    private static final int USUAL_POINTS = 10;

    private final XSSFWorkbook workbook;
    private final Map<Look, XSSFCellStyle> made = new HashMap<>();
    private final Map<Letters, XSSFFont> fonts = new HashMap<>();

    /** Size, weight and colour of letters. */
    private record Letters(int points, boolean bold, boolean italic, int colour) {}

    Styles(XSSFWorkbook workbook) {
        this.workbook = workbook;
        XSSFFont usual = workbook.getFontAt(0); // what widths of columns are counted in
        usual.setFontName(FACE);
        usual.setFontHeightInPoints((short) USUAL_POINTS);
    }

    XSSFCellStyle of(Look look) {
        return made.computeIfAbsent(look, this::make);
    }

    private XSSFCellStyle make(Look look) {
        XSSFCellStyle style = workbook.createCellStyle();
        style.setLocked(!look.role().isEntry());
        style.setQuotePrefixed(look.literal());
        style.setVerticalAlignment(VerticalAlignment.TOP);
        style.setDataFormat(workbook.createDataFormat().getFormat(look.format()));
        style.setFont(font(letters(look.role())));
        dress(style, look.role());
        if (look.shrinks()) {
            style.setWrapText(false);
            style.setShrinkToFit(true);
        }
        return style;
    }

    private static Letters letters(Look.Role role) {
        return switch (role) {
            case TITLE -> new Letters(16, true, false, SLATE);
            case HEADING -> new Letters(11, true, false, SLATE);
            case NOTE -> new Letters(10, false, true, FADED);
            case HEAD, HEAD_NUMBER, BLOCK -> new Letters(10, true, false, INK);
            case SOLVED -> new Letters(10, false, true, SLATE);
            case HEAD_UNIT, USUAL, UNIT, UNIT_TOTAL, ASIDE, ASIDE_LEFT -> new Letters(10, false, false, FADED);
            case LEAD -> new Letters(12, true, false, INK);
            case ALERT -> new Letters(10, false, false, ALERT_INK);
            case SECTION -> new Letters(10, true, false, SLATE);
            case LABEL_TOTAL, NUMBER_TOTAL -> new Letters(10, true, false, INK);
            case LINK -> new Letters(10, false, false, LINK_INK);
            default -> new Letters(10, false, false, INK);
        };
    }

    private static void dress(XSSFCellStyle style, Look.Role role) {
        switch (role) {
            case TITLE, BLOCK -> style.setVerticalAlignment(VerticalAlignment.CENTER);
            case HEADING -> {
                style.setVerticalAlignment(VerticalAlignment.BOTTOM);
                style.setWrapText(true);
            }
            case NOTE -> style.setWrapText(true);
            case HEAD -> head(style, HorizontalAlignment.LEFT);
            case HEAD_NUMBER, HEAD_UNIT -> head(style, HorizontalAlignment.RIGHT);
            case WORDS, FIGURE_TEXT -> words(style);
            case ENTRY -> entry(style, HorizontalAlignment.RIGHT);
            case ENTRY_TEXT -> entry(style, HorizontalAlignment.LEFT);
            case FIGURE, USUAL -> figure(style);
            case LEAD, SENTENCE, ALERT -> {
                fill(style, PANEL_FILL);
                style.setWrapText(true);
                align(style, HorizontalAlignment.LEFT);
            }
            case UNSAID -> {
                style.setWrapText(true);
                align(style, HorizontalAlignment.LEFT);
            }
            case SECTION -> style.setVerticalAlignment(VerticalAlignment.BOTTOM);
            case LABEL, UNIT -> words(style);
            case LINK -> align(style, HorizontalAlignment.LEFT);
            case ASIDE_LEFT -> {
                style.setWrapText(true);
                align(style, HorizontalAlignment.LEFT);
            }
            case ASIDE -> {
                style.setWrapText(true);
                align(style, HorizontalAlignment.RIGHT);
            }
            case NUMBER -> {
                figure(style);
                style.setWrapText(true);
            }
            case LABEL_TOTAL, UNIT_TOTAL -> {
                words(style);
                rule(style);
            }
            case NUMBER_TOTAL -> {
                figure(style);
                rule(style);
            }
            case FIGURE_OR_REASON, SOLVED -> {
                figure(style);
                style.setWrapText(true);
            }
        }
    }

    private static void head(XSSFCellStyle style, HorizontalAlignment side) {
        fill(style, HEAD_FILL);
        style.setWrapText(true);
        align(style, side);
        style.setVerticalAlignment(VerticalAlignment.BOTTOM);
    }

    private static void words(XSSFCellStyle style) {
        style.setWrapText(true);
        align(style, HorizontalAlignment.LEFT);
        underline(style);
    }

    private static void figure(XSSFCellStyle style) {
        align(style, HorizontalAlignment.RIGHT);
        underline(style);
    }

    private static void underline(XSSFCellStyle style) {
        style.setBorderBottom(BorderStyle.HAIR);
        style.setBottomBorderColor(colour(HAIRLINE));
    }

    /** A rule above a sum. */
    private static void rule(XSSFCellStyle style) {
        style.setBorderTop(BorderStyle.THIN);
        style.setTopBorderColor(colour(INK));
    }

    private static void entry(XSSFCellStyle style, HorizontalAlignment side) {
        fill(style, ENTRY_FILL);
        style.setWrapText(side == HorizontalAlignment.LEFT);
        align(style, side);
        style.setBorderTop(BorderStyle.THIN);
        style.setBorderBottom(BorderStyle.THIN);
        style.setBorderLeft(BorderStyle.THIN);
        style.setBorderRight(BorderStyle.THIN);
        XSSFColor edge = colour(ENTRY_EDGE);
        style.setTopBorderColor(edge);
        style.setBottomBorderColor(edge);
        style.setLeftBorderColor(edge);
        style.setRightBorderColor(edge);
    }

    /** Words keep a little apart from the numbers to their left; not the other way round, which some programs draw unevenly. */
    private static void align(XSSFCellStyle style, HorizontalAlignment side) {
        style.setAlignment(side);
        style.setIndention((short) (side == HorizontalAlignment.LEFT ? 1 : 0));
    }

    private static void fill(XSSFCellStyle style, int rgb) {
        style.setFillForegroundColor(colour(rgb));
        style.setFillPattern(FillPatternType.SOLID_FOREGROUND);
    }

    private XSSFFont font(Letters letters) {
        return fonts.computeIfAbsent(letters, wanted -> {
            XSSFFont font = workbook.createFont();
            font.setFontName(FACE);
            font.setFontHeightInPoints((short) wanted.points());
            font.setBold(wanted.bold());
            font.setItalic(wanted.italic());
            font.setColor(colour(wanted.colour()));
            return font;
        });
    }

    static byte[] bytes(int rgb) {
        return new byte[] {(byte) (rgb >> 16), (byte) (rgb >> 8), (byte) rgb};
    }

    static XSSFColor colour(int rgb) {
        byte[] opaque = {(byte) 0xFF, (byte) (rgb >> 16), (byte) (rgb >> 8), (byte) rgb};
        return new XSSFColor(opaque, new DefaultIndexedColorMap());
    }
}
